package inkstrata.planar;

import inkstrata.artwork.Artwork;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The laws of the map on drawings made to cause trouble; each failure names its drawing's seed. */
class MapLawsTest {
    private static final long DRAWINGS = 2_100;
    private static final long MANY = 60_000;
    /** The slow peers look at drawings of at most this many shapes. */
    private static final int FEW_SHAPES = 14;

    @Test
    void lawsHoldForManyDrawings() {
        for (long seed = 0; seed < DRAWINGS; seed++) {
            laws(seed);
        }
    }

    @Test
    @Tag("long")
    void lawsHoldForVeryManyDrawings() {
        for (long seed = DRAWINGS; seed < MANY; seed++) {
            laws(seed);
        }
    }

    @Test
    void peersAgreeOnSmallDrawings() {
        for (long seed = 0; seed < 600; seed++) {
            peers(seed);
        }
    }

    @Test
    @Tag("long")
    void peersAgreeOnVeryManySmallDrawings() {
        for (long seed = 600; seed < 20_000; seed++) {
            peers(seed);
        }
    }

    @Test
    void threadsLocaleAndASecondRunChangeNothing() {
        Locale before = Locale.getDefault();
        try {
            for (long seed = 0; seed < 200; seed++) {
                Artwork artwork = drawing(seed);
                MapSettings settings = settings(seed);
                Locale.setDefault(Locale.ROOT);
                PlanarMap one = PlanarMapper.map(artwork, settings.withThreads(1));
                Locale.setDefault(Locale.forLanguageTag("ar-EG"));
                PlanarMap other = PlanarMapper.map(artwork, settings.withThreads(3));
                MapLaws.mapsAreTheSame(one, other, artwork.name());
                MapLaws.mapsAreTheSame(one, PlanarMapper.map(artwork, settings.withThreads(1)), artwork.name());
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    private static void laws(long seed) {
        Artwork artwork = drawing(seed);
        MapSettings settings = settings(seed);
        String name = artwork.name() + ", tiles of " + settings.tilePieces();
        PlanarMap map = PlanarMapper.map(artwork, settings);
        MapLaws.stacksTileTheFrame(map, name);
        MapLaws.regionsAreValid(map, name);
        MapLaws.regionsAreACoverage(map, name);
        MapLaws.movingArtworkMovesRegions(artwork, map, settings, name);
    }

    private static void peers(long seed) {
        Artwork artwork = drawing(seed);
        if (artwork.shapes().size() > FEW_SHAPES) {
            return;
        }
        MapSettings settings = settings(seed);
        PlanarMap map = PlanarMapper.map(artwork, settings);
        MapLaws.theReferenceAgrees(artwork, map, settings, artwork.name());
        if (seed % 3 == 0) {
            MapLaws.thePainterAgrees(artwork, map, artwork.name());
        }
    }

    private static Artwork drawing(long seed) {
        return switch ((int) (seed % 3)) {
            case 0 -> NastyDrawings.opaque(seed);
            case 1 -> NastyDrawings.clipped(seed);
            default -> NastyDrawings.translucent(seed);
        };
    }

    private static MapSettings settings(long seed) {
        int[] tiles = {8, 30, 500};
        return MapSettings.DEFAULT.withTilePieces(tiles[(int) (seed / 3 % 3)]);
    }
}
