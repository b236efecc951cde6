package inkstrata.planar;

import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tells what strips were found: one {@link Seam} for each pair of contours that run along each other, and what shows in and beside the strip. */
final class SeamReport {
    /** A strip too wide to be closed is asked about only if it is longer than so many times its width: two shapes that merely pass each other are not. */
    private static final double LONG = 10;

    private final Map<Pair, Sum> sums = new LinkedHashMap<>();

    /** Adds runs of stretches ({@link SeamRuns}), all of which close or none. */
    void add(List<List<SeamStretch>> runs, SeamStacks stacks) {
        for (List<SeamStretch> run : runs) {
            for (SeamStretch stretch : run) {
                sums.computeIfAbsent(Pair.of(stretch, stacks), p -> new Sum()).add(stretch);
            }
        }
    }

    /** In the order of {@link Seam}. */
    List<Seam> seams() {
        List<Seam> seams = new ArrayList<>();
        sums.forEach((pair, sum) -> {
            if (pair.closes || sum.length() >= LONG * sum.widest) {
                Place place = new Place(
                        Grid.STEP_MM * (sum.at.x() + sum.at.toX()) / 2, Grid.STEP_MM * (sum.at.y() + sum.at.toY()) / 2);
                seams.add(new Seam(
                        pair.shows,
                        pair.one,
                        pair.other,
                        sum.length() * Grid.STEP_MM,
                        sum.widest * Grid.STEP_MM,
                        place,
                        pair.closes));
            }
        });
        return seams.stream().sorted().toList();
    }

    private record Pair(
            boolean closes,
            int contour,
            int facing,
            Optional<Paint> shows,
            Optional<Paint> one,
            Optional<Paint> other) {
        static Pair of(SeamStretch stretch, SeamStacks stacks) {
            boolean isLower = stretch.isLower();
            return new Pair(
                    stretch.closes(),
                    isLower ? stretch.contour() : stretch.facing(),
                    isLower ? stretch.facing() : stretch.contour(),
                    stacks.picture(stretch.strip()),
                    stacks.picture(isLower ? stretch.one() : stretch.other()),
                    stacks.picture(isLower ? stretch.other() : stretch.one()));
        }
    }

    private static final class Sum {
        private double fromLower;
        private double fromHigher;
        private double widest = -1;
        private SeamWay at;

        /** Parts of a strip may have been found from both sides. */
        double length() {
            return Math.max(fromLower, fromHigher);
        }

        void add(SeamStretch stretch) {
            fromLower += stretch.isLower() ? stretch.length() : 0;
            fromHigher += stretch.isLower() ? 0 : stretch.length();
            SeamWay way = stretch.first().length() > stretch.last().length() ? stretch.first() : stretch.last();
            if (stretch.widest() > widest) {
                widest = stretch.widest();
                at = way;
            }
        }
    }
}
