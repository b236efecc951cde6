package inkstrata.planar;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Ways around vertices that straight edges pass within half a grid step.
 *
 * <p>Snap rounding bends segments to the pixels that they pass, but bent ones may pass others still (D. Halperin and E. Packer, Iterated
 * snap rounding, 2002): mapped again, such an edge would be joined to the vertex beside it, and a face between them be gone. So it
 * is led past the vertex at one step.
 */
final class Detours {
    private final BorderNet net;
    private final Box frame;
    private final Map<Chord, Point> points = new HashMap<>();
    private final Set<Point> taken = new HashSet<>();

    private record Point(int x, int y) {}

    private record Chord(int ax, int ay, int bx, int by) {
        static Chord of(int ax, int ay, int bx, int by) {
            boolean isForward = ax != bx ? ax < bx : ay < by;
            return isForward ? new Chord(ax, ay, bx, by) : new Chord(bx, by, ax, ay);
        }
    }

    Detours(BorderNet net, Box frame) {
        this.net = net;
        this.frame = frame;
    }

    /**
     * Leads a chord around a point whose pixel it passes.
     *
     * @return whether it went straight until now, and no longer does
     */
    boolean lead(int ax, int ay, int bx, int by, int px, int py) {
        Chord chord = Chord.of(ax, ay, bx, by);
        Optional<Point> point = aside(ax, ay, bx, by, px, py).filter(this::isFree);
        if (point.isEmpty() || points.containsKey(chord)) {
            return false;
        }
        points.put(chord, point.get());
        taken.add(point.get());
        return true;
    }

    /** On the other side of the chord, a step from it, beside the point that it passes. */
    private static Optional<Point> aside(int ax, int ay, int bx, int by, int px, int py) {
        int dx = Integer.signum(bx - ax);
        int dy = Integer.signum(by - ay);
        int side = Long.signum(Predicates.cross(ax, ay, bx, by, px, py));
        boolean isFlat = Math.abs(bx - ax) > Math.abs(by - ay);
        if (bx - ax == ay - by && px + py > ax + ay) {
            // Falls at 45 degrees, through the lowest and leftmost corner of the pixel, which is in.
            return Optional.of(new Point(px - 1, py - 1));
        } else if (side == 0 || !(isFlat ? isBetween(ax, px, bx) : isBetween(ay, py, by))) {
            return Optional.empty();
        }
        return Optional.of(isFlat ? new Point(px, py - side * dx) : new Point(px + side * dy, py));
    }

    /** Whether nothing else is there, and the point within the frame. */
    private boolean isFree(Point point) {
        return isBetween(frame.left(), point.x, frame.right())
                && isBetween(frame.low(), point.y, frame.high())
                && net.vertex(point.x, point.y) < 0
                && !taken.contains(point);
    }

    private static boolean isBetween(int a, int p, int b) {
        return Math.min(a, b) < p && p < Math.max(a, b);
    }

    /** Sends the lines from one point to another. */
    void draw(int ax, int ay, int bx, int by, List<Bezier> out) {
        Point point = points.get(Chord.of(ax, ay, bx, by));
        if (point == null) {
            out.add(new Bezier(ax, ay, bx, by));
        } else {
            draw(ax, ay, point.x, point.y, out);
            draw(point.x, point.y, bx, by, out);
        }
    }
}
