package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/** Where an area ends that has already what a spread would give it: how near that is to where the spread begins. */
final class Endings {
    private final Borderlines lines;
    private final StackKinds kinds;
    private final List<StackSet> areas;
    private final HPRtree halves = new HPRtree();

    /** @param areas that spread */
    Endings(Borderlines lines, StackKinds kinds, List<StackSet> areas) {
        this.lines = lines;
        this.kinds = kinds;
        this.areas = areas;
        for (int h = 0; h < lines.size(); h += 2) {
            if (lines.kind(h) != Borderlines.NONE && lines.kind(h ^ 1) != Borderlines.NONE) {
                halves.insert(envelope(h), h);
            }
        }
    }

    /**
     * Whether, within the width of a spread, the area ends to the left of a half-edge and what it may spread over goes on.
     *
     * @param half across which it spreads, with the area on both sides
     */
    boolean isNear(int half, Spread spread) {
        double width = spread.widthMm() * Grid.STEPS_PER_MM;
        Envelope around = envelope(half);
        around.expandBy(width);
        boolean[] found = {false};
        halves.query(around, item -> {
            int h = (Integer) item;
            if (!found[0] && (isEnding(h, spread) || isEnding(h ^ 1, spread))) {
                found[0] = Distance.segmentToSegment(start(half), start(half ^ 1), start(h), start(h ^ 1)) < width;
            }
        });
        return found[0];
    }

    /** Whether the area, beneath what it spreads into, lies to the left, and to the right only what it may spread over. */
    private boolean isEnding(int half, Spread spread) {
        StackSet area = areas.get(spread.area());
        int left = lines.kind(half);
        int right = lines.kind(half ^ 1);
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
