package inkstrata.planar;

import java.util.Arrays;
import java.util.List;

/**
 * The straight segments of all flattened outlines, rounded to the grid, each with the curve it came from.
 *
 * <p>Segment {@code s} runs from (x0, y0) to (x1, y1) in grid steps, belongs to an outline, and covers the parameters t0
 * to t1 of one command of it. Segments of one outline follow one another.
 */
final class Segments {
    private int[] ends;
    private int[] outlines;
    private int[] commands;
    private float[] from;
    private float[] to;
    private int size;

    Segments() {
        this(64);
    }

    private Segments(int capacity) {
        ends = new int[4 * capacity];
        outlines = new int[capacity];
        commands = new int[capacity];
        from = new float[capacity];
        to = new float[capacity];
    }

    /** All of them, one part after another. */
    static Segments joined(List<Segments> parts, Crew crew) {
        int[] before = new int[parts.size() + 1];
        for (int i = 0; i < parts.size(); i++) {
            before[i + 1] = before[i] + parts.get(i).size;
        }
        Segments all = new Segments(before[parts.size()]);
        all.size = before[parts.size()];
        crew.share(parts.size(), (first, end) -> {
            for (int i = first; i < end; i++) {
                all.put(parts.get(i), before[i]);
            }
            return end - first;
        });
        return all;
    }

    private void put(Segments part, int at) {
        System.arraycopy(part.ends, 0, ends, 4 * at, 4 * part.size);
        System.arraycopy(part.outlines, 0, outlines, at, part.size);
        System.arraycopy(part.commands, 0, commands, at, part.size);
        System.arraycopy(part.from, 0, from, at, part.size);
        System.arraycopy(part.to, 0, to, at, part.size);
    }

    void add(int x0, int y0, int x1, int y1, int outline, int command, double t0, double t1) {
        if (size == outlines.length) {
            int capacity = size + (size >> 1) + 16;
            ends = Arrays.copyOf(ends, 4 * capacity);
            outlines = Arrays.copyOf(outlines, capacity);
            commands = Arrays.copyOf(commands, capacity);
            from = Arrays.copyOf(from, capacity);
            to = Arrays.copyOf(to, capacity);
        }
        ends[4 * size] = x0;
        ends[4 * size + 1] = y0;
        ends[4 * size + 2] = x1;
        ends[4 * size + 3] = y1;
        outlines[size] = outline;
        commands[size] = command;
        from[size] = (float) t0;
        to[size] = (float) t1;
        size++;
    }

    int size() {
        return size;
    }

    int x0(int segment) {
        return ends[4 * segment];
    }

    int y0(int segment) {
        return ends[4 * segment + 1];
    }

    int x1(int segment) {
        return ends[4 * segment + 2];
    }

    int y1(int segment) {
        return ends[4 * segment + 3];
    }

    int outline(int segment) {
        return outlines[segment];
    }

    /** Position of its curve in the outline's commands; the outline's command count for a closing line. */
    int command(int segment) {
        return commands[segment];
    }

    double t0(int segment) {
        return from[segment];
    }

    double t1(int segment) {
        return to[segment];
    }

    /** Whether two segments run between the same two points, in the same direction or not. */
    boolean haveSameEnds(int one, int other) {
        boolean same = x0(one) == x0(other) && y0(one) == y0(other) && x1(one) == x1(other) && y1(one) == y1(other);
        return same || (x0(one) == x1(other) && y0(one) == y1(other) && x1(one) == x0(other) && y1(one) == y0(other));
    }

    /** Where the segment's line meets the vertical line at {@code x}, rounded, halves up; it must not be vertical. */
    int yAt(int segment, int x) {
        return at(x, x0(segment), y0(segment), x1(segment), y1(segment));
    }

    /** Where the segment's line meets the horizontal line at {@code y}, rounded, halves up; it must not be horizontal. */
    int xAt(int segment, int y) {
        return at(y, y0(segment), x0(segment), y1(segment), x1(segment));
    }

    /** v of the line through (u0, v0) and (u1, v1) at u: floor(v + 1/2), exact since |u|, |v| &lt; 2^26. */
    private static int at(int u, int u0, int v0, int u1, int v1) {
        long run = (long) u1 - u0;
        long rise = ((long) u - u0) * ((long) v1 - v0);
        if (run < 0) {
            run = -run;
            rise = -rise;
        }
        return (int) (v0 + Math.floorDiv(2 * rise + run, 2 * run));
    }
}
