package inkstrata.artwork.stroke;

/** Cubics that follow a place square to a leg, by ends and derivatives there. */
final class Fitting {
    /** How far a cubic may lie beside what it follows, in the path's units of 1 µm: a quarter of that is seen in practice. */
    private static final double ASIDE = 0.5;

    /** How far it may be ahead or behind; that moves no edge. */
    private static final double ALONG = 5;

    /** How far lines between centres may lie beside the curve of centres. */
    private static final double CENTRE_ASIDE = 0.2;

    private static final double[] PROBES = {0.125, 0.25, 0.5, 0.75, 0.875};

    private Fitting() {}

    /** The curve of the pen's end. */
    static double[] end(Station from, Station to, double step, double aside) {
        double start = step / 3 * from.forwards(aside);
        double end = step / 3 * to.forwards(aside);
        return new double[] {
            from.x(aside),
            from.y(aside),
            from.x(aside) + start * from.tx(),
            from.y(aside) + start * from.ty(),
            to.x(aside) - end * to.tx(),
            to.y(aside) - end * to.ty(),
            to.x(aside),
            to.y(aside),
        };
    }

    /**
     * The centres of curvature, none farther than the pen reaches, as x and y of points on their curve. Lines between these
     * lie on the side where no pen passes: so what it covers going forwards and what it covers going back overlap there and
     * leave no gap.
     */
    static double[] centres(Leg leg, double from, double to, Station start, Station end, double half) {
        double way = Math.abs(within(end, half) - within(start, half));
        int count = (int) Math.ceil(Math.sqrt(way * Math.abs(start.turnTo(end)) / (8 * CENTRE_ASIDE))) + 1;
        double[] centres = new double[2 * count + 2];
        for (int i = 0; i <= count; i++) {
            Station at = i == 0 ? start : i == count ? end : Station.at(leg, from + (to - from) * i / count, true);
            centres[2 * i] = at.x(within(at, half));
            centres[2 * i + 1] = at.y(within(at, half));
        }
        return centres;
    }

    private static double within(Station station, double half) {
        double radius = station.radius();
        return Math.abs(Math.abs(radius) - half) < 1e-6 * half || Math.abs(radius) > half
                ? Math.copySign(half, station.turning())
                : radius;
    }

    /** Whether a cubic follows the places that it should. */
    static boolean follows(double[] cubic, Leg leg, double from, double to, double aside) {
        Leg fitted = Leg.cubic(cubic[0], cubic[1], cubic[2], cubic[3], cubic[4], cubic[5], cubic[6], cubic[7]);
        for (double probe : PROBES) {
            Station station = Station.at(leg, from + probe * (to - from), true);
            double dx = fitted.x(probe) - station.x(aside);
            double dy = fitted.y(probe) - station.y(aside);
            if (Math.abs(dy * station.tx() - dx * station.ty()) > ASIDE
                    || Math.abs(dx * station.tx() + dy * station.ty()) > ALONG) {
                return false;
            }
        }
        return true;
    }
}
