package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/** Where an area ends that has already what a spread would give it: how near that is to where the spread begins. */
final class Endings {
    private final Borderlines lines;
    private final StackKinds kinds;
    private final List<StackSet> areas;
    private final List<Spread> spreads;
    /** For each spread the half-edges with such an end to their left. */
    private final List<HPRtree> ends = new ArrayList<>();

    /** @param areas that spread */
    Endings(Borderlines lines, StackKinds kinds, List<StackSet> areas, List<Spread> spreads) {
        this.lines = lines;
        this.kinds = kinds;
        this.areas = areas;
        this.spreads = spreads;
        spreads.forEach(spread -> ends.add(new HPRtree()));
        int[][][] known = new int[kinds.count()][][];
        for (int h = 0; h < lines.size(); h++) {
            int left = lines.kind(h);
            int right = lines.kind(h ^ 1);
            if (left == Borderlines.NONE || right == Borderlines.NONE) {
                continue;
            }
            if (known[left] == null) {
                known[left] = new int[kinds.count()][];
            }
            if (known[left][right] == null) {
                known[left][right] = endingAt(left, right);
            }
            for (int spread : known[left][right]) {
                ends.get(spread).insert(envelope(h), h);
            }
        }
    }

    /**
     * Whether, within the width of a spread, the area ends to the left of a half-edge and what it may spread over goes on.
     *
     * @param half across which it spreads, with the area on both sides
     */
    boolean isNear(int half, int spread) {
        double width = spreads.get(spread).widthMm() * Grid.STEPS_PER_MM;
        Envelope around = envelope(half);
        around.expandBy(width);
        Coordinate from = start(half);
        Coordinate to = start(half ^ 1);
        boolean[] found = {false};
        ends.get(spread).query(around, item -> {
            int h = (Integer) item;
            found[0] = found[0] || Distance.segmentToSegment(from, to, start(h), start(h ^ 1)) < width;
        });
        return found[0];
    }

    private int[] endingAt(int left, int right) {
        return IntStream.range(0, spreads.size())
                .filter(spread -> isEnding(left, right, spreads.get(spread)))
                .toArray();
    }

    /** Whether the area, beneath what it spreads into, lies on one side, and on the other only what it may spread over. */
    private boolean isEnding(int left, int right, Spread spread) {
        StackSet area = areas.get(spread.area());
        return kinds.isIn(spread.into(), left)
                && kinds.isIn(area, left)
                && kinds.isIn(spread.over(), right)
                && !kinds.isIn(area, right);
    }

    private Envelope envelope(int half) {
        return new Envelope(start(half), start(half ^ 1));
    }

    private Coordinate start(int half) {
        int vertex = lines.origin(half);
        return new Coordinate(lines.x(vertex), lines.y(vertex));
    }
}
