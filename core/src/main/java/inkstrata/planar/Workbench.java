package inkstrata.planar;

import java.util.function.UnaryOperator;

/**
 * What one thread has at hand while it maps tiles, one after another.
 *
 * @param culling with its scratch space
 * @param stacker likewise
 * @param stacks all that this thread has come across
 */
record Workbench(Culling culling, Stacker stacker, StackTable stacks) {
    /** @param meaning what a stack of colours comes to; places of one meaning are not told apart */
    static Workbench of(Drawing drawing, Paints paints, MapSettings settings, UnaryOperator<int[]> meaning) {
        Stacker stacker = Stacker.of(drawing, paints, settings);
        return new Workbench(
                new Culling(drawing, paints, settings.depth()),
                (shapes, covers) -> meaning.apply(stacker.stack(shapes, covers)),
                new StackTable());
    }
}
