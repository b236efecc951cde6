package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Several regions laid over each other: which of them cover which place.
 *
 * <p>A planar map of their outlines, whose stacks stand for sets of regions. Where outlines cross, the crossing is rounded to
 * the grid and both bend towards it by less than a grid step.
 */
public final class CoverMap {
    private final PlanarMap map;
    private final List<BitSet> covers;

    private CoverMap(PlanarMap map, List<BitSet> covers) {
        this.map = map;
        this.covers = covers;
    }

    /**
     * Lays them.
     *
     * @param frame what lies outside it is left out
     * @param regions fewer than 2 to the power 24; empty ones cover nothing
     */
    public static CoverMap of(Frame frame, List<Region> regions) {
        List<FlatShape> shapes = new ArrayList<>();
        for (int i = 0; i < regions.size(); i++) {
            if (!regions.get(i).isEmpty()) {
                Area area = new Area(RegionOutlines.of(regions.get(i)), FillRule.NONZERO);
                shapes.add(FlatShape.opaque(area, Rgb.of(i), Source.UNKNOWN));
            }
        }
        PlanarMap map = PlanarMapper.map(new Artwork("covers", frame, shapes, List.of()), MapSettings.DEFAULT);
        List<BitSet> covers = new ArrayList<>();
        for (PaintStack stack : map.stacks()) {
            BitSet cover = new BitSet();
            stack.paints().forEach(paint -> cover.set(paint.colour().packed()));
            covers.add(cover);
        }
        return new CoverMap(map, List.copyOf(covers));
    }

    /** How many distinct sets of regions there are. */
    public int count() {
        return covers.size();
    }

    /** The regions, by position, that cover the places of one set; a copy. */
    public BitSet cover(int number) {
        return (BitSet) covers.get(number).clone();
    }

    /** All places covered by just that set, in square millimetres. */
    public double areaMm2(int number) {
        return map.areaMm2(number);
    }

    /** All places whose set of regions is as asked. */
    public Region where(Predicate<BitSet> asked) {
        return map.dissolve(StackSet.of(IntStream.range(0, count()).filter(number -> asked.test(cover(number)))));
    }

    /** All places of the sets with these numbers. */
    public Region where(BitSet numbers) {
        return map.dissolve(StackSet.of(numbers.stream()));
    }

    /** The edges between places with different sets, each once. */
    public void sendEdgesTo(EdgeSink sink) {
        map.sendEdgesTo(sink);
    }
}
