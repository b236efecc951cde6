package inkstrata.planar;

/**
 * Which walks run around the same interior.
 *
 * <p>A walk of positive area runs around the outside of its interior; another one runs around something that lies within an
 * interior: that interior is the one above the edge next below the walk's leftmost vertex.
 */
final class Interiors {
    private static final int NOT_ASKED = -1;

    private final Borderlines lines;
    /** For each walk itself, or another one around the same interior, farther left. */
    private final int[] around;

    private Interiors(Borderlines lines) {
        this.lines = lines;
        this.around = new int[lines.walkCount()];
    }

    /**
     * Finds them.
     *
     * @throws IllegalStateException if edges cross
     */
    static Interiors of(Borderlines lines, Crew crew) {
        Interiors interiors = new Interiors(lines);
        interiors.find(crew);
        return interiors;
    }

    /** The walk around the outside of the interior that a walk with a kind runs around; shortens the way for the next who asks. */
    int of(int walk) {
        int outermost = walk;
        while (around[outermost] != outermost) {
            outermost = around[outermost];
        }
        for (int step = walk; step != outermost; ) {
            int next = around[step];
            around[step] = outermost;
            step = next;
        }
        return outermost;
    }

    private void find(Crew crew) {
        int[] leftmost = new int[around.length];
        boolean[] asked = new boolean[lines.vertexCount()];
        boolean any = false;
        for (int walk = 0; walk < around.length; walk++) {
            int first = lines.firstOfWalk(walk);
            around[walk] = walk;
            leftmost[walk] = NOT_ASKED;
            if (lines.kind(first) != Borderlines.NONE && lines.doubledArea(walk) < 0) {
                leftmost[walk] = leftmost(first);
                asked[leftmost[walk]] = true;
                any = true;
            }
        }
        if (!any) {
            return;
        }
        int[] below = EdgeBelow.of(lines, asked, crew);
        for (int walk = 0; walk < around.length; walk++) {
            if (leftmost[walk] != NOT_ASKED) {
                around[walk] = walkAt(below[leftmost[walk]], walk, leftmost[walk]);
            }
        }
    }

    private int walkAt(int half, int walk, int vertex) {
        if (half < 0 || lines.kind(half) != lines.kind(lines.firstOfWalk(walk))) {
            throw new IllegalStateException("what lies around the hole at " + lines.x(vertex) + ", " + lines.y(vertex)
                    + " (grid steps) is not what lies beside its edges");
        }
        return lines.walkOf(half);
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
}
