package inkstrata.planar;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.Outline;
import inkstrata.measure.Grid;
import java.util.Arrays;

/**
 * Turns outlines into straight segments on the grid.
 *
 * <p>A curve becomes n pieces of equal parameter, n from the bound on the chord's error by second differences: |P0 - 2 P1
 * + P2| / (4 n²) for a quadratic, 3/4 max(|P0 - 2 P1 + P2|, |P1 - 2 P2 + P3|) / n² for a cubic (G. Farin, Curves and
 * Surfaces for CAGD, on the distance of a curve from its chord). A curve drawn backwards gives the same points. Each point is
 * rounded to the grid once.
 *
 * <p>What lies outside the surroundings of the frame is pressed onto their border, which leaves every winding number
 * within them as it was; so coordinates of any finite size will do.
 */
final class Flattener implements CurveSink {
    /** A curve is never cut into more pieces than this; with 5 µm it takes a curve of some 100 km to get there. */
    private static final int MOST_PIECES = 1 << 16;

    /** A power of two, far above the error of doubles on the largest sheet and far below what rounding to the grid leaves. */
    private static final double FRACTION = 1 / 4096.0;

    private final Segments segments;
    private final double tolerance;
    private final Box around;
    private final double[] crossings = new double[4];

    private int outline;
    private int command;
    private double startX;
    private double startY;
    private double x;
    private double y;
    private int gridX;
    private int gridY;

    /**
     * Sets up for one drawing.
     *
     * @param flatnessMm the most a chord may leave its curve, rounding included
     */
    Flattener(Segments segments, double flatnessMm, Box frame) {
        this.segments = segments;
        // Rounding moves a point by at most half a diagonal of the grid.
        this.tolerance = Math.max(flatnessMm / Grid.STEP_MM - Math.sqrt(0.5), 0.25);
        this.around = frame.surroundings();
    }

    void add(Outline shape, int number) {
        outline = number;
        command = -1;
        shape.sendTo(this);
        closeContour();
    }

    @Override
    public void moveTo(double toX, double toY) {
        if (command >= 0) {
            closeContour();
        }
        command++;
        startX = x = steps(toX);
        startY = y = steps(toY);
        gridX = pressed(x, around.left(), around.right());
        gridY = pressed(y, around.low(), around.high());
    }

    @Override
    public void lineTo(double toX, double toY) {
        command++;
        segmentTo(steps(toX), steps(toY), 0, 1);
    }

    @Override
    public void quadTo(double x1, double y1, double toX, double toY) {
        command++;
        double[] c = {x, y, steps(x1), steps(y1), steps(toX), steps(toY)};
        double bend = Math.hypot(c[0] - 2 * c[2] + c[4], c[1] - 2 * c[3] + c[5]);
        pieces(c, pieceCount(bend / 4));
    }

    @Override
    public void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        command++;
        double[] c = {x, y, steps(x1), steps(y1), steps(x2), steps(y2), steps(toX), steps(toY)};
        double first = Math.hypot(c[0] - 2 * c[2] + c[4], c[1] - 2 * c[3] + c[5]);
        double second = Math.hypot(c[2] - 2 * c[4] + c[6], c[3] - 2 * c[5] + c[7]);
        pieces(c, pieceCount(0.75 * Math.max(first, second)));
    }

    /**
     * In grid steps, to {@link #FRACTION} of one: what moving a drawing in millimetres does to the last digits of doubles is
     * gone, so that a drawing moved by whole steps gives the same segments, moved.
     */
    private static double steps(double millimetres) {
        return fraction(millimetres * Grid.STEPS_PER_MM);
    }

    private static double fraction(double steps) {
        return Math.rint(steps / FRACTION) * FRACTION;
    }

    private void closeContour() {
        int last = command;
        command++;
        if (x != startX || y != startY) {
            segmentTo(startX, startY, 0, 1);
        }
        command = last;
    }

    private int pieceCount(double errorOfOne) {
        return (int) Math.max(1, Math.min(MOST_PIECES, Math.ceil(Math.sqrt(errorOfOne / tolerance))));
    }

    private void pieces(double[] curve, int count) {
        boolean backwards = isBackwards(curve);
        double[] c = backwards ? reversed(curve) : curve;
        for (int i = 1; i <= count; i++) {
            double t0 = (i - 1) / (double) count;
            double t1 = i / (double) count;
            if (i == count) {
                segmentTo(curve[curve.length - 2], curve[curve.length - 1], t0, 1);
            } else {
                double t = backwards ? (count - i) / (double) count : t1;
                segmentTo(point(c, 0, t), point(c, 1, t), t0, t1);
            }
        }
    }

    private static boolean isBackwards(double[] c) {
        for (int i = 0, j = c.length - 2; i < j; i += 2, j -= 2) {
            int order = c[i] != c[j] ? Double.compare(c[i], c[j]) : Double.compare(c[i + 1], c[j + 1]);
            if (order != 0) {
                return order > 0;
            }
        }
        return false;
    }

    private static double[] reversed(double[] c) {
        double[] r = new double[c.length];
        for (int i = 0; i < c.length; i += 2) {
            r[i] = c[c.length - 2 - i];
            r[i + 1] = c[c.length - 1 - i];
        }
        return r;
    }

    /** De Casteljau on one axis. */
    private static double point(double[] c, int axis, double t) {
        double a = c[axis];
        double b = c[axis + 2];
        double d = c[axis + 4];
        double ab = a + (b - a) * t;
        double bd = b + (d - b) * t;
        double abd = ab + (bd - ab) * t;
        if (c.length == 6) {
            return abd;
        }
        double e = c[axis + 6];
        double de = d + (e - d) * t;
        double bde = bd + (de - bd) * t;
        return abd + (bde - abd) * t;
    }

    private void segmentTo(double toX, double toY, double t0, double t1) {
        if (outside(x, y) || outside(toX, toY)) {
            segmentAround(toX, toY, t0, t1);
        }
        gridTo(toX, toY, t0, t1);
        x = toX;
        y = toY;
    }

    private boolean outside(double px, double py) {
        return px < around.left() || px > around.right() || py < around.low() || py > around.high();
    }

    /** Adds the points at which a segment meets the lines of the surroundings, each pressed onto them. */
    private void segmentAround(double toX, double toY, double t0, double t1) {
        double dx = toX - x;
        double dy = toY - y;
        crossings[0] = (around.left() - x) / dx;
        crossings[1] = (around.right() - x) / dx;
        crossings[2] = (around.low() - y) / dy;
        crossings[3] = (around.high() - y) / dy;
        Arrays.sort(crossings);
        for (double t : crossings) {
            if (t > 0 && t < 1) {
                gridTo(x + t * dx, y + t * dy, t0, t1);
            }
        }
    }

    private void gridTo(double toX, double toY, double t0, double t1) {
        int nextX = pressed(toX, around.left(), around.right());
        int nextY = pressed(toY, around.low(), around.high());
        if (nextX != gridX || nextY != gridY) {
            segments.add(gridX, gridY, nextX, nextY, outline, command, t0, t1);
            gridX = nextX;
            gridY = nextY;
        }
    }

    /** Halves go up; what is half but for the error of doubles counts as half. */
    private static int pressed(double v, int least, int most) {
        return (int) Math.max(least, Math.min(most, Math.floor(fraction(v) + 0.5)));
    }
}
