package inkstrata.planar;

import inkstrata.artwork.Source;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Watches one contour after another being rounded, and finds those of which flattening and rounding leave nothing. */
final class ContourWatch {
    /**
     * A contour narrower than this on average, in steps, counts as drawn without area: a few times the fraction of a step to
     * which curves are known.
     */
    private static final double THINNEST = 1e-3;

    private final Segments segments;
    private final Box frame;
    private final List<Lost> lost = new ArrayList<>();
    private int outline;
    private int firstSegment;
    private double startX;
    private double startY;
    private double left;
    private double low;
    private double right;
    private double high;
    private double doubledArea;

    /** A contour of an outline, with its bounds in steps. */
    private record Lost(int outline, double left, double low, double right, double high) {
        Swallowed of(Drawing drawing) {
            int owner = drawing.owner()[outline];
            return new Swallowed(
                    owner < 0 ? Source.UNKNOWN : drawing.shapes().get(owner).source(),
                    (left + right) / 2 * Grid.STEP_MM,
                    (low + high) / 2 * Grid.STEP_MM,
                    (right - left) * Grid.STEP_MM,
                    (high - low) * Grid.STEP_MM);
        }
    }

    /**
     * Starts watching.
     *
     * @param segments to which contours are added, rounded
     */
    ContourWatch(Segments segments, Box frame) {
        this.segments = segments;
        this.frame = frame;
    }

    /** A contour begins, at a place in steps. */
    void begin(int ofOutline, double x, double y) {
        outline = ofOutline;
        firstSegment = segments.size();
        left = right = startX = x;
        low = high = startY = y;
        doubledArea = 0;
    }

    /** It goes on with a line or curve, by its 2 to 4 control points, in steps. */
    void add(double... c) {
        for (int i = 2; i < c.length; i += 2) {
            left = Math.min(left, c[i]);
            low = Math.min(low, c[i + 1]);
            right = Math.max(right, c[i]);
            high = Math.max(high, c[i + 1]);
        }
        // The integral of x dy - y dx along a Bézier curve, from its Bernstein polynomials.
        doubledArea += switch (c.length) {
            case 4 -> cross(c, 0, 2);
            case 6 -> (2 * cross(c, 0, 2) + cross(c, 0, 4) + 2 * cross(c, 2, 4)) / 3;
            default ->
                (6 * (cross(c, 0, 2) + cross(c, 4, 6))
                                + 3 * (cross(c, 0, 4) + cross(c, 2, 4) + cross(c, 2, 6))
                                + cross(c, 0, 6))
                        / 10;
        };
    }

    private double cross(double[] c, int a, int b) {
        return (c[a] - startX) * (c[b + 1] - startY) - (c[b] - startX) * (c[a + 1] - startY);
    }

    /** It is closed. */
    void end() {
        boolean drawn = Math.abs(doubledArea) / 2 > THINNEST * (right - left + (high - low));
        boolean touchesFrame =
                left <= frame.right() && right >= frame.left() && low <= frame.high() && high >= frame.low();
        if (drawn && touchesFrame && isGone()) {
            lost.add(new Lost(outline, left, low, right, high));
        }
    }

    /** What was lost so far, in the order in which it came. */
    List<Swallowed> swallowed(Drawing drawing) {
        return lost.stream().map(contour -> contour.of(drawing)).toList();
    }

    /** Whether each segment of the contour is run along as often back as forth. */
    private boolean isGone() {
        long sum = 0;
        for (int s = firstSegment; s < segments.size(); s++) {
            // May wrap around 64 bits on the way.
            sum += (long) segments.x0(s) * segments.y1(s) - (long) segments.x1(s) * segments.y0(s);
        }
        if (sum != 0) {
            return false;
        }
        Map<Line, Integer> runs = new HashMap<>();
        for (int s = firstSegment; s < segments.size(); s++) {
            Line forth = new Line(segments.x0(s), segments.y0(s), segments.x1(s), segments.y1(s));
            Line back = new Line(segments.x1(s), segments.y1(s), segments.x0(s), segments.y0(s));
            runs.merge(forth, 1, Integer::sum);
            runs.merge(back, -1, Integer::sum);
        }
        return runs.values().stream().allMatch(count -> count == 0);
    }

    private record Line(int x0, int y0, int x1, int y1) {}
}
