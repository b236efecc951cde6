package inkstrata.artwork.svg;

import java.awt.geom.Path2D;
import java.util.BitSet;

/** Draws a path segment by segment and knows where it stands; not for several threads. */
final class PathPen {
    /** The widest angle one cubic takes over of an arc: leaves the ellipse by 4e-6 of its radius. */
    private static final double WIDEST_PIECE = Math.PI / 4;

    private final Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    private final BitSet inner = new BitSet();
    private int segments;
    private double startX;
    private double startY;
    private double x;
    private double y;
    private boolean closed;

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    LocalPath finish() {
        path.trimToSize();
        return new LocalPath(path, inner);
    }

    void moveTo(double toX, double toY) {
        path.moveTo(toX, toY);
        segments++;
        closed = false;
        startX = toX;
        startY = toY;
        at(toX, toY);
    }

    void lineTo(double toX, double toY) {
        reopen();
        path.lineTo(toX, toY);
        segments++;
        at(toX, toY);
    }

    void quadTo(double x1, double y1, double toX, double toY) {
        reopen();
        path.quadTo(x1, y1, toX, toY);
        segments++;
        at(toX, toY);
    }

    void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        reopen();
        path.curveTo(x1, y1, x2, y2, toX, toY);
        segments++;
        at(toX, toY);
    }

    void close() {
        if (!closed) {
            path.closePath();
            segments++;
            closed = true;
            at(startX, startY);
        }
    }

    /**
     * An elliptical arc from here (SVG 2, sections 9.5.1 and B.2.4 to B.2.5).
     *
     * @param radiusX any sign; 0 gives a line; enlarged if the arc cannot reach
     * @param radiusY the same
     * @param rotation of the ellipse, in degrees
     */
    void arcTo(double radiusX, double radiusY, double rotation, boolean large, boolean sweep, double toX, double toY) {
        double rx = Math.abs(radiusX);
        double ry = Math.abs(radiusY);
        if (x == toX && y == toY) {
            return;
        }
        if (rx == 0 || ry == 0) {
            lineTo(toX, toY);
            return;
        }
        double phi = Math.toRadians(rotation);
        double cos = Math.cos(phi);
        double sin = Math.sin(phi);
        double halfX = (x - toX) / 2;
        double halfY = (y - toY) / 2;
        double px = (cos * halfX + sin * halfY) / rx;
        double py = (cos * halfY - sin * halfX) / ry;
        double square = px * px + py * py;
        if (square > 1) {
            double grow = Math.sqrt(square);
            rx *= grow;
            ry *= grow;
            px /= grow;
            py /= grow;
            square = 1;
        }
        // On the unit circle: the centre lies across the middle of the chord.
        double across = Math.sqrt(Math.max(0, 1 / square - 1)) * (large == sweep ? -1 : 1);
        double cx = across * py;
        double cy = -across * px;
        double from = Math.atan2(py - cy, px - cx);
        double turn = Math.atan2(-py - cy, -px - cx) - from;
        if (sweep && turn < 0) {
            turn += 2 * Math.PI;
        } else if (!sweep && turn > 0) {
            turn -= 2 * Math.PI;
        }
        double centreX = (x + toX) / 2 + cos * rx * cx - sin * ry * cy;
        double centreY = (y + toY) / 2 + sin * rx * cx + cos * ry * cy;
        arcAround(centreX, centreY, rx, ry, phi, from, turn, toX, toY);
    }

    private void arcAround(
            double centreX,
            double centreY,
            double rx,
            double ry,
            double phi,
            double from,
            double turn,
            double toX,
            double toY) {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(turn) / WIDEST_PIECE - 1e-9));
        double step = turn / pieces;
        double handle = 4.0 / 3 * Math.tan(step / 4);
        double cos = Math.cos(phi);
        double sin = Math.sin(phi);
        for (int i = 0; i < pieces; i++) {
            double a = from + i * step;
            double b = from + (i + 1) * step;
            double u1 = rx * (Math.cos(a) - handle * Math.sin(a));
            double v1 = ry * (Math.sin(a) + handle * Math.cos(a));
            double u2 = rx * (Math.cos(b) + handle * Math.sin(b));
            double v2 = ry * (Math.sin(b) - handle * Math.cos(b));
            double u = rx * Math.cos(b);
            double v = ry * Math.sin(b);
            boolean last = i == pieces - 1;
            cubicTo(
                    centreX + cos * u1 - sin * v1,
                    centreY + sin * u1 + cos * v1,
                    centreX + cos * u2 - sin * v2,
                    centreY + sin * u2 + cos * v2,
                    last ? toX : centreX + cos * u - sin * v,
                    last ? toY : centreY + sin * u + cos * v);
            if (!last) {
                inner.set(segments - 1);
            }
        }
    }

    /** After a close, drawing goes on from the start of the closed subpath. */
    private void reopen() {
        if (closed) {
            moveTo(startX, startY);
        }
    }

    private void at(double newX, double newY) {
        x = newX;
        y = newY;
    }
}
