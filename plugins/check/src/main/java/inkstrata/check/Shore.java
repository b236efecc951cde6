package inkstrata.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Where the picture ends and sheet begins. */
final class Shore {
    /**
     * Nearer to the sheet than this, in grid steps (2 µm), ink and sheet are not told apart: films bend there by up to half a step
     * where they meet others.
     */
    static final double SEAM = 8;

    /** Hulls that are asked about may be as large as the reach, and mostly are much smaller. */
    private static final double FINER = 4;

    /** In every cell what comes into the seam around it, and what crossing forgives in it; some of it more than once. */
    private final Cells<Stretch> cells;

    private final Cells<Spot> crossings;
    private final double reach;

    /**
     * Begins one.
     *
     * @param reach questions are about things of up to that size, and nearer to a crossing than that all counts as sheet; in grid steps
     */
    Shore(double reach) {
        cells = new Cells<>(reach / FINER);
        crossings = new Cells<>(reach);
        this.reach = reach;
    }

    void addCrossing(Spot spot) {
        crossings.add(spot.x() - reach, spot.y() - reach, spot.x() + reach, spot.y() + reach, spot);
    }

    void add(Stretch edge) {
        Outlines.chop(edge, cells.size(), part -> {
            double left = Math.min(part.ax(), part.bx());
            double top = Math.min(part.ay(), part.by());
            double right = Math.max(part.ax(), part.bx());
            double bottom = Math.max(part.ay(), part.by());
            cells.add(left - SEAM, top - SEAM, right + SEAM, bottom + SEAM, edge);
        });
    }

    /** Whether some places, and all that lies between them, lie in the picture and not in the seam beside the sheet. */
    boolean isClear(List<Spot> spots) {
        double left = spots.stream().mapToDouble(Spot::x).min().orElseThrow() - SEAM;
        double right = spots.stream().mapToDouble(Spot::x).max().orElseThrow() + SEAM;
        double top = spots.stream().mapToDouble(Spot::y).min().orElseThrow() - SEAM;
        double bottom = spots.stream().mapToDouble(Spot::y).max().orElseThrow() + SEAM;
        for (Stretch edge : edgesAround(spots)) {
            if (edge.reachesInto(left, top, right, bottom) && isNear(edge, spots)) {
                return false;
            }
        }
        List<Spot> near = new ArrayList<>();
        around(spots, crossings, near::add);
        return near.stream().noneMatch(crossing -> isForgiven(crossing, spots));
    }

    /** Whether a crossing comes near the hull of the spots; one in the middle of it is a corner of the shore and found as such. */
    private boolean isForgiven(Spot crossing, List<Spot> spots) {
        for (Spot one : spots) {
            for (Spot other : spots) {
                if (Stretch.between(one, other).nearest(crossing).distanceTo(crossing) < reach) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The parts of a stretch that lie neither in the seam nor where a crossing forgives. */
    void cut(Stretch stretch, Consumer<Stretch> taker) {
        List<Spot> ends = List.of(stretch.start(), stretch.end());
        List<Spot> near = new ArrayList<>();
        around(ends, crossings, near::add);
        List<Stretch> edges = edgesAround(ends);
        if (near.isEmpty() && edges.isEmpty()) {
            taker.accept(stretch);
            return;
        }
        List<Stretch> parts = List.of(stretch);
        for (Spot crossing : near) {
            parts = away(parts, Stretch.between(crossing, crossing), reach);
        }
        for (Stretch edge : edges) {
            parts = away(parts, edge, SEAM);
        }
        parts.forEach(taker);
    }

    private static List<Stretch> away(List<Stretch> parts, Stretch other, double radius) {
        return parts.stream()
                .flatMap(part -> part.awayFrom(other, radius).stream())
                .toList();
    }

    /** Whether sheet, or what counts as such, lies across every way between two stretches; if it says no it may still be so. */
    boolean isAcross(Stretch one, Stretch other) {
        List<Stretch> ways = List.of(
                new Stretch(one.ax(), one.ay(), other.ax(), other.ay()),
                new Stretch(one.ax(), one.ay(), other.bx(), other.by()),
                new Stretch(one.bx(), one.by(), other.ax(), other.ay()),
                new Stretch(one.bx(), one.by(), other.bx(), other.by()));
        List<Spot> ends = List.of(one.start(), one.end(), other.start(), other.end());
        List<Stretch> walls = edgesAround(ends);
        Stretch way = Stretch.between(one.middle(), other.middle());
        around(ends, crossings, crossing -> walls.add(way.acrossAt(crossing, reach)));
        return walls.stream().anyMatch(wall -> ways.stream().allMatch(wall::crosses));
    }

    /** Whether a corner of the sheet lies in all triangles with one corner on each of three stretches. */
    boolean isAmid(Stretch one, Stretch other, Stretch third) {
        List<Spot> ends = List.of(one.start(), one.end(), other.start(), other.end(), third.start(), third.end());
        for (Stretch edge : edgesAround(ends)) {
            int side = one.sideOfWaysTo(other, edge.ax(), edge.ay());
            if (side != 0
                    && side == other.sideOfWaysTo(third, edge.ax(), edge.ay())
                    && side == third.sideOfWaysTo(one, edge.ax(), edge.ay())) {
                return true;
            }
        }
        return false;
    }

    private List<Stretch> edgesAround(List<Spot> spots) {
        List<Stretch> found = new ArrayList<>();
        around(spots, cells, found::add);
        return found;
    }

    /** Hands over what was added to the cells that the spots' bounding rectangle touches. */
    private static <T> void around(List<Spot> spots, Cells<T> cells, Consumer<T> taker) {
        double left = spots.get(0).x();
        double top = spots.get(0).y();
        double right = left;
        double bottom = top;
        for (Spot spot : spots) {
            left = Math.min(left, spot.x());
            right = Math.max(right, spot.x());
            top = Math.min(top, spot.y());
            bottom = Math.max(bottom, spot.y());
        }
        cells.near(left, top, right, bottom, taker);
    }

    /** Whether an edge comes into the seam around the hull of the spots. */
    private static boolean isNear(Stretch edge, List<Spot> spots) {
        for (int i = 0; i < spots.size(); i++) {
            if (edge.nearest(spots.get(i)).distanceTo(spots.get(i)) < SEAM) {
                return true;
            }
            for (int j = 0; j < i; j++) {
                if (Stretch.between(spots.get(i), spots.get(j)).distanceTo(edge) < SEAM) {
                    return true;
                }
                for (int k = 0; k < j; k++) {
                    if (holds(spots.get(i), spots.get(j), spots.get(k), edge.start())) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean holds(Spot a, Spot b, Spot c, Spot spot) {
        double ab = Stretch.between(a, b).side(spot.x(), spot.y());
        double bc = Stretch.between(b, c).side(spot.x(), spot.y());
        double ca = Stretch.between(c, a).side(spot.x(), spot.y());
        return (ab > 0 && bc > 0 && ca > 0) || (ab < 0 && bc < 0 && ca < 0);
    }
}
