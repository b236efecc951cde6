package inkstrata.planar;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.Outline;
import inkstrata.measure.Grid;
import java.util.Arrays;
import java.util.List;

/**
 * Turns outlines into straight segments on the grid.
 *
 * <p>A curve becomes n pieces of equal parameter, n from the bound on the chord's error by second differences: |P0 - 2 P1
 * + P2| / (4 n²) for a quadratic, 3/4 max(|P0 - 2 P1 + P2|, |P1 - 2 P2 + P3|) / n² for a cubic (G. Farin, Curves and
 * Surfaces for CAGD, on the distance of a curve from its chord). {@link Chords} moves their ends so that they keep the curve's
 * area. A curve drawn backwards gives the same points. Each point is rounded to the grid once.
 *
 * <p>What lies outside the surroundings of the frame is pressed onto their border, which leaves every winding number
 * within them as it was. A line or curve too large for that is halved first (de Casteljau), again and again: a part beyond
 * one side of the surroundings is pressed onto it as it is, and the parts that may be seen shrink until doubles have digits
 * to spare. So coordinates of any finite size will do.
 */
final class Flattener implements CurveSink {
    /** A curve that needs more pieces than this is halved; in surroundings of 16 m, 5 µm takes some 2,500. */
    private static final int MOST_PIECES = 1 << 12;

    /** What reaches farther than this is halved, in steps (275 km): below, doubles are exact to {@link #FRACTION}. */
    private static final double FAR = 0x1p40;

    /** Larger coordinates count as this, in steps (10<sup>285</sup> mm), so that no sum of a few overflows. */
    private static final double FARTHEST = 0x1p960;

    /** A curve that leaves its chord by no more is the chord, in steps: rounding moves points as far. */
    private static final double STRAIGHT = 0.5;

    /** More halvings than it takes from {@link #FARTHEST} to one step; no outline gets there. */
    private static final int MOST_HALVINGS = 1_000;

    /** A power of two, far above the error of doubles on the largest sheet and far below what rounding to the grid leaves. */
    private static final double FRACTION = 1 / 4096.0;

    private final Segments segments;
    private final double tolerance;
    private final Box around;
    private final ContourWatch watch;
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
        this.watch = new ContourWatch(segments, frame);
    }

    void add(Outline shape, int number) {
        outline = number;
        command = -1;
        shape.sendTo(this);
        if (command >= 0) {
            closeContour();
        }
    }

    /** The contours added so far of which rounding has left nothing. */
    List<Swallowed> swallowed(Drawing drawing) {
        return watch.swallowed(drawing);
    }

    @Override
    public void moveTo(double toX, double toY) {
        if (command >= 0) {
            closeContour();
        }
        command++;
        startX = x = steps(toX);
        startY = y = steps(toY);
        watch.begin(outline, x, y);
        gridX = pressed(x, around.left(), around.right());
        gridY = pressed(y, around.low(), around.high());
    }

    @Override
    public void lineTo(double toX, double toY) {
        command++;
        line(steps(toX), steps(toY));
    }

    @Override
    public void quadTo(double x1, double y1, double toX, double toY) {
        command++;
        curve(x, y, steps(x1), steps(y1), steps(toX), steps(toY));
    }

    @Override
    public void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        command++;
        curve(x, y, steps(x1), steps(y1), steps(x2), steps(y2), steps(toX), steps(toY));
    }

    private void curve(double... c) {
        watch.add(c);
        curve(c, 0, 1, MOST_HALVINGS);
    }

    /**
     * In grid steps, to {@link #FRACTION} of one: what moving a drawing in millimetres does to the last digits of doubles is
     * gone, so that a drawing moved by whole steps gives the same segments, moved.
     */
    private static double steps(double millimetres) {
        return fraction(Math.max(-FARTHEST, Math.min(FARTHEST, millimetres * Grid.STEPS_PER_MM)));
    }

    private static double fraction(double steps) {
        return Math.rint(steps / FRACTION) * FRACTION;
    }

    private void closeContour() {
        int last = command;
        command++;
        if (x != startX || y != startY) {
            line(startX, startY);
        }
        command = last;
        watch.end();
    }

    private void line(double toX, double toY) {
        watch.add(x, y, toX, toY);
        if (isFar(x, y, toX, toY)) {
            curve(new double[] {x, y, toX, toY}, 0, 1, MOST_HALVINGS);
        } else {
            segmentTo(toX, toY, 0, 1);
        }
    }

    /**
     * Adds a curve or line that goes on from where we are.
     *
     * @param c its control points: 2, 3 or 4
     * @param t0 the part of its command that it is
     */
    private void curve(double[] c, double t0, double t1, int halvings) {
        if (isBeyondOneSide(c)) {
            // On the way from end to end, pressed likewise, nothing within is wound around.
            x = c[c.length - 2];
            y = c[c.length - 1];
            gridTo(x, y, t0, t1);
            return;
        }
        double pieces = pieces(error(c));
        if ((pieces > MOST_PIECES || isFar(c)) && halvings > 0) {
            double[][] halves = halves(c);
            double middle = (t0 + t1) / 2;
            curve(halves[0], t0, middle, halvings - 1);
            curve(halves[1], middle, t1, halvings - 1);
        } else {
            pieces(c, (int) Math.min(MOST_PIECES, pieces), t0, t1);
        }
    }

    /** How many chords keep the area and leave a curve no farther than allowed, given how far it may leave a single one. */
    private double pieces(double error) {
        if (error <= STRAIGHT) {
            return 1;
        }
        // The point between two chords is moved by a third of the error, each next to an end of more by all of theirs.
        return error <= 3 * tolerance ? 2 : Math.max(3, Math.ceil(Math.sqrt(error / tolerance)));
    }

    /** How far a curve may leave its chord. */
    private static double error(double[] c) {
        return switch (c.length) {
            case 4 -> 0;
            case 6 -> bend(c, 0) / 4;
            default -> 0.75 * Math.max(bend(c, 0), bend(c, 2));
        };
    }

    private static double bend(double[] c, int at) {
        return Math.hypot(c[at] - 2 * c[at + 2] + c[at + 4], c[at + 1] - 2 * c[at + 3] + c[at + 5]);
    }

    private boolean isBeyondOneSide(double[] c) {
        boolean left = true;
        boolean right = true;
        boolean low = true;
        boolean high = true;
        for (int i = 0; i < c.length; i += 2) {
            left &= c[i] <= around.left();
            right &= c[i] >= around.right();
            low &= c[i + 1] <= around.low();
            high &= c[i + 1] >= around.high();
        }
        return left || right || low || high;
    }

    private static boolean isFar(double... coordinates) {
        for (double v : coordinates) {
            if (Math.abs(v) > FAR) {
                return true;
            }
        }
        return false;
    }

    /** Both halves of a curve, by de Casteljau; the same points whichever way it runs. */
    private static double[][] halves(double[] c) {
        double[] first = new double[c.length];
        double[] second = new double[c.length];
        double[] rest = c.clone();
        for (int n = c.length; n > 0; n -= 2) {
            int done = c.length - n;
            first[done] = rest[0];
            first[done + 1] = rest[1];
            second[n - 2] = rest[n - 2];
            second[n - 1] = rest[n - 1];
            for (int i = 0; i < n - 2; i++) {
                rest[i] = (rest[i] + rest[i + 2]) / 2;
            }
        }
        return new double[][] {first, second};
    }

    private void pieces(double[] curve, int count, double t0, double t1) {
        double from = t0;
        if (count > 1) {
            boolean backwards = isBackwards(curve);
            double[] inner = Chords.inner(backwards ? reversed(curve) : curve, count, tolerance);
            for (int i = 1; i < count; i++) {
                int at = 2 * ((backwards ? count - i : i) - 1);
                double to = t0 + (t1 - t0) * i / count;
                segmentTo(inner[at], inner[at + 1], from, to);
                from = to;
            }
        }
        segmentTo(curve[curve.length - 2], curve[curve.length - 1], from, t1);
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
