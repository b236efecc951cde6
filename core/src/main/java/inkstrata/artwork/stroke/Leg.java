package inkstrata.artwork.stroke;

/**
 * One segment of a path as a cubic, with its derivatives; a line is a cubic too, and knows it.
 *
 * <p>Immutable. The parameter t runs from 0 to 1.
 */
final class Leg {
    /** Speeds below this share of the control polygon count as standing still: rounding of a few operations. */
    private static final double STILL = 1e-12;

    private final double[] x;
    private final double[] y;
    private final boolean line;
    private final double still;

    private Leg(double[] x, double[] y, boolean line) {
        this.x = x;
        this.y = y;
        this.line = line;
        this.still = STILL * size();
    }

    static Leg line(double fromX, double fromY, double toX, double toY) {
        return new Leg(
                new double[] {fromX, fromX + (toX - fromX) / 3, toX - (toX - fromX) / 3, toX},
                new double[] {fromY, fromY + (toY - fromY) / 3, toY - (toY - fromY) / 3, toY},
                true);
    }

    static Leg cubic(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
        return new Leg(new double[] {x0, x1, x2, x3}, new double[] {y0, y1, y2, y3}, false);
    }

    static Leg quadratic(double x0, double y0, double x1, double y1, double x2, double y2) {
        return cubic(
                x0,
                y0,
                x0 + 2.0 / 3 * (x1 - x0),
                y0 + 2.0 / 3 * (y1 - y0),
                x2 + 2.0 / 3 * (x1 - x2),
                y2 + 2.0 / 3 * (y1 - y2),
                x2,
                y2);
    }

    boolean isLine() {
        return line;
    }

    /** The longest leg of the control polygon, up to which all differences are measured. */
    double size() {
        double size = 0;
        for (int i = 0; i < 3; i++) {
            size = Math.max(size, Math.hypot(x[i + 1] - x[i], y[i + 1] - y[i]));
        }
        return 3 * size;
    }

    /** A speed at which the direction is not known any more. */
    double still() {
        return still;
    }

    double x(double t) {
        return point(x, t);
    }

    double y(double t) {
        return point(y, t);
    }

    double dx(double t) {
        return first(x, t);
    }

    double dy(double t) {
        return first(y, t);
    }

    double ddx(double t) {
        return second(x, t);
    }

    double ddy(double t) {
        return second(y, t);
    }

    double dddx() {
        return third(x);
    }

    double dddy() {
        return third(y);
    }

    double speed(double t) {
        return Math.hypot(dx(t), dy(t));
    }

    private static double point(double[] c, double t) {
        if (t == 1) {
            return c[3];
        }
        double u = 1 - t;
        return u * u * u * c[0] + 3 * u * t * (u * c[1] + t * c[2]) + t * t * t * c[3];
    }

    private static double first(double[] c, double t) {
        double u = 1 - t;
        return 3 * (u * u * (c[1] - c[0]) + 2 * u * t * (c[2] - c[1]) + t * t * (c[3] - c[2]));
    }

    /** By differences of differences, so that what is straight along an axis stays exactly so. */
    private static double second(double[] c, double t) {
        double before = (c[2] - c[1]) - (c[1] - c[0]);
        double after = (c[3] - c[2]) - (c[2] - c[1]);
        return 6 * ((1 - t) * before + t * after);
    }

    private static double third(double[] c) {
        return 6 * (((c[3] - c[2]) - (c[2] - c[1])) - ((c[2] - c[1]) - (c[1] - c[0])));
    }
}
