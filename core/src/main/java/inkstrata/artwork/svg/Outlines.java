package inkstrata.artwork.svg;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.Outline;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** Between Java's shapes in user units and outlines in millimetres. */
final class Outlines {
    /** Coordinates of each kind of segment, by Java's numbers for them: move, line, quadratic, cubic, close. */
    static final int[] NUMBERS = {2, 2, 4, 6, 0};

    private Outlines() {}

    /**
     * Contours of one point only are dropped: they cover nothing.
     *
     * @throws Reach.Exceeded if a point lies too far away
     */
    static Outline of(Shape shape, AffineTransform toMm) {
        Outline.Builder outline = Outline.builder();
        double[] c = new double[6];
        double startX = 0;
        double startY = 0;
        boolean pending = true;
        for (PathIterator at = shape.getPathIterator(toMm); !at.isDone(); at.next()) {
            int segment = at.currentSegment(c);
            for (int i = 0; i < NUMBERS[segment]; i++) {
                Reach.checked(c[i]);
            }
            if (segment == PathIterator.SEG_MOVETO) {
                startX = c[0];
                startY = c[1];
                pending = true;
                continue;
            }
            if (segment == PathIterator.SEG_CLOSE) {
                pending = true;
                continue;
            }
            if (pending) {
                outline.moveTo(startX, startY);
                pending = false;
            }
            switch (segment) {
                case PathIterator.SEG_LINETO -> outline.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO -> outline.quadTo(c[0], c[1], c[2], c[3]);
                default -> outline.cubicTo(c[0], c[1], c[2], c[3], c[4], c[5]);
            }
        }
        return outline.build();
    }

    /** The box around all points and handles; it may be larger than the box around the curves. Null if empty. */
    static Rectangle2D.Double box(Outline outline) {
        if (outline.isEmpty()) {
            return null;
        }
        Box box = new Box();
        outline.sendTo(box);
        return new Rectangle2D.Double(box.left, box.top, box.right - box.left, box.bottom - box.top);
    }

    /** The rectangle an outline is, if it is four upright straight sides. */
    static Optional<Rectangle2D.Double> rectangle(Outline outline) {
        int count = outline.commandCount();
        if (count < 4 || count > 5) {
            return Optional.empty();
        }
        Corners corners = new Corners();
        outline.sendTo(corners);
        return corners.rectangle(count) ? Optional.of(box(outline)) : Optional.empty();
    }

    private static final class Box implements CurveSink {
        private double left = Double.POSITIVE_INFINITY;
        private double top = Double.POSITIVE_INFINITY;
        private double right = Double.NEGATIVE_INFINITY;
        private double bottom = Double.NEGATIVE_INFINITY;

        private void add(double x, double y) {
            left = Math.min(left, x);
            top = Math.min(top, y);
            right = Math.max(right, x);
            bottom = Math.max(bottom, y);
        }

        @Override
        public void moveTo(double x, double y) {
            add(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            add(x, y);
        }

        @Override
        public void quadTo(double x1, double y1, double x, double y) {
            add(x1, y1);
            add(x, y);
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
            add(x1, y1);
            add(x2, y2);
            add(x, y);
        }
    }

    private static final class Corners implements CurveSink {
        private final double[] xs = new double[5];
        private final double[] ys = new double[5];
        private int moves;
        private int lines;
        private boolean curved;

        boolean rectangle(int count) {
            if (curved || moves != 1 || (count == 5 && (xs[4] != xs[0] || ys[4] != ys[0]))) {
                return false;
            }
            boolean acrossFirst = ys[0] == ys[1] && xs[1] == xs[2] && ys[2] == ys[3] && xs[3] == xs[0];
            boolean downFirst = xs[0] == xs[1] && ys[1] == ys[2] && xs[2] == xs[3] && ys[3] == ys[0];
            return acrossFirst || downFirst;
        }

        @Override
        public void moveTo(double x, double y) {
            xs[0] = x;
            ys[0] = y;
            moves++;
        }

        @Override
        public void lineTo(double x, double y) {
            lines++;
            xs[lines] = x;
            ys[lines] = y;
        }

        @Override
        public void quadTo(double x1, double y1, double x, double y) {
            curved = true;
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
            curved = true;
        }
    }
}
