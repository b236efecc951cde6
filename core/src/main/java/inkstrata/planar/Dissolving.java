package inkstrata.planar;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;

/**
 * Joins the faces of each kind into regions: walks along borderlines, cut into simple rings wherever they meet a vertex again.
 *
 * <p>Of the rings of all walks around one interior just one has positive area, its shell; the others are holes in it, which may
 * touch the shell or one another.
 */
final class Dissolving {
    private final Borderlines lines;
    private final Interiors interiors;
    /** For each walk the shell and the holes of the interior that it runs around the outside of. */
    private final Ring[] shells;

    private final List<List<Ring>> holes;

    private Dissolving(Borderlines lines, Interiors interiors) {
        this.lines = lines;
        this.interiors = interiors;
        this.shells = new Ring[lines.walkCount()];
        this.holes = new ArrayList<>(shells.length);
        for (int walk = 0; walk < shells.length; walk++) {
            holes.add(new ArrayList<>(1));
        }
    }

    /**
     * One region for each kind, in one pass; work grows as n log n with the edges.
     *
     * @param kindOfStack for each stack a kind from 0 to {@code kinds - 1}, or {@link Borderlines#NONE}
     */
    static List<Region> dissolve(EdgeTable table, int[] kindOfStack, int kinds, Crew crew) {
        Borderlines lines = Borderlines.of(table, kindOfStack, crew);
        ForkJoinTask<List<List<List<Ring>>>> cut =
                crew.start(() -> crew.share(lines.walkCount(), (first, end) -> cut(lines, first, end)));
        Dissolving dissolving = new Dissolving(lines, Interiors.of(lines, crew));
        int walk = 0;
        for (List<List<Ring>> part : cut.join()) {
            for (List<Ring> rings : part) {
                dissolving.add(walk++, rings);
            }
        }
        return crew.share(kinds, dissolving::regions).stream()
                .flatMap(List::stream)
                .toList();
    }

    /** The rings of walks from one on until before another; none of those around what nobody asked for. */
    private static List<List<Ring>> cut(Borderlines lines, int first, int end) {
        RingCutter cutter = new RingCutter(lines);
        List<List<Ring>> rings = new ArrayList<>(end - first);
        for (int walk = first; walk < end; walk++) {
            int half = lines.firstOfWalk(walk);
            rings.add(lines.kind(half) == Borderlines.NONE ? List.of() : cutter.cut(half));
        }
        return rings;
    }

    private void add(int walk, List<Ring> rings) {
        int outermost = interiors.of(walk);
        for (Ring ring : rings) {
            if (ring.doubledArea() < 0) {
                holes.get(outermost).add(ring);
            } else if (shells[outermost] == null) {
                shells[outermost] = ring;
            } else {
                throw new IllegalStateException("two shells at " + ring.x(0) + ", " + ring.y(0)
                        + " (grid steps) belong to one interior: edges cross");
            }
        }
    }

    private List<Region> regions(int first, int end) {
        List<List<Region.Polygon>> polygons = new ArrayList<>();
        for (int kind = first; kind < end; kind++) {
            polygons.add(new ArrayList<>());
        }
        for (int walk = 0; walk < shells.length; walk++) {
            int kind = lines.kind(lines.firstOfWalk(walk));
            if (shells[walk] != null && kind >= first && kind < end) {
                polygons.get(kind - first).add(new Region.Polygon(shells[walk], holes.get(walk)));
            }
        }
        return polygons.stream().map(Region::new).toList();
    }
}
