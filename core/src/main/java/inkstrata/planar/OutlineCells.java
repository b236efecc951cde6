package inkstrata.planar;

import inkstrata.measure.Grid;

/** The edges of a region's outlines in buckets by cells of 2 mm, to ask how far they are from places. */
public final class OutlineCells {
    private static final int WIDTH = 2 * Grid.STEPS_PER_MM;

    private final int[] xy;
    private final int mask;
    private final int[] start;
    private final int[] listed;

    /** Lists them; work grows with their number and length. */
    public OutlineCells(Region region) {
        Ints ends = new Ints(1024);
        for (Ring ring : region.rings()) {
            for (int i = 0; i < ring.size(); i++) {
                int next = i + 1 == ring.size() ? 0 : i + 1;
                ends.add(ring.x(i));
                ends.add(ring.y(i));
                ends.add(ring.x(next));
                ends.add(ring.y(next));
            }
        }
        xy = ends.toArray();
        mask = Integer.highestOneBit(Math.max(16, xy.length / 4)) * 2 - 1;
        Ints edges = new Ints(xy.length / 3);
        Ints buckets = new Ints(xy.length / 3);
        for (int e = 0; e < xy.length / 4; e++) {
            int edge = e;
            CellWalk.along(xy[4 * e], xy[4 * e + 1], xy[4 * e + 2], xy[4 * e + 3], 1, WIDTH, (column, row) -> {
                edges.add(edge);
                buckets.add(bucket(column, row));
            });
        }
        start = new int[mask + 2];
        for (int i = 0; i < buckets.size(); i++) {
            start[buckets.get(i) + 1]++;
        }
        for (int b = 0; b <= mask; b++) {
            start[b + 1] += start[b];
        }
        int[] at = start.clone();
        listed = new int[edges.size()];
        for (int i = 0; i < edges.size(); i++) {
            listed[at[buckets.get(i)]++] = edges.get(i);
        }
    }

    /** Whether an edge comes as near to a place, all in grid steps. */
    boolean isWithin(double x, double y, double reach) {
        int lastColumn = (int) Math.floor((x + reach) / WIDTH);
        int lastRow = (int) Math.floor((y + reach) / WIDTH);
        for (int column = (int) Math.floor((x - reach) / WIDTH); column <= lastColumn; column++) {
            for (int row = (int) Math.floor((y - reach) / WIDTH); row <= lastRow; row++) {
                int bucket = bucket(column, row);
                for (int k = start[bucket]; k < start[bucket + 1]; k++) {
                    int e = 4 * listed[k];
                    if (CellWalk.distance(x, y, xy[e], xy[e + 1], xy[e + 2], xy[e + 3]) <= reach) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private int bucket(int column, int row) {
        int h = column * 0x9E3779B1 + row * 0x85EBCA77;
        h ^= h >>> 15;
        h *= 0x2C1B3C6D;
        return (h ^ h >>> 12) & mask;
    }
}
