package inkstrata.check;

import inkstrata.check.OutlinePoints.Point;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.planar.Corners;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A film that is spread or choked all round: a stroke left around its areas, or an exposure for too long.
 *
 * @param offsetMm how far its outlines lie outside of where they should; below zero if inside
 * @param expected what it would print if nothing else were wrong
 * @param misfitMm how far its outlines are apart from those, on the average
 */
record AllRound(double offsetMm, Region expected, double misfitMm) {
    /** Less, in millimetres, is within what exposing does anyway (our own choice). */
    static final double LEAST_MM = 0.02;

    /** More, in millimetres, is no spread any more (our own choice). */
    private static final double MOST_MM = 2;

    private static final int POINTS = 1500;

    /** So many of the outline's points must tell the same amount. */
    private static final double ALIKE = 0.55;

    /** They tell the same if they differ by no more than this, in millimetres. */
    private static final double SAME_MM = 0.012;

    /**
     * Finds out by how much; none if it is not the same all round.
     *
     * @param target what it was to print
     */
    static Optional<AllRound> of(Region film, Region target, Frame frame) {
        NearOutlines outlines = new NearOutlines(List.of(film), Grid.STEPS_PER_MM / 4);
        List<Point> points = OutlinePoints.of(target, POINTS).stream()
                .filter(point -> isWithin(frame, point.spot()))
                .toList();
        double[] offsets = points.stream()
                .flatMap(point -> offsetMm(point, outlines).stream())
                .sorted()
                .mapToDouble(Double::doubleValue)
                .toArray();
        if (offsets.length < ALIKE * points.size() || offsets.length == 0) {
            return Optional.empty();
        }
        double middle = commonest(offsets);
        long alike = Arrays.stream(offsets)
                .filter(offset -> Math.abs(offset - middle) < SAME_MM)
                .count();
        if (Math.abs(middle) < LEAST_MM || alike < ALIKE * points.size()) {
            return Optional.empty();
        }
        return candidates(target, middle)
                .map(expected -> within(frame, expected))
                .filter(expected -> !expected.isEmpty())
                .map(expected -> new AllRound(middle, expected, Fit.misfitMm(film, expected, frame)))
                .min(Comparator.comparingDouble(AllRound::misfitMm));
    }

    /** Where most of them lie: the middle of the narrowest range with enough of them. */
    private static double commonest(double[] sorted) {
        int enough = Math.max(1, (int) (ALIKE * sorted.length));
        int best = 0;
        for (int i = 0; i + enough <= sorted.length; i++) {
            if (sorted[i + enough - 1] - sorted[i] < sorted[best + enough - 1] - sorted[best]) {
                best = i;
            }
        }
        return (sorted[best] + sorted[best + enough - 1]) / 2;
    }

    private static Stream<Region> candidates(Region target, double offset) {
        return offset < 0
                ? Stream.of(target.shrunk(-offset))
                : Stream.of(Corners.ROUND, Corners.MITRE).map(corners -> target.grown(offset, corners));
    }

    private static Region within(Frame frame, Region all) {
        return CoverMap.of(frame, List.of(all)).where(cover -> !cover.isEmpty());
    }

    /** Along the frame a film ends whatever it does. */
    private static boolean isWithin(Frame frame, Spot spot) {
        double x = spot.x() * Grid.STEP_MM;
        double y = spot.y() * Grid.STEP_MM;
        return x > frame.x() + SAME_MM
                && y > frame.y() + SAME_MM
                && x < frame.right() - SAME_MM
                && y < frame.bottom() - SAME_MM;
    }

    /** Only partners straight across tell: beside a corner the nearest place is another side's. */
    private static Optional<Double> offsetMm(Point point, NearOutlines film) {
        return film.nearest(point.spot(), MOST_MM * Grid.STEPS_PER_MM).map(near -> {
            double dx = near.x() - point.spot().x();
            double dy = near.y() - point.spot().y();
            return -(dx * point.inX() + dy * point.inY()) * Grid.STEP_MM;
        });
    }
}
