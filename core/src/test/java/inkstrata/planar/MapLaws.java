package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Artwork;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.valid.IsValidOp;

/** What must hold for the map of any drawing and for the regions dissolved from it. */
final class MapLaws {
    /** Gaps narrower than this many grid steps are looked for: wider than snap rounding could ever leave one. */
    private static final double GAP_WIDTH = 4;

    private MapLaws() {}

    /** Areas of all stacks add up to the frame's, and each region measures what the map says; exactly, in integers. */
    static void stacksTileTheFrame(PlanarMap map, String name) {
        long sum = 0;
        List<Region> regions = map.dissolveAll(eachStack(map));
        for (int stack = 0; stack < regions.size(); stack++) {
            assertThat(regions.get(stack).doubledArea())
                    .as("%s: region of stack %d", name, stack)
                    .isEqualTo(map.doubledArea(stack));
            sum += map.doubledArea(stack);
        }
        long width =
                (long) Grid.steps(map.frame().right()) - Grid.steps(map.frame().x());
        long height =
                (long) Grid.steps(map.frame().bottom()) - Grid.steps(map.frame().y());
        assertThat(sum).as("%s: all stacks together", name).isEqualTo(2 * width * height);
    }

    /** Each region is valid, alone and dissolved with others. */
    static void regionsAreValid(PlanarMap map, String name) {
        for (List<StackSet> partition : partitions(map)) {
            for (Region region : map.dissolveAll(partition)) {
                IsValidOp check = new IsValidOp(JtsShapes.multiPolygon(region));
                assertThat(check.isValid())
                        .as("%s: %s", name, check.getValidationError())
                        .isTrue();
            }
        }
    }

    /**
     * No overlaps and no gaps between the regions of all stacks, nor between those of all looks, in the eyes of JTS. Its validator
     * raises a false alarm where a polygon has a free edge inside a neighbour's hole that touches its shell, and where a region
     * is narrower than the gaps looked for; an alarm counts unless the area of the union is the sum of the areas, and the
     * union the frame.
     *
     * @return how many of the two raised a false alarm
     */
    static int regionsAreACoverage(PlanarMap map, String name) {
        int alarms = 0;
        for (List<StackSet> partition : partitions(map)) {
            List<Geometry> polygons = new ArrayList<>();
            for (Region region : map.dissolveAll(partition)) {
                region.polygons().forEach(polygon -> polygons.add(JtsShapes.polygon(polygon)));
            }
            Geometry[] coverage = polygons.toArray(Geometry[]::new);
            if (Arrays.stream(CoverageValidator.validate(coverage, GAP_WIDTH)).anyMatch(alarm -> alarm != null)) {
                alarms++;
                double sum = polygons.stream().mapToDouble(Geometry::getArea).sum();
                Geometry union =
                        UnaryUnionNG.union(JtsShapes.FACTORY.createGeometryCollection(coverage), new PrecisionModel());
                assertThat(union.getArea()).as("%s: area of the union", name).isCloseTo(sum, within(1e-12 * sum));
                assertThat(union.getBoundary().getNumGeometries())
                        .as("%s: the union is the frame", name)
                        .isEqualTo(1);
            }
        }
        return alarms;
    }

    /** Each stack alone, and all with the same colour on top together. */
    private static List<List<StackSet>> partitions(PlanarMap map) {
        return List.of(eachStack(map), List.copyOf(byTopColour(map).values()));
    }

    /** Laying shape over shape with OverlayNG shows the same colours at the same places, up to rounding at each overlay. */
    static void thePainterAgrees(Artwork artwork, PlanarMap map, MapSettings settings, String name) {
        double rounding = rounding(map) * artwork.shapes().size();
        Map<Integer, StackSet> ours = byTopColour(map);
        PaintersAlgorithm.visible(artwork, settings.flatnessMm()).forEach((colour, visible) -> {
            Region shown = map.dissolve(ours.getOrDefault(colour, StackSet.NONE));
            assertThat(shown.differenceMm2(visible))
                    .as("%s: colour %06x, of %f mm2", name, colour, visible.areaMm2())
                    .isLessThanOrEqualTo(rounding);
        });
    }

    /** Whole stacks lie where the slow mapper finds them, up to rounding. */
    static void theReferenceAgrees(Artwork artwork, PlanarMap map, MapSettings settings, String name) {
        stacksLieAlike(ReferenceMapper.map(artwork, settings.backdrop(), settings.flatnessMm()), map, name);
    }

    /** Stacks lie where another map has them, up to rounding. */
    static void stacksLieAlike(PlanarMap expectedMap, PlanarMap map, String name) {
        double rounding = rounding(map) + rounding(expectedMap);
        for (int stack = 0; stack < expectedMap.stacks().size(); stack++) {
            int same = map.stacks().indexOf(expectedMap.stacks().get(stack));
            Region expected = expectedMap.dissolve(StackSet.of(stack));
            Region found = same < 0 ? Region.EMPTY : map.dissolve(StackSet.of(same));
            assertThat(found.differenceMm2(expected))
                    .as("%s: stack %s, of %f mm2", name, expectedMap.stacks().get(stack), expected.areaMm2())
                    .isLessThanOrEqualTo(rounding);
        }
    }

    /** Moved artwork gives moved regions, exactly. */
    static void movingArtworkMovesRegions(Artwork artwork, PlanarMap map, MapSettings settings, String name) {
        int dx = 4000;
        int dy = -12_345;
        PlanarMap moved = PlanarMapper.map(artwork.movedBy(Grid.millimetres(dx), Grid.millimetres(dy)), settings);
        assertThat(moved.stacks()).as(name).isEqualTo(map.stacks());
        List<Region> before = map.dissolveAll(eachStack(map));
        List<Region> after = moved.dissolveAll(eachStack(moved));
        for (int stack = 0; stack < before.size(); stack++) {
            assertThat(after.get(stack))
                    .as("%s: stack %d", name, stack)
                    .isEqualTo(before.get(stack).movedBy(dx, dy));
        }
    }

    /** Two maps are the same, edge by edge. */
    static void mapsAreTheSame(PlanarMap one, PlanarMap other, String name) {
        assertThat(other.stacks()).as(name).isEqualTo(one.stacks());
        assertThat(arrays(other)).as(name).isDeepEqualTo(arrays(one));
    }

    private static int[][] arrays(PlanarMap map) {
        EdgeTable t = map.edges();
        return new int[][] {t.x(), t.y(), t.from(), t.to(), t.left(), t.right(), t.source()};
    }

    private static List<StackSet> eachStack(PlanarMap map) {
        return IntStream.range(0, map.stacks().size()).mapToObj(StackSet::of).toList();
    }

    private static Map<Integer, StackSet> byTopColour(PlanarMap map) {
        Map<Integer, StackSet> sets = new TreeMap<>();
        for (int stack = 0; stack < map.stacks().size(); stack++) {
            PaintStack paints = map.stacks().get(stack);
            int colour = paints.isBare()
                    ? -1
                    : PaintersAlgorithm.packed(paints.paints().get(0).colour());
            sets.merge(colour, StackSet.of(stack), StackSet::or);
        }
        return sets;
    }

    /** Snap rounding moves no point of an outline by a grid step or more. */
    private static double rounding(PlanarMap map) {
        double length = 2 * (map.frame().width() + map.frame().height());
        for (Neighbours pair : map.neighbours()) {
            length += pair.lengthMm();
        }
        return length * Grid.STEP_MM;
    }
}
