package inkstrata.planar;

import inkstrata.artwork.Outline;
import inkstrata.measure.Grid;
import java.util.List;

/** Draws pieces into an outline, in whole hundredths of a micrometre. */
final class PiecePen {
    /** Smallest units in a grid step: {@value} hundredths of a micrometre. */
    private static final int UNITS = 25;

    private static final double UNITS_PER_MM = (double) UNITS * Grid.STEPS_PER_MM;

    private final Outline.Builder outline = Outline.builder();
    private int drawn;

    /** Lifts it to a place in grid steps. */
    void moveTo(double x, double y) {
        outline.moveTo(mm(x), mm(y));
    }

    /** Draws pieces from where it is, or from the end of the last one backwards; what has no length is left out. */
    void draw(List<Bezier> pieces, boolean forward) {
        for (int i = 0; i < pieces.size(); i++) {
            draw(pieces.get(forward ? i : pieces.size() - 1 - i), forward);
        }
    }

    /** Likewise, but a line that comes last is left to the outline, which closes itself. */
    void close(List<Bezier> pieces, boolean forward) {
        int last = pieces.size() - 1;
        boolean isLine = pieces.get(forward ? last : 0).degree() == 1;
        draw(isLine ? forward ? pieces.subList(0, last) : pieces.subList(1, last + 1) : pieces, forward);
    }

    /** How many pieces had a length so far. */
    int drawn() {
        return drawn;
    }

    Outline outline() {
        return outline.build();
    }

    private void draw(Bezier piece, boolean forward) {
        if (piece.isNothing(UNITS)) {
            return;
        }
        drawn++;
        double[] c = new double[2 * piece.degree() + 2];
        for (int i = 0; i <= piece.degree(); i++) {
            int control = forward ? i : piece.degree() - i;
            c[2 * i] = mm(piece.x(control));
            c[2 * i + 1] = mm(piece.y(control));
        }
        switch (piece.degree()) {
            case 1 -> outline.lineTo(c[2], c[3]);
            case 2 -> outline.quadTo(c[2], c[3], c[4], c[5]);
            default -> outline.cubicTo(c[2], c[3], c[4], c[5], c[6], c[7]);
        }
    }

    /** The nearest whole unit, never -0. */
    private static double mm(double steps) {
        return Math.rint(steps * UNITS) / UNITS_PER_MM + 0.0;
    }
}
