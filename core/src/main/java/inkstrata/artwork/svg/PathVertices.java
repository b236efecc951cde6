package inkstrata.artwork.svg;

import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** Finds the vertices of a path and the directions there (SVG 2, sections 9.6.2 and 13.7.4). */
final class PathVertices {
    private final List<Segment> segments = new ArrayList<>();

    private PathVertices() {}

    /**
     * A vertex.
     *
     * @param angle of the path there, in degrees, clockwise as y points down; between the directions in and out
     */
    record Vertex(double x, double y, double angle) {}

    /** From the vertex before to a vertex; directions are NaN where the segment has none. */
    private static final class Segment {
        private double x;
        private double y;
        private double leaves = Double.NaN;
        private double arrives = Double.NaN;
        private boolean starts;
        private boolean closes;
        private int subpath;
    }

    static List<Vertex> of(LocalPath path) {
        PathVertices vertices = new PathVertices();
        vertices.gather(path);
        return vertices.directed();
    }

    private void gather(LocalPath path) {
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        int index = 0;
        int subpath = -1;
        double arcLeaves = Double.NaN;
        boolean joint = false;
        for (PathIterator at = path.path().getPathIterator(null); !at.isDone(); at.next(), index++) {
            Segment segment = new Segment();
            switch (at.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> {
                    segment.starts = true;
                    subpath++;
                    startX = c[0];
                    startY = c[1];
                    segment.x = c[0];
                    segment.y = c[1];
                }
                case PathIterator.SEG_LINETO -> line(segment, x, y, c[0], c[1]);
                case PathIterator.SEG_QUADTO -> curve(segment, x, y, c[0], c[1], c[0], c[1], c[2], c[3]);
                case PathIterator.SEG_CUBICTO -> curve(segment, x, y, c[0], c[1], c[2], c[3], c[4], c[5]);
                default -> {
                    line(segment, x, y, startX, startY);
                    segment.closes = true;
                }
            }
            x = segment.x;
            y = segment.y;
            segment.subpath = subpath;
            if (joint) {
                segment.leaves = arcLeaves;
            }
            joint = path.inner().get(index);
            arcLeaves = segment.leaves;
            if (!joint) {
                segments.add(segment);
            }
        }
    }

    private static void line(Segment segment, double x, double y, double toX, double toY) {
        segment.x = toX;
        segment.y = toY;
        segment.leaves = angle(toX - x, toY - y);
        segment.arrives = segment.leaves;
    }

    private static void curve(
            Segment segment, double x, double y, double x1, double y1, double x2, double y2, double toX, double toY) {
        segment.x = toX;
        segment.y = toY;
        segment.leaves = first(angle(x1 - x, y1 - y), first(angle(x2 - x, y2 - y), angle(toX - x, toY - y)));
        segment.arrives = first(angle(toX - x2, toY - y2), first(angle(toX - x1, toY - y1), angle(toX - x, toY - y)));
    }

    private static double first(double angle, double otherwise) {
        return Double.isNaN(angle) ? otherwise : angle;
    }

    private static double angle(double dx, double dy) {
        return dx == 0 && dy == 0 ? Double.NaN : Math.toDegrees(Math.atan2(dy, dx));
    }

    private List<Vertex> directed() {
        List<Vertex> vertices = new ArrayList<>(segments.size());
        for (int i = 0; i < segments.size(); i++) {
            Segment here = segments.get(i);
            double in = here.starts ? beforeStart(i) : arriving(i);
            double out = here.closes ? leaving(startOf(i) + 1) : leaving(i + 1);
            vertices.add(new Vertex(here.x, here.y, between(in, out)));
        }
        return vertices;
    }

    private static double between(double in, double out) {
        if (Double.isNaN(in)) {
            return Double.isNaN(out) ? 0 : out;
        }
        if (Double.isNaN(out)) {
            return in;
        }
        double turn = Math.IEEEremainder(out - in, 360);
        return in + turn / 2;
    }

    /** At the start of a closed subpath the path arrives by its closing line. */
    private double beforeStart(int start) {
        int end = start;
        while (end + 1 < segments.size() && segments.get(end + 1).subpath == segments.get(start).subpath) {
            end++;
        }
        return segments.get(end).closes ? arriving(end) : Double.NaN;
    }

    private int startOf(int index) {
        int start = index;
        while (!segments.get(start).starts) {
            start--;
        }
        return start;
    }

    /** Segments without length take the direction of the one before. */
    private double arriving(int index) {
        for (int i = index; i >= 0 && !segments.get(i).starts; i--) {
            if (!Double.isNaN(segments.get(i).arrives)) {
                return segments.get(i).arrives;
            }
        }
        return Double.NaN;
    }

    /** Segments without length take the direction of the one behind. */
    private double leaving(int index) {
        for (int i = index; i < segments.size() && !segments.get(i).starts; i++) {
            if (!Double.isNaN(segments.get(i).leaves)) {
                return segments.get(i).leaves;
            }
        }
        return Double.NaN;
    }
}
