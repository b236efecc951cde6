package inkstrata.positive.page.read;

import inkstrata.artwork.CurveSink;
import java.util.Arrays;

/**
 * Draws an outline of pixels with few straight lines: put into pixels again it gives the very same ones.
 *
 * <p>A film of pixels knows of a slanted edge only on which side of it each pixel's middle lies. Each edge between a black and a clear pixel is a
 * gate, from the middle of one to the middle of the other, and whatever line passes the same gates in the same order gives the same pixels
 * (compare L. J. Guibas, J. E. Hershberger, J. S. B. Mitchell and J. S. Snoeyink, Approximating polygons and subdivisions with minimum-link
 * paths, 1991). From where one line ends the next goes as far as one can that passes all gates between (the intersection of their cones). Between two gates next to each other lie no middles, so outlines never touch or cross. Corners of three pixels and more each way stay where
 * they are, and small outlines stay as they are.
 */
final class StraightSteps {
    /** Outlines that are no longer, in pixels, stay: straightened, a single pixel would lose half of itself. */
    private static final int SMALL = 24;

    /** A corner whose sides are both as long, in pixels, is a corner. */
    private static final int SIDE = 3;

    /** Gates are narrower than from middle to middle by this on either side, in pixels, so that no line ends in a middle. */
    private static final double CLEAR = 0.001;

    private static final double HALF = 0.5 - CLEAR;

    private final int[] corners;
    private final int count;

    /** Points that a line may end at, in order; and for each half of its gate's width, upright or level; none for corners that stay. */
    private double[] px = new double[64];

    private double[] py = new double[64];
    private byte[] gate = new byte[64];
    private int points;

    /** Where the pen is. */
    private double x0;

    private double y0;

    private static final byte STAYS = 0;
    private static final byte LEVEL = 1;
    private static final byte UPRIGHT = 2;

    private StraightSteps(int[] corners) {
        this.corners = corners;
        this.count = corners.length / 2;
    }

    /**
     * Draws it.
     *
     * @param corners x and y in turn, in pixels; sides are level and upright by turns
     * @param sink gets one closed contour, in pixels
     */
    static void draw(int[] corners, CurveSink sink) {
        StraightSteps steps = new StraightSteps(corners);
        if (steps.length() <= SMALL) {
            steps.asItIs(sink);
            return;
        }
        steps.points();
        steps.straight(sink);
    }

    private int length() {
        int length = 0;
        for (int i = 0; i < count; i++) {
            length += side(i);
        }
        return length;
    }

    /** From one corner to the next, in pixels. */
    private int side(int corner) {
        int to = (corner + 1) % count;
        return Math.abs(corners[2 * to] - corners[2 * corner])
                + Math.abs(corners[2 * to + 1] - corners[2 * corner + 1]);
    }

    private void asItIs(CurveSink sink) {
        for (int i = 0; i < count; i++) {
            if (i == 0) {
                sink.moveTo(corners[0], corners[1]);
            } else {
                sink.lineTo(corners[2 * i], corners[2 * i + 1]);
            }
        }
    }

    private boolean stays(int corner) {
        return side(corner) >= SIDE && side((corner + count - 1) % count) >= SIDE;
    }

    private void points() {
        int first = 0;
        while (first < count && !stays(first)) {
            first++;
        }
        for (int i = 0; i < count; i++) {
            int corner = (first + i) % count;
            int to = (corner + 1) % count;
            if (stays(corner)) {
                point(corners[2 * corner], corners[2 * corner + 1], STAYS);
            }
            int side = side(corner);
            double dx = (corners[2 * to] - corners[2 * corner]) / (double) side;
            double dy = (corners[2 * to + 1] - corners[2 * corner + 1]) / (double) side;
            byte across = dy == 0 ? UPRIGHT : LEVEL;
            point(corners[2 * corner] + dx / 2, corners[2 * corner + 1] + dy / 2, across);
            if (side > 1) {
                point(corners[2 * to] - dx / 2, corners[2 * to + 1] - dy / 2, across);
            }
        }
    }

    private void point(double x, double y, byte across) {
        if (points == px.length) {
            px = Arrays.copyOf(px, 2 * points);
            py = Arrays.copyOf(py, 2 * points);
            gate = Arrays.copyOf(gate, 2 * points);
        }
        px[points] = x;
        py[points] = y;
        gate[points++] = across;
    }

    private void straight(CurveSink sink) {
        x0 = px[0];
        y0 = py[0];
        sink.moveTo(x0, y0);
        for (int from = 0; from < points; ) {
            from = farthest(from);
            if (from < points) {
                sink.lineTo(x0, y0);
            }
        }
    }

    /**
     * The last gate that a line from where the pen is may go to, passing all before; the pen goes there, into the middle of what can be reached of
     * it. The first point again is {@link #points}.
     */
    private int farthest(int from) {
        double lowX = 0;
        double lowY = 0;
        double highX = 0;
        double highY = 0;
        int best = from;
        for (int to = from + 1; to <= points; to++) {
            int at = to % points;
            double dx = px[at] - x0;
            double dy = py[at] - y0;
            boolean isFirst = to == from + 1;
            if (gate[at] == STAYS || to == points) {
                if (isFirst || (lowX * dy - lowY * dx >= 0 && dx * highY - dy * highX >= 0)) {
                    x0 = px[at];
                    y0 = py[at];
                    return to;
                }
                break;
            }
            double wx = gate[at] == LEVEL ? HALF : 0;
            double wy = gate[at] == UPRIGHT ? HALF : 0;
            double sign = (dx - wx) * (dy + wy) - (dy - wy) * (dx + wx) >= 0 ? 1 : -1;
            double ax = dx - sign * wx;
            double ay = dy - sign * wy;
            double bx = dx + sign * wx;
            double by = dy + sign * wy;
            double newLowX = isFirst || lowX * ay - lowY * ax > 0 ? ax : lowX;
            double newLowY = isFirst || lowX * ay - lowY * ax > 0 ? ay : lowY;
            double newHighX = isFirst || bx * highY - by * highX > 0 ? bx : highX;
            double newHighY = isFirst || bx * highY - by * highX > 0 ? by : highY;
            if (newLowX * newHighY - newLowY * newHighX <= 0 || newLowX * newHighX + newLowY * newHighY < 0) {
                break;
            }
            lowX = newLowX;
            lowY = newLowY;
            highX = newHighX;
            highY = newHighY;
            best = to;
        }
        into(best, lowX, lowY, highX, highY);
        return best;
    }

    /** The pen goes into the middle of what two rays leave of a gate. */
    private void into(int at, double lowX, double lowY, double highX, double highY) {
        if (gate[at] == LEVEL) {
            double dy = py[at] - y0;
            x0 = lowY * highY > 0 ? x0 + dy * (lowX / lowY + highX / highY) / 2 : px[at];
            y0 = py[at];
        } else {
            double dx = px[at] - x0;
            y0 = lowX * highX > 0 ? y0 + dx * (lowY / lowX + highY / highX) / 2 : py[at];
            x0 = px[at];
        }
    }
}
