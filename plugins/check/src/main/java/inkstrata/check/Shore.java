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
        crossings.add(Box.around(spot).wider(reach), spot);
    }

    void add(Stretch edge) {
        Outlines.chop(edge, cells.size(), part -> {
            cells.add(Box.around(part).wider(SEAM), edge);
        });
    }

    /** Whether some places, and all that lies between them, lie in the picture and not in the seam beside the sheet. */
    boolean isClear(List<Spot> spots) {
        Box box = Box.around(spots);
        Box seam = box.wider(SEAM);
        for (Stretch edge : edgesIn(box)) {
            if (Box.around(edge).meets(seam) && isNear(edge, spots)) {
                return false;
            }
        }
        List<Spot> near = new ArrayList<>();
        crossings.near(box, near::add);
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

    /** What of it matters to things within a rectangle. */
    Near near(Box box) {
        List<Spot> forgiving = new ArrayList<>();
        crossings.near(box, forgiving::add);
        return new Near(edgesIn(box), forgiving, reach);
    }

    /** Edges and crossings some of which lie near to things. */
    record Near(List<Stretch> edges, List<Spot> crossings, double reach) {
        /** The parts of a stretch that lie neither in the seam nor where a crossing forgives. */
        void cut(Stretch stretch, Consumer<Stretch> taker) {
            List<Stretch> parts = List.of(stretch);
            for (Spot crossing : crossings) {
                parts = away(parts, Stretch.between(crossing, crossing), reach);
            }
            Box box = Box.around(stretch).wider(SEAM);
            for (Stretch edge : edges) {
                if (Box.around(edge).meets(box)) {
                    parts = away(parts, edge, SEAM);
                }
            }
            parts.forEach(taker);
        }

        private static List<Stretch> away(List<Stretch> parts, Stretch other, double radius) {
            return parts.stream()
                    .flatMap(part -> part.awayFrom(other, radius).stream())
                    .toList();
        }
    }

    /** Whether sheet, or what counts as such, lies across every way between two stretches; if it says no it may still be so. */
    boolean isAcross(Stretch one, Stretch other) {
        List<Stretch> ways = List.of(
                new Stretch(one.ax(), one.ay(), other.ax(), other.ay()),
                new Stretch(one.ax(), one.ay(), other.bx(), other.by()),
                new Stretch(one.bx(), one.by(), other.ax(), other.ay()),
                new Stretch(one.bx(), one.by(), other.bx(), other.by()));
        Box box = Box.around(one).with(Box.around(other));
        List<Stretch> walls = edgesIn(box);
        Stretch way = Stretch.between(one.middle(), other.middle());
        crossings.near(box, crossing -> walls.add(way.acrossAt(crossing, reach)));
        return walls.stream().anyMatch(wall -> ways.stream().allMatch(wall::crosses));
    }

    /** Whether a corner of the sheet lies in all triangles with one corner on each of three stretches. */
    boolean isAmid(Stretch one, Stretch other, Stretch third) {
        Box box = Box.around(one).with(Box.around(other)).with(Box.around(third));
        for (Stretch edge : edgesIn(box)) {
            int side = one.sideOfWaysTo(other, edge.ax(), edge.ay());
            if (side != 0
                    && side == other.sideOfWaysTo(third, edge.ax(), edge.ay())
                    && side == third.sideOfWaysTo(one, edge.ax(), edge.ay())) {
                return true;
            }
        }
        return false;
    }

    private List<Stretch> edgesIn(Box box) {
        List<Stretch> found = new ArrayList<>();
        cells.near(box, found::add);
        return found;
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
