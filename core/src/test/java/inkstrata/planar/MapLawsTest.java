package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.house.HowMany;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/** The laws of the map on drawings made to cause trouble; each failure names its drawing's seed. */
class MapLawsTest {
    private static final int DRAWINGS_IN_THE_BUILD = HowMany.of(200);

    /** In the build the coverage check of JTS, the slowest by far, looks at maps of at most this many edges. */
    private static final int EDGES_IN_THE_BUILD = 600;

    /** The slow peers look at drawings of at most this many shapes and flat segments. */
    private static final int SHAPES_FOR_PEERS = 14;

    private static final int SEGMENTS_FOR_PEERS = 300;

    /** What was looked at. */
    private static final class Tally {
        private int stacks;
        private int coverages;
        private int falseAlarms;

        void tell(TestReporter reporter, long from, long to) {
            reporter.publishEntry(String.format(
                    Locale.ROOT,
                    "drawings of seeds %d to %d: %d stacks, %d coverages, %d false alarms of the validator",
                    from,
                    to - 1,
                    stacks,
                    coverages,
                    falseAlarms));
        }
    }

    @Test
    void lawsHoldForManyStacks(TestReporter reporter) {
        Tally tally = new Tally();
        for (long seed = 0; seed < DRAWINGS_IN_THE_BUILD; seed++) {
            laws(seed, EDGES_IN_THE_BUILD, tally);
        }
        tally.tell(reporter, 0, DRAWINGS_IN_THE_BUILD);
        assertThat(tally.stacks).isGreaterThan(700);
        assertThat(tally.coverages).isGreaterThan(130);
    }

    /** From seed {@code -Dlaws.from=} on, {@code -Dlaws.drawings=} of them. */
    @Test
    @Tag("long")
    void lawsHoldForVeryManyStacks(TestReporter reporter) {
        long from = Long.getLong("laws.from", DRAWINGS_IN_THE_BUILD);
        long to = from + Long.getLong("laws.drawings", 5_000);
        Tally tally = new Tally();
        for (long seed = from; seed < to; seed++) {
            laws(seed, Integer.MAX_VALUE, tally);
        }
        tally.tell(reporter, from, to);
    }

    @Test
    void peersAgreeOnSmallDrawings() {
        int stacks = 0;
        for (long seed = 0; seed < HowMany.of(170); seed++) {
            stacks += peers(seed);
        }
        assertThat(stacks).isGreaterThan(340);
    }

    @Test
    @Tag("long")
    void peersAgreeOnVeryManySmallDrawings() {
        long from = Long.getLong("laws.from", 500);
        long to = from + Long.getLong("laws.drawings", 9_500);
        for (long seed = from; seed < to; seed++) {
            peers(seed);
        }
    }

    @Test
    void threadsLocaleAndASecondRunChangeNothing() {
        Locale before = Locale.getDefault();
        try {
            for (long seed = 0; seed < 40; seed++) {
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

    /** A point at five sixths of a curve lies half way between two grid lines, but for the error of doubles. */
    @Test
    void aPointOfACurveHalfWayBetweenGridLinesMovesWithTheArtwork() {
        laws(1589, EDGES_IN_THE_BUILD, new Tally());
    }

    private static void laws(long seed, int edgesForCoverage, Tally tally) {
        Artwork artwork = drawing(seed);
        MapSettings settings = settings(seed);
        String name = artwork.name() + ", tiles of " + settings.tilePieces();
        PlanarMap map = PlanarMapper.map(artwork, settings);
        MapLaws.stacksTileTheFrame(map, name);
        MapLaws.regionsAreValid(map, name);
        MapLaws.movingArtworkMovesRegions(artwork, map, settings, name);
        if (map.edges().from().length <= edgesForCoverage) {
            tally.coverages += 2;
            tally.falseAlarms += MapLaws.regionsAreACoverage(map, name);
        }
        tally.stacks += map.stacks().size();
    }

    /** How many stacks were compared. */
    private static int peers(long seed) {
        Artwork artwork = drawing(seed);
        MapSettings settings = settings(seed);
        if (!isForPeers(artwork, settings)) {
            return 0;
        }
        PlanarMap map = PlanarMapper.map(artwork, settings);
        MapLaws.theReferenceAgrees(artwork, map, settings, artwork.name());
        if (seed % 3 == 0) {
            MapLaws.thePainterAgrees(artwork, map, settings, artwork.name());
        }
        return map.stacks().size();
    }

    private static boolean isForPeers(Artwork artwork, MapSettings settings) {
        return artwork.shapes().size() <= SHAPES_FOR_PEERS
                && artwork.shapes().stream()
                                .flatMap(shape -> Stream.concat(
                                        Stream.of(shape.area()),
                                        shape.clips().stream().flatMap(clip -> clip.parts().stream())))
                                .distinct()
                                .mapToInt(area -> PlainOutlines.segments(area, artwork.frame(), settings.flatnessMm())
                                        .size())
                                .sum()
                        <= SEGMENTS_FOR_PEERS;
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
