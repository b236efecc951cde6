package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.plan.PrintPlan;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Films, what was planned for each, and what the artwork shows, all laid over each other. */
final class Laid {
    /** Thinner differences, in millimetres, are another program's curves and no faults (our own choice). */
    private static final double THIN_MM = 0.05;

    private final CoverMap map;
    private final int pulls;

    private Laid(CoverMap map, int pulls) {
        this.map = map;
        this.pulls = pulls;
    }

    static Laid of(Separation planned, List<Region> films) {
        List<Region> all = new ArrayList<>(films);
        all.addAll(planned.printed());
        for (int pull = 0; pull < films.size(); pull++) {
            all.add(shown(planned, pull));
        }
        Frame frame = planned.artwork().frame();
        return new Laid(CoverMap.of(frame, all), films.size());
    }

    /** What the artwork shows in that pull's ink. */
    private static Region shown(Separation planned, int pull) {
        PrintPlan plan = planned.plan();
        return planned.map()
                .dissolve(StackSet.of(IntStream.range(0, planned.map().stacks().size())
                        .filter(stack -> {
                            OptionalInt nearest = IntStream.range(
                                            0, plan.pulls().size())
                                    .filter(i -> plan.pulls().get(i).prints().contains(stack))
                                    .reduce((one, other) -> planned.isNearer(one, other) ? one : other);
                            return nearest.isPresent() && nearest.getAsInt() == pull;
                        })));
    }

    /** Pieces in which a film prints what was not planned, where the artwork shows that pull's ink, or sheet if there is none. */
    List<Region> extra(int film, OptionalInt shown) {
        return pieces(cover -> cover.get(film) && !cover.get(pulls + film) && shows(cover, shown));
    }

    /** Pieces in which a film lacks what was planned, though some other film prints there. */
    List<Region> missing(int film, OptionalInt shown) {
        return pieces(cover ->
                !cover.get(film) && cover.get(pulls + film) && shows(cover, shown) && cover.nextSetBit(0) < pulls);
    }

    private boolean shows(BitSet cover, OptionalInt shown) {
        int first = cover.nextSetBit(2 * pulls);
        return shown.isPresent() ? first == 2 * pulls + shown.getAsInt() : first < 0;
    }

    /** Each a little smaller than it is, so that any vertex of it lies within. */
    private List<Region> pieces(Predicate<BitSet> asked) {
        return map.where(asked).shrunk(THIN_MM / 2).polygons().stream()
                .map(Region::of)
                .toList();
    }
}
