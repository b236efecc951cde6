package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Artwork;
import inkstrata.house.HowMany;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * What must hold between regions, on regions from drawings made to cause trouble: rings that touch in vertices, holes that
 * touch their shells, islands in holes, slivers a step wide. Each failure names its drawing's seed.
 */
class RegionLawsTest {
    private static final int DRAWINGS = HowMany.of(70);

    /** Larger drawings and maps are left out, for time. */
    private static final int MOST_SHAPES = 30;

    private static final int MOST_EDGES = 600;

    @Test
    void setsOfLooksAreWhatTheMapDissolves() {
        forDrawings((map, random) -> {
            StackSet some = anyStacks(map, random);
            StackSet others = anyStacks(map, random);
            Region one = map.dissolve(some);
            Region other = map.dissolve(others);
            double rounding = (one.perimeterMm() + other.perimeterMm()) * Grid.STEP_MM;
            isTheSame(one.union(other), map.dissolve(some.or(others)), rounding);
            isTheSame(one.intersection(other), map.dissolve(some.and(others)), rounding);
            isTheSame(one.minus(other), map.dissolve(some.minus(others)), rounding);
            assertThat(one.differenceMm2(one)).isZero();
        });
    }

    /** Its arcs' facets lie outside theirs, by two thousandths of the radius and a step at most. */
    @Test
    void outlinesMovedByWayOfAMapAreThoseOfABuffer() {
        forDrawings((map, random) -> {
            Region region = map.dissolve(anyStacks(map, random));
            if (region.isEmpty()) {
                return;
            }
            double steps = Math.pow(10, 0.5 + 3 * random.nextDouble());
            Region round = MappedOffset.of(region, steps, Corners.ROUND);
            areOneBut(round, region.grown(steps * Grid.STEP_MM, Corners.ROUND), steps);
            areOneBut(MappedOffset.of(region, -steps, Corners.ROUND), region.shrunk(steps * Grid.STEP_MM), steps);
            Region bevelled = MappedOffset.of(region, steps, Corners.BEVEL);
            Region mitred = MappedOffset.of(region, steps, Corners.MITRE);
            Region farthest = region.grown(Corners.MITRE_LIMIT * steps * Grid.STEP_MM, Corners.ROUND);
            liesIn(region, bevelled, steps);
            liesIn(bevelled, round, steps);
            liesIn(round, mitred, steps);
            liesIn(mitred, farthest, steps);
        });
    }

    private static void liesIn(Region inner, Region outer, double steps) {
        assertThat(inner.minus(outer).areaMm2()).isLessThanOrEqualTo(band(inner, outer, steps));
    }

    private static void areOneBut(Region mapped, Region buffer, double steps) {
        isTheSame(mapped, buffer, band(mapped, buffer, steps));
    }

    private static double band(Region one, Region other, double steps) {
        return (one.perimeterMm() + other.perimeterMm()) * (0.003 * steps + 2) * Grid.STEP_MM;
    }

    @Test
    void aPlaceIsCoveredByTheLookAtItAlone() {
        forDrawings((map, random) -> {
            StackSet some = anyStacks(map, random);
            Region region = map.dissolve(some);
            for (int i = 0; i < 30; i++) {
                double x = map.frame().x() + random.nextDouble() * map.frame().width();
                double y = map.frame().y() + random.nextDouble() * map.frame().height();
                int stack = MapChecks.stackAt(map, x / Grid.STEP_MM, y / Grid.STEP_MM);
                assertThat(region.covers(new Place(x, y))).as("%f, %f", x, y).isEqualTo(some.contains(stack));
            }
            for (Ring ring : region.rings()) {
                for (int v = 0; v < ring.size(); v++) {
                    Place vertex = new Place(Grid.millimetres(ring.x(v)), Grid.millimetres(ring.y(v)));
                    assertThat(region.covers(vertex)).as("%s", vertex).isTrue();
                }
            }
        });
    }

    @Test
    void distancesAreThoseOfTheNearestEdges() {
        AtomicInteger apart = new AtomicInteger();
        forDrawings((map, random) -> {
            Region one = piece(map.dissolve(anyStacks(map, random)), random);
            Region other = piece(map.dissolve(anyStacks(map, random)), random);
            if (!one.isEmpty() && !other.isEmpty() && one.intersection(other).isEmpty()) {
                assertThat(one.distanceMm(other)).isCloseTo(nearest(one, other) * Grid.STEP_MM, within(1e-9));
                assertThat(other.distanceMm(one)).isEqualTo(one.distanceMm(other));
                apart.addAndGet(one.distanceMm(other) > 0 ? 1 : 0);
            }
        });
        assertThat(apart).hasValueGreaterThan(20);
    }

    @Test
    void grownRegionsHoldAndShrunkOnesLieInside() {
        forDrawings((map, random) -> {
            Region region = map.dissolve(anyStacks(map, random));
            double width = map.frame().width() * Math.pow(10, -1 - 3 * random.nextDouble());
            for (Corners corners : Corners.values()) {
                Region grown = region.grown(width, corners);
                isValid(grown);
                assertThat(region.minus(grown).areaMm2()).isLessThanOrEqualTo(rounding(region, grown));
            }
            Region shrunk = region.shrunk(width);
            isValid(shrunk);
            assertThat(shrunk.minus(region).areaMm2()).isLessThanOrEqualTo(rounding(region, shrunk));
            Region back = shrunk.grown(width, Corners.ROUND);
            assertThat(back.minus(region).areaMm2()).isLessThanOrEqualTo(2 * rounding(region, back));
        });
    }

    private static void forDrawings(BiConsumer<PlanarMap, Random> law) {
        for (long seed = 0; seed < DRAWINGS; seed++) {
            Artwork artwork = seed % 2 == 0 ? NastyDrawings.opaque(seed) : NastyDrawings.translucent(seed);
            if (artwork.shapes().size() > MOST_SHAPES) {
                continue;
            }
            PlanarMap map = PlanarMapper.map(artwork, MapSettings.DEFAULT.withTilePieces(seed % 3 == 0 ? 8 : 500));
            if (map.edges().from().length > MOST_EDGES) {
                continue;
            }
            try {
                law.accept(map, new Random(seed));
            } catch (RuntimeException | AssertionError failed) {
                throw new AssertionError(artwork.name() + ": " + failed.getMessage(), failed);
            }
        }
    }

    private static StackSet anyStacks(PlanarMap map, Random random) {
        return StackSet.of(IntStream.range(0, map.stacks().size()).filter(stack -> random.nextBoolean()));
    }

    private static Region piece(Region region, Random random) {
        return region.isEmpty()
                ? region
                : new Region(List.of(
                        region.polygons().get(random.nextInt(region.polygons().size()))));
    }

    private static void isTheSame(Region found, Region expected, double rounding) {
        isValid(found);
        assertThat(found.areaMm2()).isCloseTo(expected.areaMm2(), within(rounding));
        assertThat(found.differenceMm2(expected)).isLessThanOrEqualTo(2 * rounding);
    }

    private static void isValid(Region region) {
        IsValidOp check = new IsValidOp(JtsShapes.multiPolygon(region));
        assertThat(check.isValid()).as("%s", check.getValidationError()).isTrue();
    }

    private static double rounding(Region one, Region other) {
        return (one.perimeterMm() + other.perimeterMm()) * Grid.STEP_MM;
    }

    /** In steps, all edges against all vertices; edges of regions that do not overlap come nearest at a vertex. */
    private static double nearest(Region one, Region other) {
        return Math.min(fromVertices(one, other), fromVertices(other, one));
    }

    private static double fromVertices(Region one, Region other) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Ring ring : one.rings()) {
            for (int v = 0; v < ring.size(); v++) {
                for (Ring edges : other.rings()) {
                    for (int a = edges.size() - 1, b = 0; b < edges.size(); a = b++) {
                        nearest = Math.min(
                                nearest,
                                Line2D.ptSegDist(edges.x(a), edges.y(a), edges.x(b), edges.y(b), ring.x(v), ring.y(v)));
                    }
                }
            }
        }
        return nearest;
    }
}
