package inkstrata.planar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where strips were found in maps of one drawing: what no mark could close is found once more in the next map, and is not to be told twice.
 */
final class SeamPlaces {
    /** The side of a cell in grid steps; strips are narrower. */
    private static final int CELL = 1 << 12;

    private final List<Found> before = new ArrayList<>();

    /**
     * A part of a strip.
     *
     * @param strip the paints that it is of
     */
    private record Found(PaintStack strip, SeamStretch stretch) {}

    /** Of runs of one map those stretches in the middle of which no strip of the same paints was found before; from now on these were. */
    List<List<SeamStretch>> notBefore(List<List<SeamStretch>> runs, SeamStacks stacks) {
        Set<SeamStretch> known = known(runs, stacks);
        List<List<SeamStretch>> fresh = new ArrayList<>();
        for (List<SeamStretch> run : runs) {
            fresh.add(run.stream().filter(stretch -> !known.contains(stretch)).toList());
            run.forEach(stretch -> before.add(new Found(stacks.stack(stretch.strip()), stretch)));
        }
        return fresh;
    }

    private Set<SeamStretch> known(List<List<SeamStretch>> runs, SeamStacks stacks) {
        Set<SeamStretch> known = new HashSet<>();
        if (before.isEmpty()) {
            return known;
        }
        Map<Long, List<SeamStretch>> cells = new HashMap<>();
        for (List<SeamStretch> run : runs) {
            for (SeamStretch stretch : run) {
                double x = (middleX(stretch.first()) + middleX(stretch.last())) / 2;
                double y = (middleY(stretch.first()) + middleY(stretch.last())) / 2;
                cells.computeIfAbsent(cell(x, y), cell -> new ArrayList<>()).add(stretch);
            }
        }
        for (Found found : before) {
            for (long cell : cells(found.stretch)) {
                for (SeamStretch stretch : cells.getOrDefault(cell, List.of())) {
                    if (found.strip.equals(stacks.stack(stretch.strip())) && holdsMiddle(found.stretch, stretch)) {
                        known.add(stretch);
                    }
                }
            }
        }
        return known;
    }

    /** All cells that a stretch may lie in: those around places along its middle, no farther apart than a cell is wide. */
    private static Set<Long> cells(SeamStretch stretch) {
        double x = middleX(stretch.first());
        double y = middleY(stretch.first());
        double dx = middleX(stretch.last()) - x;
        double dy = middleY(stretch.last()) - y;
        int pieces = 1 + (int) (SeamWay.size(dx, dy) / CELL);
        Set<Long> cells = new HashSet<>();
        for (int i = 0; i <= pieces; i++) {
            for (int column = -1; column <= 1; column++) {
                for (int row = -1; row <= 1; row++) {
                    cells.add(cell(x + dx * i / pieces + column * CELL, y + dy * i / pieces + row * CELL));
                }
            }
        }
        return cells;
    }

    private static long cell(double x, double y) {
        return (long) Math.floor(x / CELL) << 32 | ((long) Math.floor(y / CELL) & 0xffffffffL);
    }

    private static double middleX(SeamWay way) {
        return (way.x() + (double) way.toX()) / 2;
    }

    private static double middleY(SeamWay way) {
        return (way.y() + (double) way.toY()) / 2;
    }

    /** Whether the middle of a stretch lies in the mark of another, which goes on a little beyond its sides. */
    private static boolean holdsMiddle(SeamStretch mark, SeamStretch stretch) {
        double x = (middleX(stretch.first()) + middleX(stretch.last())) / 2;
        double y = (middleY(stretch.first()) + middleY(stretch.last())) / 2;
        SeamWay a = mark.first();
        SeamWay b = mark.last();
        int[] px = {a.behindX(), b.behindX(), b.beyondX(), a.beyondX()};
        int[] py = {a.behindY(), b.behindY(), b.beyondY(), a.beyondY()};
        boolean isInside = false;
        for (int i = 0, before = 3; i < 4; before = i++) {
            if ((py[i] > y) != (py[before] > y)
                    && x < px[i] + (px[before] - px[i]) * (y - py[i]) / (py[before] - py[i])) {
                isInside = !isInside;
            }
        }
        return isInside;
    }
}
