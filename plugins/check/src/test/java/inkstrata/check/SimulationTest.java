package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.job.Job;
import inkstrata.job.PluginSettings;
import inkstrata.measure.Grid;
import inkstrata.planar.Neighbours;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import inkstrata.trap.Trap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The limit against films that are moved and laid over each other by JTS 1.20, at random and the worst way.
 *
 * <p>{@code -Dlaws.drawings=1000 -Dlaws.from=0} asks for more drawings, or others.
 */
class SimulationTest {
    private static final int DRAWINGS = Integer.getInteger("laws.drawings", 100);
    private static final int FROM = Integer.getInteger("laws.from", 0);
    private static final int OFFSET_SETS = 64;
    private static final double REGISTER_MM = 0.4;
    private static final double WIDEST_GAP = 0.005 * Grid.STEPS_PER_MM;

    /** One opening is named in each cell of 1.5 times the register; sheet shows no farther than the register from its places. */
    private static final double NEAR = (1.5 * Math.sqrt(2) + 2) * REGISTER_MM * Grid.STEPS_PER_MM;

    private static final double AGREEMENT_MM = 0.01;

    static LongStream drawings() {
        return LongStream.range(FROM, FROM + DRAWINGS);
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void whatHoldsShowsNoSheet(long seed) {
        Separation trapped = trapped(RandomDrawing.of(seed, 1));
        RegisterLimit limit = limit(trapped);
        MovedFilms films = new MovedFilms(trapped, limit.reach());
        double held = Math.min(REGISTER_MM, limit.limitMm()) * Grid.STEPS_PER_MM;
        if (held > WIDEST_GAP) {
            Random random = new Random(seed);
            for (int set = 0; set < OFFSET_SETS; set++) {
                Geometry gaps = films.gaps(offsets(random, films.count(), held - 2), WIDEST_GAP);
                assertThat(gaps.isEmpty())
                        .as("drawing %s, offset set %s: %s", seed, set, gaps)
                        .isTrue();
            }
        }
    }

    /** At the whole register, where the limit is less: what shows is near an opening that was named. */
    @ParameterizedTest
    @MethodSource("drawings")
    void whatShowsWasNamed(long seed) {
        Separation trapped = trapped(RandomDrawing.of(seed, 1));
        RegisterLimit limit = limit(trapped);
        if (limit.openings().isEmpty()) {
            return;
        }
        MovedFilms films = new MovedFilms(trapped, limit.reach());
        Random random = new Random(seed);
        for (int set = 0; set < OFFSET_SETS; set++) {
            List<Spot> offsets = offsets(random, films.count(), REGISTER_MM * Grid.STEPS_PER_MM - 2);
            Geometry gaps = films.gaps(offsets, WIDEST_GAP);
            for (int i = 0; i < gaps.getNumGeometries(); i++) {
                Coordinate gap = gaps.getGeometryN(i).getCoordinate();
                assertThat(limit.openings())
                        .as("drawing %s, offset set %s, gap at %s", seed, set, gap)
                        .anyMatch(opening -> opening.middle().distanceTo(new Spot(gap.x, gap.y)) < NEAR);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void inksThatTouchOpenAtOnceWithoutATrap(long seed) {
        Separation drawn = RandomDrawing.of(seed, 1);
        boolean touch = drawn.map().neighbours().stream()
                .anyMatch(pair -> isInked(drawn, pair.one()) && isInked(drawn, pair.other()) && differ(drawn, pair));
        assertThat(limit(drawn).limitMm() == 0).as("drawing %s", seed).isEqualTo(touch);
    }

    private static boolean isInked(Separation drawn, int stack) {
        return drawn.plan().pulls().stream().anyMatch(pull -> pull.prints().contains(stack));
    }

    private static boolean differ(Separation drawn, Neighbours pair) {
        return drawn.plan().pulls().stream()
                .noneMatch(pull ->
                        pull.prints().contains(pair.one()) && pull.prints().contains(pair.other()));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void beyondTheLimitSheetShows(long seed) {
        Separation drawn = RandomDrawing.of(seed, 1);
        for (Separation separation : List.of(drawn, trapped(drawn))) {
            RegisterLimit limit = limit(separation);
            MovedFilms films = new MovedFilms(separation, limit.reach());
            limit.smallest()
                    .ifPresent(opening -> assertThat(shows(films, opening, new Random(seed)))
                            .as("drawing %s, %s mm: %s", seed, limit.limitMm(), opening)
                            .isTrue());
        }
    }

    private static boolean shows(MovedFilms films, Opening opening, Random random) {
        return Stream.generate(() -> worst(films.count(), opening, random))
                .limit(OFFSET_SETS)
                .anyMatch(offsets -> !films.gaps(offsets, 0).isEmpty());
    }

    /** Moves a place of the opening that each film leaves bare to its middle, and by half of what engines may differ farther. */
    private static List<Spot> worst(int films, Opening opening, Random random) {
        List<Spot> ways = opening.spots().stream()
                .map(spot -> beyond(spot, opening.middle(), random))
                .toList();
        return IntStream.range(0, films)
                .mapToObj(film -> ways.get(IntStream.range(0, ways.size())
                        .filter(i -> !opening.films().get(i).get(film))
                        .findFirst()
                        .orElseThrow()))
                .toList();
    }

    private static Spot beyond(Spot spot, Spot middle, Random random) {
        double allowed = AGREEMENT_MM * Grid.STEPS_PER_MM / 2;
        double far = spot.distanceTo(middle);
        double share = far == 0 ? 0 : random.nextDouble();
        double stretch = far == 0 ? 1 : 1 + allowed * share / far;
        double stray = allowed * (1 - share) * random.nextDouble();
        double angle = 2 * Math.PI * random.nextDouble();
        return new Spot(
                (middle.x() - spot.x()) * stretch + stray * Math.cos(angle),
                (middle.y() - spot.y()) * stretch + stray * Math.sin(angle));
    }

    /** No two farther apart than r: on two or three opposite places, or anywhere on a circle of half that radius. */
    private static List<Spot> offsets(Random random, int films, double r) {
        int places = 2 + random.nextInt(3);
        double turn = 2 * Math.PI * random.nextDouble();
        double radius = places == 3 ? r / Math.sqrt(3) : r / 2;
        List<Spot> offsets = new ArrayList<>();
        for (int film = 0; film < films; film++) {
            double share = places == 4 ? random.nextDouble() : (double) random.nextInt(places) / places;
            double angle = turn + 2 * Math.PI * share;
            offsets.add(onGrid(new Spot(radius * Math.cos(angle), radius * Math.sin(angle))));
        }
        return offsets;
    }

    /** Towards 0, so that vertices stay whole numbers and offsets become hardly farther apart. */
    private static Spot onGrid(Spot offset) {
        return new Spot((long) offset.x(), (long) offset.y());
    }

    static Separation trapped(Separation drawn) {
        Map<String, PluginSettings.Setting> width = Map.of("width", new PluginSettings.Setting(REGISTER_MM + " mm", 1));
        return new Trap().shape(drawn, jobWith(width));
    }

    private static Job jobWith(Map<String, PluginSettings.Setting> settings) {
        Job job = Job.DEFAULT;
        return new Job(
                "job.yaml",
                job.title(),
                job.sheet(),
                job.sheetColour(),
                job.side(),
                job.artworkWidthMm(),
                job.artworkPlace(),
                REGISTER_MM,
                job.merge(),
                job.inks(),
                job.order(),
                job.edition(),
                Map.of(),
                Map.of("trap", new PluginSettings(1, settings)));
    }

    private static RegisterLimit limit(Separation separation) {
        return RegisterLimit.of(
                separation.printed(),
                Check.picture(separation),
                separation.artwork().frame(),
                REGISTER_MM);
    }
}
