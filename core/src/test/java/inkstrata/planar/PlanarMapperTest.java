package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.house.HowMany;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.LongFunction;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class PlanarMapperTest {
    private static final int SEEDS = HowMany.of(40);

    @Test
    void opaqueDrawingsAreMappedRight() {
        check(NastyDrawings::opaque);
    }

    @Test
    void clippedDrawingsAreMappedRight() {
        check(NastyDrawings::clipped);
    }

    @Test
    void translucentDrawingsAreMappedRight() {
        check(NastyDrawings::translucent);
    }

    @Test
    void drawingsAlongTileLinesAreMappedRight() {
        int tried = 0;
        for (long seed = 0; seed < HowMany.of(150); seed++) {
            tried += check(LatticeDrawings.of(seed), seed);
        }
        assertThat(tried).isGreaterThan(1_500);
    }

    @Test
    @Tag("long")
    void veryManyDrawingsAlongTileLinesAreMappedRight() {
        for (long seed = 400; seed < 100_000; seed++) {
            check(LatticeDrawings.of(seed), seed);
        }
    }

    /** Up to what rounding each tile on its own moves: half a step or so along all outlines. */
    @Test
    void anyTileSizeGivesTheSameRegions() {
        for (long seed = 0; seed < HowMany.of(20); seed++) {
            Artwork artwork = seed % 3 == 0 ? NastyDrawings.translucent(seed) : LatticeDrawings.of(seed);
            if (artwork.shapes().size() > 12) {
                continue;
            }
            PlanarMap one = PlanarMapper.map(artwork, MapSettings.DEFAULT.withTilePieces(1_000_000));
            for (int tile : new int[] {2, 20}) {
                PlanarMap other = PlanarMapper.map(artwork, MapSettings.DEFAULT.withTilePieces(tile));
                MapLaws.stacksLieAlike(one, other, artwork.name() + ", tiles of " + tile);
            }
        }
    }

    /** Specks in a corner of a large sheet: closing in on them costs next to nothing, and leaves no tile full. */
    @Test
    void tilesCloseInOnWhatLiesCloseTogether() {
        List<FlatShape> specks = new ArrayList<>();
        for (int i = 0; i < 6_400; i++) {
            int column = i % 80;
            int row = i / 80;
            Outline speck = Outline.rectangle(150 + column * 0.001, 150 + row * 0.001, 0.0005, 0.0005);
            specks.add(FlatShape.opaque(new Area(speck, FillRule.NONZERO), Rgb.of(i), Source.UNKNOWN));
        }
        Artwork artwork = new Artwork("specks", new Frame(0, 0, 1_000, 1_000), specks, List.of());
        Drawing drawing = Drawing.of(artwork);
        Paints paints = new Paints(drawing);
        MapSettings settings = MapSettings.DEFAULT;
        Segments segments = MapChecks.segments(artwork, settings);
        try (Crew crew = new Crew(1)) {
            Tile whole = Cropping.toFrame(drawing, segments, Box.of(artwork.frame()), crew);
            Tile root = new Culling(drawing, paints, settings.depth()).cull(whole);
            TileWork work = new TileWork(
                    TileWork.Shared.of(drawing, segments, paints, settings, UnaryOperator.identity(), 0),
                    root,
                    0,
                    Optional.empty());
            for (MappedTile tile : crew.all(work).tiles()) {
                assertThat(tile.edges().length / MappedTile.STRIDE).isLessThan(2 * settings.tilePieces());
            }
        }
    }

    /** A steep line from a tile's low left corner, which the cut that makes the tile bends onto its left side. */
    @Test
    void aPieceBentOntoTheLeftSideFromTheCornerPassesTheCornersWindingNumber() {
        double[] steps = {1, 511, 0, 0, 0, 109, 2, 128, 2, 192};
        Outline.Builder outline = Outline.builder();
        outline.moveTo(steps[0] * Grid.STEP_MM, steps[1] * Grid.STEP_MM);
        for (int i = 2; i < steps.length; i += 2) {
            outline.lineTo(steps[i] * Grid.STEP_MM, steps[i + 1] * Grid.STEP_MM);
        }
        Frame frame = new Frame(0, 0, 3 * Grid.STEP_MM, 257 * Grid.STEP_MM);
        FlatShape shape =
                FlatShape.opaque(new Area(outline.build(), FillRule.EVENODD), new Rgb(0, 0, 0), Source.UNKNOWN);
        PlanarMap map = PlanarMapper.map(
                new Artwork("steep", frame, List.of(shape), List.of()),
                MapSettings.DEFAULT.withTilePieces(1).withThreads(1));
        for (int y = 3; y < 257; y += 10) {
            assertThat(map.stacks().get(MapChecks.stackAt(map, 2.9, y)).isBare())
                    .as("at y %d", y)
                    .isTrue();
        }
    }

    private static void check(LongFunction<Artwork> drawings) {
        int tried = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            tried += check(drawings.apply(seed), seed);
        }
        assertThat(tried).isGreaterThan(10 * SEEDS);
    }

    /** How many places were compared. */
    private static int check(Artwork artwork, long seed) {
        Random random = new Random(seed);
        int tile = new int[] {1, 8, 30, 500, 1_000_000}[random.nextInt(5)];
        int depth = new int[] {1, 2, MapSettings.ALL}[random.nextInt(3)];
        MapSettings settings =
                MapSettings.DEFAULT.withTilePieces(tile).withDepth(depth).withThreads(1 + random.nextInt(2));
        PlanarMap map = PlanarMapper.map(artwork, settings);
        String name = artwork.name() + ", tiles of " + tile + ", depth " + depth;
        if (map.edges().from().length < 3000) {
            MapChecks.edgesMeetOnlyAtVertices(map, name);
        }
        MapChecks.stacksAgreeAroundVertices(map, name);
        if (seed % 3 == 0) {
            PlanarMapper.Noded noded = MapChecks.noded(artwork, settings);
            MapChecks.sourcesRunBesideTheirEdges(noded.edges(), noded.segments(), name);
        }
        return MapChecks.stacksEqualWindingCounts(artwork, map, settings, random, 60);
    }
}
