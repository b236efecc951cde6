package inkstrata.artwork.svg;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** How long a path is, in its own units, as the strokes dasher sees it. */
final class PathLength {
    /** Halvings of a curve: 1,024 chords, which fall short of a quarter circle by some 1e-7. */
    private static final int HALVINGS = 10;

    private PathLength() {}

    /** Closing lines count, move-tos do not. */
    static double of(Path2D.Double path) {
        double flatness =
                Math.max(path.getBounds2D().getWidth(), path.getBounds2D().getHeight()) * 1e-7;
        double[] c = new double[6];
        double length = 0;
        double startX = 0;
        double startY = 0;
        double x = 0;
        double y = 0;
        for (PathIterator at = new FlatteningPathIterator(path.getPathIterator(null), flatness, HALVINGS);
                !at.isDone();
                at.next()) {
            switch (at.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> {
                    startX = c[0];
                    startY = c[1];
                }
                case PathIterator.SEG_LINETO -> length += Math.hypot(c[0] - x, c[1] - y);
                default -> {
                    length += Math.hypot(startX - x, startY - y);
                    c[0] = startX;
                    c[1] = startY;
                }
            }
            x = c[0];
            y = c[1];
        }
        return length;
    }
}
