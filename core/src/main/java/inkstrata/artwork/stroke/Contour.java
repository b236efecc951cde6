package inkstrata.artwork.stroke;

import java.awt.geom.Path2D;
import java.util.Arrays;

/** Lines and cubics one behind the other, to be drawn either way; not for several threads. */
final class Contour {
    /** x and y of each point; cubics take three. */
    private double[] points = new double[32];

    private boolean[] cubics = new boolean[8];
    private int count;
    private int segments;

    boolean isEmpty() {
        return count == 0;
    }

    double lastX() {
        return points[count - 2];
    }

    double lastY() {
        return points[count - 1];
    }

    /** Goes straight to a point, or begins there; nothing if it is there already. */
    void to(double x, double y) {
        if (count == 0) {
            push(x, y);
        } else if (lastX() != x || lastY() != y) {
            segment(false);
            push(x, y);
        }
    }

    /** Goes straight to a curve's start, then along it. */
    void along(double[] cubic) {
        to(cubic[0], cubic[1]);
        curve(cubic[2], cubic[3], cubic[4], cubic[5], cubic[6], cubic[7]);
    }

    /** Goes straight to each of some points. */
    void through(double[] xy) {
        for (int i = 0; i < xy.length; i += 2) {
            to(xy[i], xy[i + 1]);
        }
    }

    /** Goes along a cubic from where it is. */
    void curve(double x1, double y1, double x2, double y2, double toX, double toY) {
        segment(true);
        push(x1, y1);
        push(x2, y2);
        push(toX, toY);
    }

    /** Ends the last line elsewhere. */
    void moveEnd(double x, double y) {
        points[count - 2] = x;
        points[count - 1] = y;
    }

    /** Begins the first line elsewhere. */
    void moveStart(double x, double y) {
        points[0] = x;
        points[1] = y;
    }

    /** Goes along another contour. */
    void append(Contour other) {
        to(other.points[0], other.points[1]);
        int at = 2;
        for (int i = 0; i < other.segments; i++) {
            int length = other.cubics[i] ? 6 : 2;
            segment(other.cubics[i]);
            for (int k = 0; k < length; k += 2) {
                push(other.points[at + k], other.points[at + k + 1]);
            }
            at += length;
        }
    }

    Contour backwards() {
        Contour back = new Contour();
        back.points = new double[count];
        for (int i = 0; i < count; i += 2) {
            back.points[count - 2 - i] = points[i];
            back.points[count - 1 - i] = points[i + 1];
        }
        back.count = count;
        back.cubics = new boolean[segments];
        for (int i = 0; i < segments; i++) {
            back.cubics[segments - 1 - i] = cubics[i];
        }
        back.segments = segments;
        return back;
    }

    /** Draws it as a closed contour, in other units. */
    void draw(Path2D.Double path, double scale) {
        if (segments == 0) {
            return;
        }
        double[] p = points;
        path.moveTo(p[0] * scale, p[1] * scale);
        int at = 2;
        for (int i = 0; i < segments; i++) {
            if (cubics[i]) {
                path.curveTo(
                        p[at] * scale,
                        p[at + 1] * scale,
                        p[at + 2] * scale,
                        p[at + 3] * scale,
                        p[at + 4] * scale,
                        p[at + 5] * scale);
                at += 6;
            } else {
                path.lineTo(p[at] * scale, p[at + 1] * scale);
                at += 2;
            }
        }
        path.closePath();
    }

    private void push(double x, double y) {
        if (count == points.length) {
            points = Arrays.copyOf(points, 2 * count);
        }
        points[count++] = x;
        points[count++] = y;
    }

    private void segment(boolean cubic) {
        if (segments == cubics.length) {
            cubics = Arrays.copyOf(cubics, 2 * segments);
        }
        cubics[segments++] = cubic;
    }
}
