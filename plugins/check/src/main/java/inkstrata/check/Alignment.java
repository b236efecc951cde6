package inkstrata.check;

import inkstrata.check.OutlinePoints.Point;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Affine;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds how a film must be placed so that its outlines come to lie on those that were planned.
 *
 * <p>The closest points of outlines are taken for partners, all points are brought nearer to the lines through their partners at once, by
 * least squares, and so on from there (P. J. Besl and N. D. McKay, A method for registration of 3-D shapes, 1992; Y. Chen and G.
 * Medioni, Object modelling by registration of multiple range images, 1992). The worst partners are left out, so that what is missing
 * or added on a film does not matter.
 */
final class Alignment {
    private static final int MOST_POINTS = 1500;

    /** So many tell which first guesses are worth a closer look. */
    private static final int FEW_POINTS = 250;

    /** Of the first guesses so many are looked at closer. */
    private static final int GUESSES = 6;

    private static final int ROUNDS = 20;
    private static final int LAST_ROUNDS = 10;

    /** Outlines that are no farther apart on the average, in grid steps, lie on each other: no other guess need be looked at. */
    private static final double EXACT = 2;

    /** So many of the partners are trusted, the closest ones. */
    private static final double TRUSTED = 0.7;

    /** Partners are looked for so far at first, in millimetres, and nearer in each round. */
    private static final double FARTHEST_MM = 3;

    private static final double NEARER = 0.75;
    private static final double NEAREST_MM = 0.05;

    /** Where a place is good but for a little, partners are looked for so far, in millimetres. */
    private static final double NEARBY_MM = 0.5;

    /** A first guess is right in size but for this. */
    private static final double MOST_SCALING = 0.03;

    private final Outline planned;
    private final List<Spot> few;

    /** @param planned what the film is to print */
    Alignment(Region planned) {
        this.planned = new Outline(planned);
        this.few = spots(planned, FEW_POINTS);
    }

    /** An outline's points, evenly along it, and the outline itself. */
    static final class Outline {
        private final List<Spot> points;
        private final List<Spot> few;
        private final NearOutlines near;

        Outline(Region region) {
            points = spots(region, MOST_POINTS);
            few = spots(region, FEW_POINTS);
            near = new NearOutlines(List.of(region), FARTHEST_MM * Grid.STEPS_PER_MM / 2);
        }

        /** Whether it runs along all of a region's outline, that near. */
        boolean holds(Region region, double reachMm) {
            return spots(region, FEW_POINTS).stream()
                    .allMatch(spot ->
                            near.nearest(spot, reachMm * Grid.STEPS_PER_MM).isPresent());
        }
    }

    /**
     * A point and its partner.
     *
     * @param apart how far they are apart
     */
    private record Pair(Spot point, Spot partner, double apart) {}

    /**
     * A place and how far outlines are apart then.
     *
     * @param residual of the points that are trusted
     * @param all of all of them
     */
    private record Rated(Affine place, double residual, double all) {
        /** Where trusted points lie on each other in several places, the others tell: a bar that slid along itself. */
        static final Comparator<Rated> BEST_FIRST = Comparator.comparingDouble(
                        (Rated rated) -> Math.max(EXACT, rated.residual()))
                .thenComparingDouble(Rated::all);
    }

    /**
     * Finds it.
     *
     * @param guesses roughly how it may be meant to lie
     */
    Optional<Affine> of(Outline film, List<Affine> guesses) {
        List<Affine> bestFirst = guesses.stream()
                .map(guess -> rated(few, film, guess))
                .sorted(Rated.BEST_FIRST)
                .limit(GUESSES)
                .map(Rated::place)
                .toList();
        Rated best = null;
        for (Affine guess : bestFirst) {
            Affine place = improved(film.few, guess, Nearing.SIMILAR, FARTHEST_MM);
            Rated rated = rated(few, film, place);
            best = best == null || Rated.BEST_FIRST.compare(rated, best) < 0 ? rated : best;
            if (best.all() < EXACT) {
                break;
            }
        }
        return Optional.ofNullable(best).map(rated -> improved(film.points, rated.place(), Nearing.SIMILAR, NEARBY_MM));
    }

    /** The same where it may be stretched and slanted a little, too. */
    Affine stretched(Outline film, Affine guess) {
        return improved(film.points, guess, Nearing.FREE, NEARBY_MM);
    }

    /** Whether what was planned runs along all of a region's outline, that near. */
    boolean holds(Region region, double reachMm) {
        return planned.holds(region, reachMm);
    }

    /** How much of what was planned has the film's outline that near, of 1. */
    double share(Outline film, Affine place, double reachMm) {
        Affine back = place.inverse();
        double reach = reachMm * Grid.STEPS_PER_MM / place.scale();
        long near = planned.points.stream()
                .filter(point -> film.near.nearest(moved(point, back), reach).isPresent())
                .count();
        return (double) near / Math.max(1, planned.points.size());
    }

    private Affine improved(List<Spot> points, Affine guess, Nearing nearing, double farthestMm) {
        Affine place = guess;
        double reach = farthestMm;
        int rounds = farthestMm > NEARBY_MM ? ROUNDS : LAST_ROUNDS;
        for (int round = 0; round < rounds; round++) {
            Optional<Affine> step = nearing.step(pairs(points, place, planned.near, reach).stream()
                    .limit(trusted(points))
                    .map(pair -> new Spot[] {pair.point(), pair.partner()})
                    .toList());
            if (step.isEmpty()) {
                return guess;
            }
            place = place.then(step.get());
            double scaling = Math.log(place.scale() / guess.scale());
            // Not the other way round: that would take a scale that is no number for a small one.
            if (!(Math.abs(scaling) <= MOST_SCALING)) {
                return guess;
            }
            reach = Math.max(NEAREST_MM, reach * NEARER);
        }
        return place;
    }

    /**
     * How far points of what was planned are from the film on the average, in grid steps; the most where they have no partner.
     * Not the other way round: marks and words on a film have no partners anywhere.
     */
    private static Rated rated(List<Spot> points, Outline film, Affine place) {
        double reach = FARTHEST_MM / Math.max(1, place.scale());
        List<Double> apart = pairs(points, place.inverse(), film.near, reach).stream()
                .map(pair -> pair.apart() * place.scale())
                .toList();
        return new Rated(
                place,
                average(apart.subList(0, Math.min(apart.size(), trusted(points))), trusted(points)),
                average(apart, points.size()));
    }

    private static double average(List<Double> apart, int of) {
        double farthest = FARTHEST_MM * Grid.STEPS_PER_MM;
        double sum = apart.stream().mapToDouble(Double::doubleValue).sum();
        return (sum + Math.max(0, of - apart.size()) * farthest) / Math.max(1, of);
    }

    private static int trusted(List<Spot> points) {
        return (int) Math.ceil(points.size() * TRUSTED);
    }

    /** The closest first. */
    private static List<Pair> pairs(List<Spot> points, Affine place, NearOutlines outlines, double reachMm) {
        List<Pair> pairs = new ArrayList<>();
        for (Spot point : points) {
            Spot spot = moved(point, place);
            outlines.nearest(spot, reachMm * Grid.STEPS_PER_MM)
                    .ifPresent(partner -> pairs.add(new Pair(spot, partner, spot.distanceTo(partner))));
        }
        pairs.sort(Comparator.comparingDouble(Pair::apart));
        return pairs;
    }

    private static Spot moved(Spot point, Affine place) {
        Place there = place.of(point.place());
        return new Spot(there.x() * Grid.STEPS_PER_MM, there.y() * Grid.STEPS_PER_MM);
    }

    /** What takes the film's upright frame to the planned one's; none if their sides are in other ratios. */
    static Optional<Affine> frames(Frame from, Frame to, boolean mirrored) {
        double scale = to.width() / from.width();
        if (!(Math.abs(Math.log(scale * from.height() / to.height())) <= MOST_SCALING)) {
            return Optional.empty();
        }
        double sign = mirrored ? -1 : 1;
        double left = mirrored ? -from.right() : from.x();
        return Optional.of(new Affine(sign * scale, 0, 0, scale, to.x() - scale * left, to.y() - scale * from.y()));
    }

    private static List<Spot> spots(Region region, int count) {
        return OutlinePoints.of(region, count).stream().map(Point::spot).toList();
    }
}
