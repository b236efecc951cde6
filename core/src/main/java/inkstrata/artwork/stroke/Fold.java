package inkstrata.artwork.stroke;

import java.awt.geom.Path2D;

/** What the pen covers going back, beyond the centres of curvature; not for several threads. */
final class Fold {
    /** Pieces of one path that go on smoothly meet but for rounding, in the path's units of 1 µm. */
    private static final double SAME = 1e-6;

    private final boolean turnsLeft;
    private final Contour centres = new Contour();
    private final Contour beyond = new Contour();

    Fold(boolean turnsLeft) {
        this.turnsLeft = turnsLeft;
    }

    /** Whether a piece begins where this ends. */
    boolean continuesWith(Piece piece) {
        return piece.turnsLeft() == turnsLeft
                && Math.hypot(piece.beyond()[0] - beyond.lastX(), piece.beyond()[1] - beyond.lastY()) < SAME;
    }

    void along(Piece piece) {
        centres.through(piece.centres());
        beyond.along(piece.beyond());
    }

    void draw(Path2D.Double outline, double scale) {
        Contour first = turnsLeft ? centres : beyond;
        Contour second = turnsLeft ? beyond : centres;
        Contour around = new Contour();
        around.append(first);
        around.append(second.backwards());
        around.draw(outline, scale);
    }
}
