package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.colour.Rgb;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.valid.IsValidOp;

class DissolvingTest {
    private static final int SIZE = 400;
    private static final long SEED = 20260301;

    @Test
    void regionsOfRandomCellsAreValidAndCoverJustTheirCells() {
        Random random = new Random(SEED);
        for (int run = 0; run < 400; run++) {
            int side = 2 + random.nextInt(12);
            int stacks = 2 + random.nextInt(3);
            Chequers cells = Chequers.random(side, SIZE, stacks, random);
            PlanarMap map = cells.map(stacks, random);
            StackSet set = StackSet.of(0);
            Region region = map.dissolve(set);
            String which = "run " + run + " of seed " + SEED;
            Geometry geometry = JtsShapes.multiPolygon(region);
            assertThat(new IsValidOp(geometry).isValid()).as(which).isTrue();
            assertThat(region.doubledArea())
                    .as(which)
                    .isEqualTo(cells.doubledArea(set))
                    .isEqualTo(map.doubledArea(0));
            for (int cell = 0; cell < side * side; cell++) {
                double x = Grid.millimetres(cell % side * SIZE + SIZE / 2);
                double y = Grid.millimetres(cell / side * SIZE + SIZE / 2);
                assertThat(region.covers(new Place(x, y)))
                        .as(which)
                        .isEqualTo(cells.stack(cell % side, cell / side) == 0);
            }
        }
    }

    @Test
    void aPartitionGivesWhatItsSetsGiveAlone() {
        Random random = new Random(SEED);
        for (int run = 0; run < 100; run++) {
            PlanarMap map = Chequers.random(12, SIZE, 5, random).map(5, random);
            List<StackSet> sets = List.of(StackSet.of(0, 3), StackSet.of(1), StackSet.of(4));
            List<Region> regions = map.dissolveAll(sets);
            for (int i = 0; i < sets.size(); i++) {
                assertThat(regions.get(i)).as("run %d of seed %d", run, SEED).isEqualTo(map.dissolve(sets.get(i)));
            }
        }
    }

    @Test
    void orderAndDirectionOfEdgesDoNotMatter() {
        Chequers cells = Chequers.random(30, SIZE, 2, new Random(SEED));
        Region one = cells.map(2, new Random(1)).dissolve(StackSet.of(1));
        Region other = cells.map(2, new Random(2)).dissolve(StackSet.of(1));
        assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
        assertThat(one.toString()).isEqualTo(other.toString());
    }

    @Test
    void anotherLibraryMakesTheSameRegionsFromTheSameCells() {
        // JTS drops vertices on straight lines only where its overlay merges them; so areas and the difference are
        // compared.
        Random random = new Random(SEED + 1);
        for (int run = 0; run < 100; run++) {
            int side = 2 + random.nextInt(10);
            Chequers cells = Chequers.random(side, SIZE, 2, random);
            Region region = cells.map(2, random).dissolve(StackSet.of(1));
            Geometry[] squares = new Geometry[side * side];
            for (int cell = 0; cell < squares.length; cell++) {
                int x = cell % side * SIZE;
                int y = cell / side * SIZE;
                squares[cell] = cells.stack(cell % side, cell / side) == 1
                        ? JtsShapes.FACTORY.toGeometry(new org.locationtech.jts.geom.Envelope(x, x + SIZE, y, y + SIZE))
                        : JtsShapes.FACTORY.createPolygon();
            }
            Geometry union = UnaryUnionNG.union(JtsShapes.FACTORY.createGeometryCollection(squares), JtsShapes.GRID);
            Geometry ours = JtsShapes.multiPolygon(region);
            assertThat(ours.symDifference(union).getArea()).as("run %d", run).isZero();
            assertThat(ours.getNumGeometries())
                    .as("run %d", run)
                    .isEqualTo(region.isEmpty() ? 0 : union.getNumGeometries());
        }
    }

    @Test
    void nestedIslandsFindTheirShells() {
        int side = 41;
        int[] stack = new int[side * side];
        for (int i = 0; i < stack.length; i++) {
            int ring = Math.min(Math.min(i % side, i / side), Math.min(side - 1 - i % side, side - 1 - i / side));
            stack[i] = ring & 1;
        }
        Region region = Chequers.of(side, SIZE, stack).map(2, new Random(3)).dissolve(StackSet.of(1));
        assertThat(region.polygons())
                .hasSize(10)
                .allSatisfy(polygon -> assertThat(polygon.holes()).hasSize(1));
    }

    @Test
    void aStackInTwoSetsIsRefused() {
        PlanarMap map = Chequers.random(2, SIZE, 2, new Random(1)).map(2, new Random(1));
        assertThatThrownBy(() -> map.dissolveAll(List.of(StackSet.of(0, 1), StackSet.of(1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("stack 1 is in two sets");
    }

    @Test
    void stacksThatDoNotAgreeAroundAVertexAreFoundOut() {
        EdgeTable broken = new EdgeTable(
                new int[] {0, 400, 400},
                new int[] {0, 0, 400},
                new int[] {0, 1, 2},
                new int[] {1, 2, 0},
                new int[] {0, 1, 0},
                new int[] {-1, -1, -1},
                new int[3]);
        PlanarMap map = new PlanarMap(
                broken,
                new Segments(),
                new inkstrata.measure.Frame(0, 0, 1, 1),
                List.of(PaintStack.BARE, PaintStack.BARE),
                List.of(),
                List.of(),
                1);
        assertThatThrownBy(() -> map.dissolve(StackSet.of(0)))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("at 0.10000, 0.00000 mm");
    }

    @Test
    void repaintingJoinsEqualPaintsAndKeepsGeometry() {
        PlanarMap map = Chequers.random(8, SIZE, 3, new Random(5)).map(3, new Random(5));
        Paint black = new Paint(Rgb.BLACK);
        PlanarMap repainted = map.repainted(paint -> black);
        assertThat(repainted.stacks()).hasSize(3).containsOnly(new PaintStack(List.of(black)));
        assertThat(repainted.dissolve(StackSet.of(1))).isEqualTo(map.dissolve(StackSet.of(1)));
        assertThat(repainted.areaMm2(2)).isEqualTo(map.areaMm2(2));
    }
}
