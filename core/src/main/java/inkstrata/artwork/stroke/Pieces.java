package inkstrata.artwork.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Cuts a span into pieces along each of which the pen does one thing: no cusp inside, turns to one side only, grows
 * more curved or less, and the centre of curvature lies on one side of the pen's end. Then halves them until cubics follow all sides.
 */
final class Pieces {
    /** Halvings after which a piece is taken as it is: its ends are neighbours in 64 bits. */
    private static final int MOST_HALVINGS = 48;

    /** Cosine of the largest turn of a piece, 60 degrees. */
    private static final double LARGEST_TURN = 0.5;

    /** Steps in which changes of sign are looked for; what is missed is found when the piece is halved. */
    private static final int STEPS = 32;

    private static final double BESIDE_A_CUSP = 1e-6;

    /** In the path's units of 1 µm. */
    private static final double TINY = 0.02;

    private static final double[] PROBES = {0.03, 0.2, 0.4, 0.6, 0.8, 0.97};

    private final Leg leg;
    private final double half;
    private final List<Piece> pieces = new ArrayList<>();

    private Pieces(Leg leg, double half) {
        this.leg = leg;
        this.half = half;
    }

    /**
     * The pieces of a span, in order.
     *
     * @param first at the span's start
     * @param half of the pen's width
     */
    static List<Piece> of(Span span, Station first, double half) {
        Pieces cut = new Pieces(span.leg(), half);
        if (span.leg().isLine()) {
            cut.add(span.from(), span.to(), first, span.end(), true);
            return cut.pieces;
        }
        Station start = first;
        double from = span.from();
        for (double to : cut.places(span)) {
            Station end = Station.at(span.leg(), to, false);
            cut.halve(from, to, start, end, 0);
            start = Station.at(span.leg(), to, true);
            from = to;
        }
        return cut.pieces;
    }

    /** Where to cut, the span's end included. */
    private SortedSet<Double> places(Span span) {
        TreeSet<Double> slow = new TreeSet<>();
        Roots.add(t -> leg.dx(t) * leg.ddx(t) + leg.dy(t) * leg.ddy(t), span.from(), span.to(), STEPS, slow);
        TreeSet<Double> cusps = new TreeSet<>(slow);
        cusps.add(0.0);
        cusps.add(1.0);
        cusps.removeIf(t -> leg.speed(t) > leg.still());
        TreeSet<Double> bends = new TreeSet<>(slow);
        Roots.add(t -> leg.dx(t) * leg.ddy(t) - leg.dy(t) * leg.ddx(t), span.from(), span.to(), STEPS, bends);
        Roots.add(t -> Station.at(leg, t, true).turningRate(), span.from(), span.to(), STEPS, bends);
        bends.add(span.to());
        TreeSet<Double> places = new TreeSet<>(bends);
        double from = span.from();
        for (double to : bends) {
            Roots.add(this::forwards, from, to, STEPS / 4, places);
            from = to;
        }
        places.removeIf(t -> isBeside(t, cusps) && t != span.to());
        places.remove(span.from());
        return places;
    }

    /** Whether a place is so near to one where the path stands still that what was found there is rounding. */
    private static boolean isBeside(double place, SortedSet<Double> cusps) {
        return cusps.stream().anyMatch(cusp -> cusp != place && Math.abs(cusp - place) < BESIDE_A_CUSP);
    }

    /** Positive where the inner end of the pen goes forwards. */
    private double forwards(double t) {
        return forwards(Station.at(leg, t, true));
    }

    private double forwards(Station station) {
        return station.speed() - half * Math.abs(station.turning());
    }

    private void halve(double from, double to, Station start, Station end, int halvings) {
        if (isTiny(start, end)) {
            pieces.add(new Piece(start, end, between(start, end, half), between(start, end, -half), null, null, true));
            return;
        }
        boolean last = halvings == MOST_HALVINGS || !(from < (from + to) / 2 && (from + to) / 2 < to);
        if ((last || isOneThing(from, to, start, end)) && add(from, to, start, end, last)) {
            return;
        }
        double middle = (from + to) / 2;
        Station between = Station.at(leg, middle, true);
        halve(from, middle, start, between, halvings + 1);
        halve(middle, to, between, end, halvings + 1);
    }

    /** Whether no part of the pen moves by anything that could be seen; what the path does here is rounding. */
    private boolean isTiny(Station start, Station end) {
        return Math.hypot(end.x() - start.x(), end.y() - start.y()) + half * Math.abs(start.turnTo(end)) < TINY;
    }

    private static double[] between(Station start, Station end, double aside) {
        double x = start.x(aside);
        double y = start.y(aside);
        return new double[] {x, y, x, y, end.x(aside), end.y(aside), end.x(aside), end.y(aside)};
    }

    private boolean isOneThing(double from, double to, Station start, Station end) {
        if (start.tx() * end.tx() + start.ty() * end.ty() < LARGEST_TURN) {
            return false;
        }
        int signs = 0;
        for (double probe : PROBES) {
            Station station = Station.at(leg, from + probe * (to - from), true);
            double forwards = forwards(station);
            if (Math.abs(forwards) > 1e-6 * station.speed()) {
                signs |= forwards > 0 ? 1 : 2;
            }
        }
        return signs != 3;
    }

    /** Adds a piece if cubics follow it closely, or in any case; tells whether it did. */
    private boolean add(double from, double to, Station start, Station end, boolean anyway) {
        Station middle = Station.at(leg, (from + to) / 2, true);
        double step = to - from;
        double[] left = Fitting.end(start, end, step, half);
        double[] right = Fitting.end(start, end, step, -half);
        if (!anyway && !(Fitting.follows(left, leg, from, to, half) && Fitting.follows(right, leg, from, to, -half))) {
            return false;
        }
        if (forwards(middle) >= 0 || leg.isLine()) {
            pieces.add(new Piece(start, end, left, right, null, null, leg.isLine()));
            return true;
        }
        double[] centres = Fitting.centres(leg, from, to, start, end, half);
        pieces.add(
                middle.turning() > 0
                        ? new Piece(start, end, null, right, centres, left, false)
                        : new Piece(start, end, left, null, centres, right, false));
        return true;
    }
}
