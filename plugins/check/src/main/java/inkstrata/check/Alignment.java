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
 * <p>The closest points of outlines are taken for partners, the similarity that brings them together with the least squares is computed
 * in closed form (B. K. P. Horn, Closed-form solution of absolute orientation using unit quaternions, 1987, in the plane), and so on
 * from there (P. J. Besl and N. D. McKay, A method for registration of 3-D shapes, 1992). The worst partners are left out, so that
 * what is missing or added on a film does not matter.
 */
final class Alignment {
    private static final int MOST_POINTS = 1500;
    private static final int ROUNDS = 40;

    /** So many of the partners are trusted, the closest ones. */
    private static final double TRUSTED = 0.7;

    /** Partners are looked for so far at first, in millimetres, and nearer in each round. */
    private static final double FARTHEST_MM = 3;

    private static final double NEARER = 0.85;
    private static final double NEAREST_MM = 0.05;

    private final NearOutlines outlines;

    /** @param planned regions whose outlines the film may follow */
    Alignment(List<Region> planned) {
        outlines = new NearOutlines(planned, FARTHEST_MM * Grid.STEPS_PER_MM / 2);
    }

    /** From a first guess on. */
    Similarity of(Region film, Similarity guess) {
        List<Spot> points = points(film);
        Similarity place = guess;
        double reach = FARTHEST_MM;
        for (int round = 0; round < ROUNDS; round++) {
            List<Spot[]> partners = partners(points, place, reach * Grid.STEPS_PER_MM);
            if (partners.size() < 3) {
                return place;
            }
            place = place.then(together(partners));
            reach = Math.max(NEAREST_MM, reach * NEARER);
        }
        return place;
    }

    /** The similarity that takes the film's upright frame to the planned one's; none if their sides are in other ratios. */
    static Optional<Similarity> frames(Region film, Region planned, boolean mirrored) {
        Frame from = film.bounds().orElseThrow();
        Frame to = planned.bounds().orElseThrow();
        double scale = to.width() / from.width();
        if (Math.abs(Math.log(scale * from.height() / to.height())) > 0.05) {
            return Optional.empty();
        }
        double left = mirrored ? -from.right() : from.x();
        return Optional.of(new Similarity(scale, 0, to.x() - scale * left, to.y() - scale * from.y(), mirrored));
    }

    /** Evenly along all outlines. */
    private static List<Spot> points(Region film) {
        List<Spot> points = new ArrayList<>();
        double gap = film.perimeterMm() * Grid.STEPS_PER_MM / MOST_POINTS;
        double left = gap / 2;
        for (Ring ring : NearOutlines.rings(film)) {
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

    private List<Spot[]> partners(List<Spot> points, Similarity place, double reach) {
        List<Spot[]> partners = new ArrayList<>();
        for (Spot point : points) {
            Place there = place.of(point.place());
            Spot spot = new Spot(there.x() * Grid.STEPS_PER_MM, there.y() * Grid.STEPS_PER_MM);
            outlines.nearest(spot, reach).ifPresent(partner -> partners.add(new Spot[] {spot, partner}));
        }
        partners.sort(Comparator.comparingDouble(pair -> pair[0].distanceTo(pair[1])));
        return partners.subList(0, (int) Math.ceil(partners.size() * TRUSTED));
    }

    /** How far trusted points of the film are from the outlines on the average, in millimetres; the worst if most have no partner. */
    double residualMm(Region film, Similarity place) {
        List<Spot> points = points(film);
        List<Spot[]> partners = partners(points, place, FARTHEST_MM * Grid.STEPS_PER_MM);
        double sum = partners.stream()
                        .mapToDouble(pair -> pair[0].distanceTo(pair[1]))
                        .sum()
                * Grid.STEP_MM;
        double trusted = Math.max(1, points.size() * TRUSTED);
        return (sum + Math.max(0, trusted - partners.size()) * FARTHEST_MM) / trusted;
    }

    /** Least squares, in the plane. */
    private static Similarity together(List<Spot[]> partners) {
        double n = partners.size();
        double fx = 0;
        double fy = 0;
        double tx = 0;
        double ty = 0;
        for (Spot[] pair : partners) {
            fx += pair[0].x() / n;
            fy += pair[0].y() / n;
            tx += pair[1].x() / n;
            ty += pair[1].y() / n;
        }
        double dot = 0;
        double cross = 0;
        double square = 0;
        for (Spot[] pair : partners) {
            double x = pair[0].x() - fx;
            double y = pair[0].y() - fy;
            double u = pair[1].x() - tx;
            double v = pair[1].y() - ty;
            dot += x * u + y * v;
            cross += x * v - y * u;
            square += x * x + y * y;
        }
        double a = square == 0 ? 1 : dot / square;
        double b = square == 0 ? 0 : cross / square;
        return new Similarity(
                a, b, (tx - a * fx + b * fy) * Grid.STEP_MM, (ty - b * fx - a * fy) * Grid.STEP_MM, false);
    }
}
