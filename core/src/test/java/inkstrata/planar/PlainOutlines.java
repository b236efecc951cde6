package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/** Outlines as closed strings of grid points, and what can be found out about them by plain counting. */
final class PlainOutlines {
    /** Far finer than the shop's flatness on any drawing of the tests. */
    private static final int PIECES = 200;

    private PlainOutlines() {}

    /** The contours of an area, each closed, each vertex rounded to the grid. */
    static List<Coordinate[]> contours(Area area) {
        Collector collector = new Collector();
        area.outline().sendTo(collector);
        collector.close();
        return collector.contours;
    }

    /** Noded together by JTS with snap rounding; each string keeps the data that its contour came with. */
    static List<SegmentString> noded(List<NodedSegmentString> strings) {
        SnapRoundingNoder noder = new SnapRoundingNoder(JtsShapes.GRID);
        noder.computeNodes(strings);
        List<SegmentString> noded = new ArrayList<>();
        for (Object string : (Collection<?>) noder.getNodedSubstrings()) {
            noded.add((SegmentString) string);
        }
        return noded;
    }

    /** Whether a point is inside under a fill rule: by the crossings of a ray to the right. */
    static boolean encloses(Iterable<SegmentString> strings, FillRule rule, Coordinate point) {
        int winding = 0;
        for (SegmentString string : strings) {
            Coordinate[] c = string.getCoordinates();
            for (int i = 1; i < c.length; i++) {
                boolean up = c[i - 1].y <= point.y && c[i].y > point.y;
                boolean down = c[i].y <= point.y && c[i - 1].y > point.y;
                if (up && Orientation.index(c[i - 1], c[i], point) == Orientation.LEFT) {
                    winding++;
                } else if (down && Orientation.index(c[i - 1], c[i], point) == Orientation.RIGHT) {
                    winding--;
                }
            }
        }
        return rule.inside(winding);
    }

    private static final class Collector implements CurveSink {
        private final List<Coordinate[]> contours = new ArrayList<>();
        private CoordinateList contour = new CoordinateList();
        private double x;
        private double y;

        @Override
        public void moveTo(double toX, double toY) {
            close();
            lineTo(toX, toY);
        }

        @Override
        public void lineTo(double toX, double toY) {
            contour.add(new Coordinate(Grid.steps(toX), Grid.steps(toY)), false);
            x = toX;
            y = toY;
        }

        @Override
        public void quadTo(double x1, double y1, double toX, double toY) {
            cubicTo(
                    x + (x1 - x) * 2 / 3,
                    y + (y1 - y) * 2 / 3,
                    toX + (x1 - toX) * 2 / 3,
                    toY + (y1 - toY) * 2 / 3,
                    toX,
                    toY);
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
            double x0 = x;
            double y0 = y;
            for (int i = 1; i <= PIECES; i++) {
                double t = i / (double) PIECES;
                double s = 1 - t;
                lineTo(
                        s * s * s * x0 + 3 * s * s * t * x1 + 3 * s * t * t * x2 + t * t * t * toX,
                        s * s * s * y0 + 3 * s * s * t * y1 + 3 * s * t * t * y2 + t * t * t * toY);
            }
        }

        private void close() {
            if (!contour.isEmpty()) {
                contour.closeRing();
                if (contour.size() > 2) {
                    contours.add(contour.toCoordinateArray());
                }
                contour = new CoordinateList();
            }
        }
    }
}
