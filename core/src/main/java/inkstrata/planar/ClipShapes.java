package inkstrata.planar;

import java.util.Arrays;

/**
 * The clips that matter in a tile, and for each the shapes under it.
 *
 * @param numbers of the clips in the drawing, rising; a clip's place in the tile is its position here
 * @param starts for each clip where its shapes begin, and at the end the number of all
 * @param shapes by their place in the tile
 */
record ClipShapes(int[] numbers, int[] starts, int[] shapes) {
    private static final ClipShapes NONE = new ClipShapes(new int[0], new int[1], new int[0]);

    static ClipShapes of(Tile tile, Drawing drawing) {
        if (drawing.clipCount() == 0) {
            return NONE;
        }
        Ints all = new Ints(16);
        for (int shape : tile.shapes()) {
            for (int clip : drawing.clips()[shape]) {
                all.add(clip);
            }
        }
        int[] numbers = Arrays.stream(all.toArray()).sorted().distinct().toArray();
        int[] starts = new int[numbers.length + 1];
        for (int i = 0; i < all.size(); i++) {
            starts[Arrays.binarySearch(numbers, all.get(i)) + 1]++;
        }
        for (int clip = 0; clip < numbers.length; clip++) {
            starts[clip + 1] += starts[clip];
        }
        int[] at = starts.clone();
        int[] shapes = new int[all.size()];
        for (int s = 0; s < tile.shapes().length; s++) {
            for (int clip : drawing.clips()[tile.shapes()[s]]) {
                shapes[at[Arrays.binarySearch(numbers, clip)]++] = s;
            }
        }
        return new ClipShapes(numbers, starts, shapes);
    }

    int count() {
        return numbers.length;
    }

    /** The place in the tile of the clip with that number in the drawing. */
    int place(int number) {
        return Arrays.binarySearch(numbers, number);
    }

    /** Where a clip's shapes begin; they end where the next one's do. */
    int first(int clip) {
        return starts[clip];
    }

    int shape(int at) {
        return shapes[at];
    }
}
