package inkstrata.planar;

import inkstrata.measure.Frame;
import java.util.List;
import java.util.function.UnaryOperator;

/** All faces of an artwork with their stacks of paint. */
public final class PlanarMap {
    private final EdgeTable edges;
    private final Frame frame;
    private final List<PaintStack> stacks;

    PlanarMap(EdgeTable edges, Frame frame, List<PaintStack> stacks) {
        this.edges = edges;
        this.frame = frame;
        this.stacks = List.copyOf(stacks);
    }

    /** The picture's frame, on the grid. */
    public Frame frame() {
        return frame;
    }

    /** The distinct stacks; a stack's number is its position here. */
    public List<PaintStack> stacks() {
        return stacks;
    }

    EdgeTable edges() {
        return edges;
    }

    /** What all faces with that stack measure together, in square millimetres. */
    public double areaMm2(int stack) {
        throw new UnsupportedOperationException();
    }

    /** The union of all faces whose stack is in the set; shares every vertex with its neighbours. */
    public Region dissolve(StackSet set) {
        throw new UnsupportedOperationException();
    }

    /** The edges with a stack of {@code one} on one side and a stack of {@code other} on the other; the two share none. */
    public Border border(StackSet one, StackSet other) {
        throw new UnsupportedOperationException();
    }

    /** The same map with other paints; stacks keep their numbers, so several may become equal. */
    public PlanarMap repainted(UnaryOperator<Paint> change) {
        throw new UnsupportedOperationException();
    }
}
