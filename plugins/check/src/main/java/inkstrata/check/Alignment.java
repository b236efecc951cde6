package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.planar.Similarity;
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
    private static final int ROUNDS = 25;

    /** So many of the partners are trusted, the closest ones. */
    private static final double TRUSTED = 0.7;

    /** Partners are looked for so far at first, in millimetres, and nearer in each round. */
    private static final double FARTHEST_MM = 3;

    private static final double NEARER = 0.75;
    private static final double NEAREST_MM = 0.05;

    /** A first guess is right in size but for this. */
    private static final double MOST_SCALING = 0.03;

    private final Outline planned;

    /** @param planned what the film is to print */
    Alignment(Region planned) {
        this.planned = new Outline(planned);
    }

    /** An outline's points, evenly along it, and the outline itself. */
    private static final class Outline {
        private final List<Spot> points;
        private final NearOutlines near;

        Outline(Region region) {
            points = points(region);
            near = new NearOutlines(List.of(region), FARTHEST_MM * Grid.STEPS_PER_MM / 2);
        }
    }

    /**
     * A point and its partner.
     *
     * @param apart how far they are apart
     */
    private record Pair(Spot point, Spot partner, double apart) {}

    /**
     * Finds it.
     *
     * @param guesses roughly how it may be meant to lie
     */
    Optional<Similarity> of(Region film, List<Similarity> guesses) {
        Outline outline = new Outline(film);
        return guesses.stream()
                .map(guess -> improved(outline, guess))
                .min(Comparator.comparingDouble(place -> residual(outline, place)));
    }

    private Similarity improved(Outline film, Similarity guess) {
        Similarity place = guess;
        double reach = FARTHEST_MM;
        for (int round = 0; round < ROUNDS; round++) {
            Optional<Similarity> step = Nearing.step(pairs(film.points, place, planned.near, reach).stream()
                    .map(pair -> new Spot[] {pair.point(), pair.partner()})
                    .toList());
            if (step.isEmpty()) {
                return guess;
            }
            place = place.then(step.get());
            if (Math.abs(Math.log(place.scale() / guess.scale())) > MOST_SCALING) {
                return guess;
            }
            reach = Math.max(NEAREST_MM, reach * NEARER);
        }
        return place;
    }

    /**
     * How far trusted points of what was planned are from the film on the average, in grid steps; the most where they have no partner.
     * Not the other way round: marks and words on a film have no partners anywhere.
     */
    private double residual(Outline film, Similarity place) {
        return residual(planned.points, place.inverse(), film.near) * place.scale();
    }

    private static double residual(List<Spot> points, Similarity place, NearOutlines outlines) {
        List<Pair> pairs = pairs(points, place, outlines, FARTHEST_MM);
        double farthest = FARTHEST_MM * Grid.STEPS_PER_MM;
        double trusted = Math.max(1, points.size() * TRUSTED);
        double sum = pairs.stream().mapToDouble(Pair::apart).sum();
        return (sum + Math.max(0, trusted - pairs.size()) * farthest) / trusted;
    }

    private static List<Pair> pairs(List<Spot> points, Similarity place, NearOutlines outlines, double reachMm) {
        List<Pair> pairs = new ArrayList<>();
        for (Spot point : points) {
            Place there = place.of(point.place());
            Spot spot = new Spot(there.x() * Grid.STEPS_PER_MM, there.y() * Grid.STEPS_PER_MM);
            outlines.nearest(spot, reachMm * Grid.STEPS_PER_MM)
                    .ifPresent(partner -> pairs.add(new Pair(spot, partner, spot.distanceTo(partner))));
        }
        pairs.sort(Comparator.comparingDouble(Pair::apart));
        return pairs.subList(0, (int) Math.min(pairs.size(), Math.ceil(points.size() * TRUSTED)));
    }

    /** The similarity that takes the film's upright frame to the planned one's; none if their sides are in other ratios. */
    static Optional<Similarity> frames(Region film, Region planned, boolean mirrored) {
        Frame from = film.bounds().orElseThrow();
        Frame to = planned.bounds().orElseThrow();
        double scale = to.width() / from.width();
        if (Math.abs(Math.log(scale * from.height() / to.height())) > MOST_SCALING) {
            return Optional.empty();
        }
        double left = mirrored ? -from.right() : from.x();
        return Optional.of(new Similarity(scale, 0, to.x() - scale * left, to.y() - scale * from.y(), mirrored));
    }

    private static List<Spot> points(Region region) {
        List<Spot> points = new ArrayList<>();
        double gap = region.perimeterMm() * Grid.STEPS_PER_MM / MOST_POINTS;
        double left = gap / 2;
        for (Ring ring : NearOutlines.rings(region)) {
            for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
                double dx = ring.x(i) - ring.x(j);
                double dy = ring.y(i) - ring.y(j);
                double length = Math.hypot(dx, dy);
                for (; left < length; left += gap) {
                    points.add(new Spot(ring.x(j) + dx * left / length, ring.y(j) + dy * left / length));
                }
                left -= length;
            }
        }
        return points;
    }
}
