package inkstrata.planar;

import java.util.Arrays;

/** Numbers those vertices of a tile that are needed: those inside from 0 on, those on its frame, which neighbours share, by {@code ~0, ~1, …}. */
final class TileVertices {
    private static final int UNKNOWN = Integer.MIN_VALUE;

    private final Box box;
    private final HotPixels all;
    private final int[] numbers;
    private final Ints inside;
    private final Ints onFrame = new Ints(64);

    TileVertices(Box box, HotPixels all) {
        this.box = box;
        this.all = all;
        this.numbers = new int[all.size()];
        this.inside = new Ints(2 * all.size());
        Arrays.fill(numbers, UNKNOWN);
    }

    /** The number of a vertex, a new one when it is asked for the first time. */
    int number(int vertex) {
        if (numbers[vertex] == UNKNOWN) {
            int x = all.x(vertex);
            int y = all.y(vertex);
            boolean shared = x == box.left() || x == box.right() || y == box.low() || y == box.high();
            Ints list = shared ? onFrame : inside;
            numbers[vertex] = shared ? ~(list.size() / 2) : list.size() / 2;
            list.add(x);
            list.add(y);
        }
        return numbers[vertex];
    }

    /** Those inside, x and y in turn. */
    int[] inside() {
        return inside.toArray();
    }

    /** Those on the frame, x and y in turn. */
    int[] onFrame() {
        return onFrame.toArray();
    }
}
