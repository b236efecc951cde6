package inkstrata.artwork.svg;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;

/** The smallest upright box around the curves of a shape (SVG 2, section 8.10, object bounding box without stroke). */
final class TightBox {
    private double left = Double.POSITIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double bottom = Double.NEGATIVE_INFINITY;
    private double x;
    private double y;

    private TightBox() {}

    /** Null for a shape without points; width and height may be 0. */
    static Rectangle2D.Double of(Shape shape, AffineTransform transform) {
        TightBox box = new TightBox();
        double[] c = new double[6];
        for (PathIterator at = shape.getPathIterator(transform); !at.isDone(); at.next()) {
            switch (at.currentSegment(c)) {
                case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> box.go(c[0], c[1]);
                case PathIterator.SEG_QUADTO ->
                    box.cubic(
                            box.x + (c[0] - box.x) * 2 / 3,
                            box.y + (c[1] - box.y) * 2 / 3,
                            c[2] + (c[0] - c[2]) * 2 / 3,
                            c[3] + (c[1] - c[3]) * 2 / 3,
                            c[2],
                            c[3]);
                case PathIterator.SEG_CUBICTO -> box.cubic(c[0], c[1], c[2], c[3], c[4], c[5]);
                default -> {}
            }
        }
        return box.left > box.right
                ? null
                : new Rectangle2D.Double(box.left, box.top, box.right - box.left, box.bottom - box.top);
    }

    private void go(double toX, double toY) {
        left = Math.min(left, toX);
        right = Math.max(right, toX);
        top = Math.min(top, toY);
        bottom = Math.max(bottom, toY);
        x = toX;
        y = toY;
    }

    private void cubic(double x1, double y1, double x2, double y2, double toX, double toY) {
        double fromX = x;
        double fromY = y;
        for (double t : turns(fromX, x1, x2, toX)) {
            double at = value(fromX, x1, x2, toX, t);
            left = Math.min(left, at);
            right = Math.max(right, at);
        }
        for (double t : turns(fromY, y1, y2, toY)) {
            double at = value(fromY, y1, y2, toY, t);
            top = Math.min(top, at);
            bottom = Math.max(bottom, at);
        }
        go(toX, toY);
    }

    /** Where the derivative is 0, between 0 and 1. */
    private static double[] turns(double p0, double p1, double p2, double p3) {
        double a = p3 - 3 * p2 + 3 * p1 - p0;
        double b = 2 * (p2 - 2 * p1 + p0);
        double c = p1 - p0;
        double root = Math.sqrt(Math.max(0, b * b - 4 * a * c));
        // Numerically stable: one root by addition of equal signs, the other by Vieta's formula.
        double q = -(b + Math.copySign(root, b)) / 2;
        double[] all = {inside(q / a), inside(c / q)};
        return all;
    }

    private static double inside(double t) {
        return t > 0 && t < 1 ? t : 0;
    }

    private static double value(double p0, double p1, double p2, double p3, double t) {
        double s = 1 - t;
        return s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3;
    }
}
