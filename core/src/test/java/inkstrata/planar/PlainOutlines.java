package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.FillRule;
import inkstrata.measure.Frame;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/** Outlines as segments between grid points, and what can be found out about them by plain counting. */
final class PlainOutlines {
    private PlainOutlines() {}

    /** The straight segments of an area, flattened as the shop does it: the one thing that is not done anew here. */
    static List<NodedSegmentString> segments(Area area, Frame frame, double flatnessMm) {
        List<NodedSegmentString> strings = new ArrayList<>();
        for (int[] s : steps(area, frame, flatnessMm)) {
            Coordinate[] ends = {new Coordinate(s[0], s[1]), new Coordinate(s[2], s[3])};
            strings.add(new NodedSegmentString(ends, area));
        }
        return strings;
    }

    /** The same as four numbers for each segment: x and y of both ends, in grid steps. */
    static int[][] steps(Area area, Frame frame, double flatnessMm) {
        Segments segments = new Segments();
        new Flattener(segments, flatnessMm, Box.of(frame)).add(area.outline(), 0);
        int[][] steps = new int[segments.size()][];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = new int[] {segments.x0(i), segments.y0(i), segments.x1(i), segments.y1(i)};
        }
        return steps;
    }

    /** Noded together by JTS with snap rounding; each string keeps the data it came with. */
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
}
