package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import java.util.Random;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Test;

class PlanarMapperTest {
    private static final int SEEDS = 150;

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

    private static void check(LongFunction<Artwork> drawings) {
        int tried = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Artwork artwork = drawings.apply(seed);
            Random random = new Random(seed);
            int tile = new int[] {8, 30, 500, 1_000_000}[random.nextInt(4)];
            int depth = new int[] {1, 2, MapSettings.ALL}[random.nextInt(3)];
            MapSettings settings =
                    MapSettings.DEFAULT.withTilePieces(tile).withDepth(depth).withThreads(1 + random.nextInt(2));
            PlanarMap map = PlanarMapper.map(artwork, settings);
            String name = artwork.name() + ", tiles of " + tile + ", depth " + depth;
            if (map.edges().from().length < 3000) {
                MapChecks.edgesMeetOnlyAtVertices(map, name);
            }
            MapChecks.stacksAgreeAroundVertices(map, name);
            tried += MapChecks.stacksEqualWindingCounts(artwork, map, settings, random, 60);
        }
        assertThat(tried).isGreaterThan(10 * SEEDS);
    }
}
