package inkstrata.positive.page;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.measure.Frame;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A page's outlines as straight edges, in the order in which rows of pixels meet them from the top.
 *
 * <p>Curves are cut into chords the same way whichever way they run, and each edge is kept with its upper end first: what two
 * pages share gives the very same numbers on both.
 */
final class PixelEdges implements CurveSink {
    /** The most by which a chord may leave its curve, in millimetres: a twentieth of a pixel at 2,540 to the inch. */
    private static final double FLATNESS_MM = 0.0005;

    private double[] ends = new double[4 * 1024];
    /** For each edge the number of its item, and whether it runs upwards in its outline. */
    private int[] items = new int[1024];

    private boolean[] upwards = new boolean[1024];
    private int size;
    private int item;
    private double startX;
    private double startY;
    private double x;
    private double y;

    private final List<Page.Item> all;
    private final List<Frame> windows;
    private final int[] order;

    PixelEdges(Page page) {
        all = page.groups().stream().flatMap(group -> group.items().stream()).toList();
        windows = page.groups().stream()
                .flatMap(group -> group.items().stream().map(i -> group.window().orElse(page.frame())))
                .toList();
        for (item = 0; item < all.size(); item++) {
            startX = startY = x = y = 0;
            all.get(item).area().outline().sendTo(this);
            close();
        }
        order = IntStream.range(0, size)
                .boxed()
                .sorted((one, other) -> Double.compare(top(one), top(other)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    int size() {
        return size;
    }

    /** The edge that begins there in the order from the top. */
    int fromTop(int place) {
        return order[place];
    }

    double top(int edge) {
        return ends[4 * edge + 1];
    }

    double bottom(int edge) {
        return ends[4 * edge + 3];
    }

    /** Where it meets a level line between its ends. */
    double xAt(int edge, double level) {
        double x0 = ends[4 * edge];
        double y0 = ends[4 * edge + 1];
        return x0 + (level - y0) * (ends[4 * edge + 2] - x0) / (ends[4 * edge + 3] - y0);
    }

    int item(int edge) {
        return items[edge];
    }

    /** 1 if its outline runs downwards there, else -1. */
    int winding(int edge) {
        return upwards[edge] ? -1 : 1;
    }

    boolean isEvenOdd(int ofItem) {
        return all.get(ofItem).area().rule() == FillRule.EVENODD;
    }

    /** Where an item may be seen. */
    Frame window(int ofItem) {
        return windows.get(ofItem);
    }

    @Override
    public void moveTo(double toX, double toY) {
        close();
        startX = x = toX;
        startY = y = toY;
    }

    private void close() {
        lineTo(startX, startY);
    }

    @Override
    public void lineTo(double toX, double toY) {
        add(x, y, toX, toY);
        x = toX;
        y = toY;
    }

    private void add(double x0, double y0, double x1, double y1) {
        if (y0 == y1) {
            return;
        }
        if (size == items.length) {
            ends = Arrays.copyOf(ends, 8 * size);
            items = Arrays.copyOf(items, 2 * size);
            upwards = Arrays.copyOf(upwards, 2 * size);
        }
        boolean up = y0 > y1;
        ends[4 * size] = up ? x1 : x0;
        ends[4 * size + 1] = up ? y1 : y0;
        ends[4 * size + 2] = up ? x0 : x1;
        ends[4 * size + 3] = up ? y0 : y1;
        items[size] = item;
        upwards[size++] = up;
    }

    @Override
    public void quadTo(double x1, double y1, double toX, double toY) {
        curve(toX, toY, x, y, x1, y1, toX, toY);
    }

    @Override
    public void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        curve(toX, toY, x, y, x1, y1, x2, y2, toX, toY);
    }

    private void curve(double toX, double toY, double... c) {
        double bend = 0;
        for (int i = 0; i + 5 < c.length; i += 2) {
            bend = Math.max(bend, Math.hypot(c[i] - 2 * c[i + 2] + c[i + 4], c[i + 1] - 2 * c[i + 3] + c[i + 5]));
        }
        // The bound of Flattener in the core, by second differences.
        int pieces = (int) Math.max(1, Math.ceil(Math.sqrt((c.length == 6 ? 0.25 : 0.75) * bend / FLATNESS_MM)));
        boolean backwards = x != toX ? x > toX : y > toY;
        double[] from = backwards ? reversed(c) : c;
        double[] last = {x, y};
        for (int i = 1; i < pieces; i++) {
            double[] next = point(from, (backwards ? pieces - i : i) / (double) pieces);
            add(last[0], last[1], next[0], next[1]);
            last = next;
        }
        add(last[0], last[1], toX, toY);
        x = toX;
        y = toY;
    }

    private static double[] reversed(double[] c) {
        double[] r = new double[c.length];
        for (int i = 0; i < c.length; i += 2) {
            r[i] = c[c.length - 2 - i];
            r[i + 1] = c[c.length - 1 - i];
        }
        return r;
    }

    /** De Casteljau. */
    private static double[] point(double[] controls, double t) {
        double[] p = controls.clone();
        for (int n = p.length - 2; n > 0; n -= 2) {
            for (int i = 0; i < n; i++) {
                p[i] += (p[i + 2] - p[i]) * t;
            }
        }
        return new double[] {p[0], p[1]};
    }
}
