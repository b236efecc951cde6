package inkstrata.planar;

/**
 * What one thread has at hand while it maps tiles, one after another.
 *
 * @param culling with its scratch space
 * @param stacker likewise
 * @param stacks all that this thread has come across
 */
record Workbench(Culling culling, Stacker stacker, StackTable stacks) {
    static Workbench of(Drawing drawing, Paints paints, MapSettings settings) {
        return new Workbench(
                new Culling(drawing, paints, settings.depth()),
                Stacker.of(drawing, paints, settings),
                new StackTable());
    }
}
