package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.Arrays;
import java.util.BitSet;
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
    /** Those with an end of any area to their left. */
    private final HPRtree halves = new HPRtree();

    /** @param areas that spread */
    Endings(Borderlines lines, StackKinds kinds, List<StackSet> areas, List<Spread> spreads) {
        this.lines = lines;
        this.kinds = kinds;
        this.areas = areas;
        BitSet[] asked = new BitSet[kinds.count()];
        BitSet[] ends = new BitSet[kinds.count()];
        Arrays.setAll(asked, kind -> new BitSet());
        Arrays.setAll(ends, kind -> new BitSet());
        for (int h = 0; h < lines.size(); h++) {
            int left = lines.kind(h);
            int right = lines.kind(h ^ 1);
            if (left == Borderlines.NONE || right == Borderlines.NONE) {
                continue;
            }
            if (!asked[left].get(right)) {
                asked[left].set(right);
                ends[left].set(right, spreads.stream().anyMatch(spread -> isEnding(left, right, spread)));
            }
            if (ends[left].get(right)) {
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
            if (!found[0] && isEnding(lines.kind(h), lines.kind(h ^ 1), spread)) {
                found[0] = Distance.segmentToSegment(start(half), start(half ^ 1), start(h), start(h ^ 1)) < width;
            }
        });
        return found[0];
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
