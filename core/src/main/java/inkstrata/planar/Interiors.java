package inkstrata.planar;

/**
 * Which walks run around the same interior.
 *
 * <p>A walk of positive area runs around the outside of its interior; another one runs around something that lies within an
 * interior: that interior is the one above the edge next below the walk's leftmost vertex.
 */
final class Interiors {
    private final Borderlines lines;
    private final int[] around;

    private Interiors(Borderlines lines) {
        this.lines = lines;
        this.around = new int[lines.walkCount()];
    }

    static Interiors of(Borderlines lines) {
        Interiors interiors = new Interiors(lines);
        interiors.find();
        return interiors;
    }

    /** The walk around the outside of the interior that a walk with a kind runs around. */
    int of(int walk) {
        int outermost = walk;
        while (around[outermost] != outermost) {
            outermost = around[outermost];
        }
        return outermost;
    }

    private void find() {
        int[] leftmost = new int[around.length];
        boolean[] asked = new boolean[lines.vertexCount()];
        boolean any = false;
        for (int walk = 0; walk < around.length; walk++) {
            int first = lines.firstOfWalk(walk);
            around[walk] = walk;
            leftmost[walk] = -1;
            if (lines.kind(first) != Borderlines.NONE && lines.doubledArea(walk) < 0) {
                leftmost[walk] = leftmost(first);
                asked[leftmost[walk]] = true;
                any = true;
            }
        }
        if (!any) {
            return;
        }
        int[] below = EdgeBelow.of(lines, asked);
        for (int walk = 0; walk < around.length; walk++) {
            if (leftmost[walk] >= 0) {
                around[walk] = lines.walkOf(below[leftmost[walk]]);
            }
        }
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
