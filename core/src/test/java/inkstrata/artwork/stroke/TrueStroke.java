package inkstrata.artwork.stroke;

import inkstrata.artwork.stroke.StrokeStyle.Cap;
import inkstrata.artwork.stroke.StrokeStyle.Join;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Which places a stroke covers, straight from the words of SVG 2, section 13.5.8: a place is covered if it lies on a line
 * square to a segment, no more than half the width from where that line meets the segment; or in a cap or a corner.
 *
 * <p>Nothing is offset, flattened or filled: feet of perpendiculars are roots of a polynomial.
 */
final class TrueStroke {
    private static final int STEPS = 120;
    private static final double STILL = 1e-11;

    private final List<double[]> legs;
    private final boolean closed;
    private final StrokeStyle style;
    private final double half;
    private final List<double[]> probes = new ArrayList<>();

    /**
     * A subpath.
     *
     * @param legs eight numbers each, a cubic behind the other; lines too
     */
    TrueStroke(List<double[]> legs, boolean closed, StrokeStyle style) {
        this.legs = legs;
        this.closed = closed;
        this.style = style;
        this.half = style.width() / 2;
        legs.forEach(leg -> probes.add(probes(leg)));
    }

    /** Steps everywhere, and finer and finer ones around the places where the path is slowest. */
    private static double[] probes(double[] leg) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            all.add((double) i / STEPS);
        }
        for (int i = 1; i < 4000; i++) {
            double t = i / 4000.0;
            if (speed(leg, t) < speed(leg, t - 1 / 4000.0) && speed(leg, t) <= speed(leg, t + 1 / 4000.0)) {
                double low = t - 1 / 4000.0;
                double high = t + 1 / 4000.0;
                for (int k = 0; k < 90; k++) {
                    double a = low + (high - low) / 3;
                    double b = high - (high - low) / 3;
                    if (speed(leg, a) < speed(leg, b)) {
                        high = b;
                    } else {
                        low = a;
                    }
                }
                for (double off = 0.01; off > 1e-12; off /= 2) {
                    all.add(low - off);
                    all.add(low + off);
                }
            }
        }
        return all.stream()
                .filter(t -> t >= 0 && t <= 1)
                // At an end without a handle the path stands still, and any place would lie square to it.
                .map(t -> speed(leg, t) >= STILL ? t : t < 0.5 ? t + 1e-7 : t - 1e-7)
                .sorted()
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private static double at(double[] c, int axis, double t) {
        double u = 1 - t;
        return u * u * u * c[axis]
                + 3 * u * u * t * c[2 + axis]
                + 3 * u * t * t * c[4 + axis]
                + t * t * t * c[6 + axis];
    }

    private static double slope(double[] c, int axis, double t) {
        double u = 1 - t;
        return 3
                * (u * u * (c[2 + axis] - c[axis])
                        + 2 * u * t * (c[4 + axis] - c[2 + axis])
                        + t * t * (c[6 + axis] - c[4 + axis]));
    }

    private static double speed(double[] c, double t) {
        return Math.hypot(slope(c, 0, t), slope(c, 1, t));
    }

    /** A place beside a leg. */
    double[] beside(int leg, double t, double aside) {
        double[] c = legs.get(leg);
        double speed = speed(c, t);
        return new double[] {at(c, 0, t) - aside * slope(c, 1, t) / speed, at(c, 1, t) + aside * slope(c, 0, t) / speed
        };
    }

    boolean covers(double x, double y) {
        for (int i = 0; i < legs.size(); i++) {
            if (sweeps(i, x, y)) {
                return true;
            }
        }
        for (int i = 0; i + (closed ? 0 : 1) < legs.size(); i++) {
            double[] before = legs.get(i);
            double[] next = legs.get((i + 1) % legs.size());
            if (corner(before[6], before[7], end(before), start(next), x, y)) {
                return true;
            }
        }
        double[] first = legs.get(0);
        double[] last = legs.get(legs.size() - 1);
        double[] start = start(first);
        return !closed
                && (cap(first[0], first[1], new double[] {-start[0], -start[1]}, x, y)
                        || cap(last[6], last[7], end(last), x, y));
    }

    private boolean sweeps(int leg, double x, double y) {
        double[] c = legs.get(leg);
        double[] ts = probes.get(leg);
        for (int i = 1; i < ts.length; i++) {
            double low = ts[i - 1];
            double high = ts[i];
            // Two feet may lie side by side between two probes; then the polynomial turns round between them.
            boolean turns = (footSlope(c, low, x, y) <= 0) != (footSlope(c, high, x, y) <= 0);
            double middle = turns ? change(low, high, t -> footSlope(c, t, x, y)) : high;
            if (isFoot(c, low, middle, x, y) || isFoot(c, middle, high, x, y)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the foot of a perpendicular from the place, near enough, lies between two parameters. */
    private boolean isFoot(double[] c, double low, double high, double x, double y) {
        if ((foot(c, low, x, y) <= 0) == (foot(c, high, x, y) <= 0)) {
            return false;
        }
        double t = change(low, high, each -> foot(c, each, x, y));
        // Where the path stands still every place would seem to lie square to it.
        return speed(c, t) >= STILL && Math.hypot(at(c, 0, t) - x, at(c, 1, t) - y) <= half;
    }

    private static double change(double from, double to, DoubleUnaryOperator function) {
        double low = from;
        double high = to;
        boolean before = function.applyAsDouble(low) <= 0;
        for (int k = 0; k < 52; k++) {
            double middle = (low + high) / 2;
            if ((function.applyAsDouble(middle) <= 0) == before) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double footSlope(double[] c, double t, double x, double y) {
        double speed = speed(c, t);
        return (x - at(c, 0, t)) * bend(c, 0, t) + (y - at(c, 1, t)) * bend(c, 1, t) - speed * speed;
    }

    private static double bend(double[] c, int axis, double t) {
        return 6
                * ((1 - t) * (c[4 + axis] - 2 * c[2 + axis] + c[axis])
                        + t * (c[6 + axis] - 2 * c[4 + axis] + c[2 + axis]));
    }

    private static double foot(double[] c, double t, double x, double y) {
        return (x - at(c, 0, t)) * slope(c, 0, t) + (y - at(c, 1, t)) * slope(c, 1, t);
    }

    private static double[] start(double[] c) {
        return direction(c, 0, 2, 4, 6);
    }

    private static double[] end(double[] c) {
        double[] back = direction(c, 6, 4, 2, 0);
        return new double[] {-back[0], -back[1]};
    }

    private static double[] direction(double[] c, int from, int... to) {
        for (int k : to) {
            double dx = c[k] - c[from];
            double dy = c[k + 1] - c[from + 1];
            if (Math.hypot(dx, dy) > 1e-12) {
                return new double[] {dx / Math.hypot(dx, dy), dy / Math.hypot(dx, dy)};
            }
        }
        throw new IllegalArgumentException("no direction");
    }

    private boolean cap(double px, double py, double[] way, double x, double y) {
        double along = (x - px) * way[0] + (y - py) * way[1];
        double aside = (x - px) * way[1] - (y - py) * way[0];
        return style.cap() == Cap.ROUND
                ? along >= 0 && Math.hypot(along, aside) <= half
                : style.cap() == Cap.SQUARE && along >= 0 && along <= half && Math.abs(aside) <= half;
    }

    /** Seen along the line that halves the angle on the outer side. */
    private boolean corner(double px, double py, double[] in, double[] out, double x, double y) {
        double turn = Math.atan2(in[0] * out[1] - in[1] * out[0], in[0] * out[0] + in[1] * out[1]);
        double middle = Math.atan2(in[1], in[0]) + turn / 2 - Math.signum(turn) * Math.PI / 2;
        double up = (x - px) * Math.cos(middle) + (y - py) * Math.sin(middle);
        double aside = Math.abs((y - py) * Math.cos(middle) - (x - px) * Math.sin(middle));
        double wide = Math.abs(turn) / 2;
        boolean inSector = up >= 0 && aside * Math.cos(wide) <= up * Math.sin(wide);
        double bevel = half * Math.cos(wide);
        if (style.join() == Join.ROUND) {
            return inSector && Math.hypot(up, aside) <= half;
        }
        if (inSector && up <= bevel) {
            return true;
        }
        boolean mitred = style.join() == Join.MITER && 1 / Math.cos(wide) <= style.miterLimit() * (1 + 1e-9);
        return mitred && inSector && up * Math.cos(wide) + aside * Math.sin(wide) <= half;
    }
}
