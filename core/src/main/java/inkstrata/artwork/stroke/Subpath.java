package inkstrata.artwork.stroke;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/**
 * The segments between two move-tos.
 *
 * @param startX where it starts
 * @param startY the same
 * @param legs those that have a length
 * @param closed whether it ends where it started, in a corner; the closing line is among the legs
 */
record Subpath(double startX, double startY, List<Leg> legs, boolean closed) {
    /** What is shorter than this, in the path's units of 1 µm, has no direction. */
    private static final double NO_LENGTH = 1e-6;

    Subpath {
        legs = List.copyOf(legs);
    }

    /** All subpaths in which something is drawn: a move-to alone draws nothing. */
    static List<Subpath> of(Path2D.Double path, double scale) {
        Reader reader = new Reader(scale);
        reader.read(path);
        return reader.subpaths;
    }

    private static final class Reader {
        private final double scale;
        private final List<Subpath> subpaths = new ArrayList<>();
        private List<Leg> legs = new ArrayList<>();
        private double startX;
        private double startY;
        private double x;
        private double y;
        private boolean drawn;

        Reader(double scale) {
            this.scale = scale;
        }

        void read(Path2D.Double path) {
            double[] c = new double[6];
            for (PathIterator at = path.getPathIterator(null); !at.isDone(); at.next()) {
                int kind = at.currentSegment(c);
                for (int i = 0; i < c.length; i++) {
                    c[i] *= scale;
                }
                switch (kind) {
                    case PathIterator.SEG_MOVETO -> {
                        end(false);
                        startX = c[0];
                        startY = c[1];
                        x = startX;
                        y = startY;
                    }
                    case PathIterator.SEG_LINETO -> leg(Leg.line(x, y, c[0], c[1]), c[0], c[1]);
                    case PathIterator.SEG_QUADTO -> leg(Leg.quadratic(x, y, c[0], c[1], c[2], c[3]), c[2], c[3]);
                    case PathIterator.SEG_CUBICTO ->
                        leg(Leg.cubic(x, y, c[0], c[1], c[2], c[3], c[4], c[5]), c[4], c[5]);
                    default -> {
                        leg(Leg.line(x, y, startX, startY), startX, startY);
                        end(true);
                    }
                }
            }
            end(false);
        }

        private void leg(Leg leg, double toX, double toY) {
            drawn = true;
            if (leg.size() > 3 * NO_LENGTH) {
                legs.add(leg);
            }
            x = toX;
            y = toY;
        }

        private void end(boolean closed) {
            if (drawn) {
                subpaths.add(new Subpath(startX, startY, legs, closed));
            }
            legs = new ArrayList<>();
            drawn = false;
        }
    }
}
