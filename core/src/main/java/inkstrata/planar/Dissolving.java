package inkstrata.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Joins the faces of each kind into regions: walks along borderlines, cut into simple rings wherever they meet a vertex again.
 *
 * <p>A walk around one interior has one ring of positive area, the shell, if it is the outer border of that interior; its
 * other rings are holes that touch the shell or one another. A walk without a shell runs around something that lies within
 * an interior; that interior is the one above the edge next below the walk's leftmost vertex.
 */
final class Dissolving {
    private final Borderlines lines;
    private final int[] walkOf;
    private final Ints firstHalf = new Ints(64);
    private final List<Ring> shells = new ArrayList<>();
    private final List<List<Ring>> holes = new ArrayList<>();

    private Dissolving(Borderlines lines) {
        this.lines = lines;
        this.walkOf = new int[lines.size()];
    }

    /**
     * One region for each kind, in one pass; work grows as n log n with the edges.
     *
     * @param kindOfStack for each stack a kind from 0 to {@code kinds - 1}, or {@link Borderlines#NONE}
     */
    static List<Region> dissolve(EdgeTable table, int[] kindOfStack, int kinds) {
        Dissolving dissolving = new Dissolving(Borderlines.of(table, kindOfStack));
        dissolving.walkAll();
        dissolving.findShells();
        return dissolving.regions(kinds);
    }

    private void walkAll() {
        Arrays.fill(walkOf, -1);
        RingCutter cutter = new RingCutter(lines);
        for (int h = 0; h < lines.size(); h++) {
            if (walkOf[h] < 0 && lines.kind(h) != Borderlines.NONE) {
                walk(h, cutter);
            }
        }
    }

    private void walk(int start, RingCutter cutter) {
        int walk = firstHalf.size();
        firstHalf.add(start);
        int h = start;
        do {
            walkOf[h] = walk;
            h = lines.next(h);
        } while (h != start);
        Ring shell = null;
        List<Ring> inside = new ArrayList<>(1);
        for (Ring ring : cutter.cut(start)) {
            if (ring.doubledArea() < 0) {
                inside.add(ring);
            } else if (shell == null) {
                shell = ring;
            } else {
                throw new IllegalStateException("two shells at " + ring.x(0) + ", " + ring.y(0)
                        + " (grid steps) belong to one interior: edges cross");
            }
        }
        shells.add(shell);
        holes.add(inside);
    }

    /** Hands the holes of walks without a shell to the walk whose shell surrounds them. */
    private void findShells() {
        int[] leftmost = new int[shells.size()];
        boolean[] asked = new boolean[lines.vertexCount()];
        boolean any = false;
        for (int walk = 0; walk < leftmost.length; walk++) {
            if (shells.get(walk) == null) {
                leftmost[walk] = leftmost(firstHalf.get(walk));
                asked[leftmost[walk]] = true;
                any = true;
            }
        }
        if (!any) {
            return;
        }
        int[] below = EdgeBelow.of(lines, asked);
        int[] around = new int[leftmost.length];
        for (int walk = 0; walk < around.length; walk++) {
            around[walk] = shells.get(walk) == null ? walkAt(below[leftmost[walk]], walk) : walk;
        }
        for (int walk = 0; walk < around.length; walk++) {
            if (shells.get(walk) == null) {
                holes.get(outermost(walk, around)).addAll(holes.get(walk));
            }
        }
    }

    private int walkAt(int half, int walk) {
        if (half < 0 || lines.kind(half) != lines.kind(firstHalf.get(walk))) {
            Ring hole = holes.get(walk).get(0);
            throw new IllegalStateException("what lies around the hole at " + hole.x(0) + ", " + hole.y(0)
                    + " (grid steps) is not what lies beside its edges");
        }
        return walkOf[half];
    }

    /** The walk with the shell, by way of others around the same interior, each farther left; shortens that way for the next. */
    private static int outermost(int walk, int[] around) {
        int end = walk;
        while (around[end] != end) {
            end = around[end];
        }
        for (int step = walk; step != end; ) {
            int next = around[step];
            around[step] = end;
            step = next;
        }
        return end;
    }

    private int leftmost(int start) {
        int found = lines.origin(start);
        for (int h = lines.next(start); h != start; h = lines.next(h)) {
            int v = lines.origin(h);
            if (lines.x(v) < lines.x(found) || (lines.x(v) == lines.x(found) && lines.y(v) < lines.y(found))) {
                found = v;
            }
        }
        return found;
    }

    private List<Region> regions(int kinds) {
        List<List<Region.Polygon>> polygons = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            polygons.add(new ArrayList<>());
        }
        for (int walk = 0; walk < shells.size(); walk++) {
            if (shells.get(walk) != null) {
                polygons.get(lines.kind(firstHalf.get(walk)))
                        .add(new Region.Polygon(shells.get(walk), holes.get(walk)));
            }
        }
        return polygons.stream().map(Region::new).toList();
    }
}
