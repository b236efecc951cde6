package inkstrata.planar;

/** Stacks of shapes that hide one another: simply their colours. */
final class OpaqueStacker implements Stacker {
    private final Paints paints;
    private final int depth;
    private final boolean[] seen;
    private final Ints found = new Ints(16);

    OpaqueStacker(Paints paints, int depth) {
        this.paints = paints;
        this.depth = depth;
        this.seen = new boolean[paints.colourCount()];
    }

    @Override
    public int[] stack(int[] shapes, long[] covers) {
        found.clear();
        int marks = 0;
        for (int word = 0; word < covers.length && found.size() - marks < depth; word++) {
            for (long rest = covers[word]; rest != 0 && found.size() - marks < depth; rest &= rest - 1) {
                int shape = shapes[word * 64 + Long.numberOfTrailingZeros(rest)];
                int colour = paints.colourOf(shape);
                marks += shape < paints.marks() ? 1 : 0;
                if (!seen[colour]) {
                    seen[colour] = true;
                    found.add(colour);
                }
            }
        }
        int[] stack = new int[found.size()];
        for (int i = 0; i < stack.length; i++) {
            seen[found.get(i)] = false;
            stack[i] = paints.packed(found.get(i));
        }
        return stack;
    }
}
