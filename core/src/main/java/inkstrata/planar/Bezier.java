package inkstrata.planar;

import java.util.Arrays;
import java.util.Optional;

/**
 * A line, quadratic or cubic by its control points: 2, 3 or 4 of them, x and y in turn.
 *
 * <p>Parts are cut by blossoming, which is de Casteljau's construction with a parameter of its own at each step (L. Ramshaw,
 * Blossoms are polar forms, 1989).
 */
final class Bezier {
    /** Each squares what is left of the way but for the curve's bend. */
    private static final int STEPS = 4;

    /** The most by which handles may be made longer or shorter for the sake of an area. */
    private static final double MOST_BENT = 0.5;

    /** Of Newton's method, for areas that are nearly linear in the bend. */
    private static final int AREA_STEPS = 2;

    private final double[] c;

    Bezier(double... controls) {
        c = controls;
    }

    /** 1 for a line, 2 or 3. */
    int degree() {
        return c.length / 2 - 1;
    }

    double x(int control) {
        return c[2 * control];
    }

    double y(int control) {
        return c[2 * control + 1];
    }

    double xAt(double t) {
        return blossom(0, t, t, t);
    }

    double yAt(double t) {
        return blossom(1, t, t, t);
    }

    /** The parameter from 0 to 1 of a point nearest to a place, by Gauss-Newton steps from one that is near already. */
    double nearest(double px, double py, double from) {
        double t = from;
        for (int step = 0; step < STEPS; step++) {
            double dx = dxAt(t);
            double dy = dyAt(t);
            double slope = dx * dx + dy * dy;
            if (slope == 0) {
                return t;
            }
            t = Math.max(0, Math.min(1, t + ((px - xAt(t)) * dx + (py - yAt(t)) * dy) / slope));
        }
        return t;
    }

    double dxAt(double t) {
        return slope(0, t);
    }

    double dyAt(double t) {
        return slope(1, t);
    }

    /** The derivative of one axis: the degree times the last two points of de Casteljau's construction, one from the other. */
    private double slope(int axis, double t) {
        double[] v = new double[c.length / 2];
        for (int i = 0; i < v.length; i++) {
            v[i] = c[2 * i + axis];
        }
        for (int n = v.length - 1; n > 1; n--) {
            for (int i = 0; i < n; i++) {
                v[i] += (v[i + 1] - v[i]) * t;
            }
        }
        return degree() * (v[1] - v[0]);
    }

    /** From one parameter to another; backwards if the second is less. */
    Bezier part(double from, double to) {
        double[] cut = new double[c.length];
        int degree = degree();
        double[] t = new double[3];
        for (int i = 0; i <= degree; i++) {
            Arrays.fill(t, from);
            Arrays.fill(t, 0, i, to);
            cut[2 * i] = blossom(0, t[0], t[1], t[2]);
            cut[2 * i + 1] = blossom(1, t[0], t[1], t[2]);
        }
        return new Bezier(cut);
    }

    /**
     * With its ends moved to given points. The control points next to them move by as much the other way, which leaves the area
     * beside the curve nearly as it was; in the middle a cubic is moved by a quarter as much.
     */
    Bezier between(double x0, double y0, double x1, double y1) {
        int degree = degree();
        double[] moved = c.clone();
        if (degree > 1) {
            moved[2] -= x0 - c[0];
            moved[3] -= y0 - c[1];
            moved[2 * degree - 2] -= x1 - c[2 * degree];
            moved[2 * degree - 1] -= y1 - c[2 * degree + 1];
        }
        moved[0] = x0;
        moved[1] = y0;
        moved[2 * degree] = x1;
        moved[2 * degree + 1] = y1;
        return new Bezier(moved);
    }

    /**
     * Between the curve and the line from its first point to its last: positive where the curve runs to the right of that line,
     * if y grows upwards.
     */
    double areaBesideChord() {
        int end = degree();
        return switch (end) {
            case 1 -> 0;
            case 2 -> cross(1, 2) / 3;
            default -> (cross(1, 2) + cross(1, 3) + 2 * cross(2, 3)) * 3 / 20;
        };
    }

    /**
     * With the same ends and that area beside the line between them: bent more or less for it; or if that takes too much, since it hardly bends, with
     * its inner control points moved square to that line. Empty for a line, and where both ends are one.
     */
    Optional<Bezier> withAreaBesideChord(double area) {
        Optional<Bezier> bent = bentFor(area);
        return bent.isPresent() ? bent : pushedFor(area);
    }

    private Optional<Bezier> bentFor(double area) {
        double bend = 1;
        Bezier bent = this;
        for (int step = 0; step < AREA_STEPS; step++) {
            // Areas are squares of the bend at most: differences over any step are slopes.
            double slope = bent(bend + 0.5).areaBesideChord() - bent(bend - 0.5).areaBesideChord();
            bend += (area - bent.areaBesideChord()) / slope;
            if (!(Math.abs(bend - 1) <= MOST_BENT)) {
                return Optional.empty();
            }
            bent = bent(bend);
        }
        return Optional.of(bent);
    }

    private Optional<Bezier> pushedFor(double area) {
        int end = degree();
        double dx = x(end) - x(0);
        double dy = y(end) - y(0);
        if (end == 1 || (dx == 0 && dy == 0)) {
            return Optional.empty();
        }
        // Areas are linear in how far points are pushed.
        double now = areaBesideChord();
        double times = (area - now) / (pushed(dy, -dx).areaBesideChord() - now);
        return Optional.of(pushed(times * dy, -times * dx));
    }

    private Bezier pushed(double dx, double dy) {
        double[] s = c.clone();
        for (int i = 2; i < c.length - 2; i += 2) {
            s[i] += dx;
            s[i + 1] += dy;
        }
        return new Bezier(s);
    }

    /** A cubic with its handles that many times as long; a quadratic whose control point is that many times as far off the middle. */
    private Bezier bent(double times) {
        double[] s = c.clone();
        int end = c.length - 2;
        for (int axis = 0; axis < 2; axis++) {
            double first = c[axis];
            double last = c[end + axis];
            double one = degree() == 2 ? (first + last) / 2 : first;
            double other = degree() == 2 ? one : last;
            s[2 + axis] = one + times * (c[2 + axis] - one);
            s[end - 2 + axis] = other + times * (c[end - 2 + axis] - other);
        }
        return new Bezier(s);
    }

    /** Of the ways from the first control point to two others. */
    private double cross(int one, int other) {
        return (x(one) - x(0)) * (y(other) - y(0)) - (y(one) - y(0)) * (x(other) - x(0));
    }

    /** Whether another starts or ends elsewhere, by more than half a grid step. */
    boolean isMovedIn(Bezier other) {
        int end = degree();
        return Math.hypot(x(0) - other.x(0), y(0) - other.y(0)) > 0.5
                || Math.hypot(x(end) - other.x(end), y(end) - other.y(end)) > 0.5;
    }

    /** Whether all control points are one on a grid of that many units to one. */
    boolean isNothing(int units) {
        for (int i = 2; i < c.length; i++) {
            if (Math.rint(c[i] * units) != Math.rint(c[i - 2] * units)) {
                return false;
            }
        }
        return true;
    }

    /** One axis of the polar form; as many of the parameters count as the degree says. */
    private double blossom(int axis, double r, double s, double t) {
        double[] at = {r, s, t};
        double[] v = new double[c.length / 2];
        for (int i = 0; i < v.length; i++) {
            v[i] = c[2 * i + axis];
        }
        for (int n = v.length - 1; n > 0; n--) {
            double u = at[v.length - 1 - n];
            for (int i = 0; i < n; i++) {
                v[i] += (v[i + 1] - v[i]) * u;
            }
        }
        return v[0];
    }
}
