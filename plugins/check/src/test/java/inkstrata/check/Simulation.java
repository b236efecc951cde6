package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.measure.Grid;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The laws of the limit for one separation, by films that are moved and laid over each other.
 *
 * @param which for messages
 */
record Simulation(String which, Separation separation, double registerMm) {
    private static final int OFFSET_SETS = 64;
    private static final double WIDEST_GAP = 0.005 * Grid.STEPS_PER_MM;
    private static final double AGREEMENT_MM = 0.01;

    RegisterLimit limit() {
        return RegisterLimit.of(
                separation.printed(),
                Check.picture(separation),
                separation.artwork().frame(),
                registerMm);
    }

    /** Below the limit, or the register if that is less, no gap that could be seen. */
    void whatHoldsShowsNoSheet() {
        RegisterLimit limit = limit();
        MovedFilms films = new MovedFilms(separation, limit.reach());
        double held = Math.min(registerMm, limit.limitMm()) * Grid.STEPS_PER_MM;
        if (held > WIDEST_GAP) {
            Random random = new Random(which.hashCode());
            for (int set = 0; set < OFFSET_SETS; set++) {
                Geometry gaps = films.gaps(offsets(random, films.count(), held - 2), WIDEST_GAP);
                assertThat(gaps.isEmpty())
                        .as("%s, offset set %s: %s", which, set, gaps)
                        .isTrue();
            }
        }
    }

    /** A little above it a gap. */
    void beyondTheLimitSheetShows() {
        RegisterLimit limit = limit();
        MovedFilms films = new MovedFilms(separation, limit.reach());
        limit.smallest()
                .ifPresent(opening -> assertThat(shows(films, opening, new Random(which.hashCode())))
                        .as("%s, %s mm: %s", which, limit.limitMm(), opening)
                        .isTrue());
    }

    /** At the whole register, where the limit is less: what shows is near an opening that was named. */
    void whatShowsWasNamed() {
        RegisterLimit limit = limit();
        if (limit.openings().isEmpty()) {
            return;
        }
        // One opening is named in each cell of 1.5 times the register; sheet shows no farther than the register from
        // its places.
        double near = (1.5 * Math.sqrt(2) + 2) * registerMm * Grid.STEPS_PER_MM;
        MovedFilms films = new MovedFilms(separation, limit.reach());
        Random random = new Random(which.hashCode());
        for (int set = 0; set < OFFSET_SETS; set++) {
            List<Spot> offsets = offsets(random, films.count(), registerMm * Grid.STEPS_PER_MM - 2);
            Geometry gaps = films.gaps(offsets, WIDEST_GAP);
            for (int i = 0; i < gaps.getNumGeometries(); i++) {
                Coordinate gap = gaps.getGeometryN(i).getCoordinate();
                assertThat(limit.openings())
                        .as("%s, offset set %s, gap at %s", which, set, gap)
                        .anyMatch(opening -> opening.middle().distanceTo(new Spot(gap.x, gap.y)) < near);
            }
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
}
