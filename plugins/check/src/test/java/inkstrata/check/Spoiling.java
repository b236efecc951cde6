package inkstrata.check;

import inkstrata.check.SpoilCase.Spoilt;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.plan.Overlap;
import inkstrata.plan.Prediction;
import inkstrata.planar.Affine;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** Ways to spoil a set of films; each names the rules of which one must find it. */
@SuppressWarnings("ImmutableEnumChecker")
enum Spoiling {
    SHIFT(Scope.WHOLE, (drawn, pull) -> drawn.transformed(pull, "translate(0.2 0)"), "film place"),
    SHIFT_ASLANT(Scope.WHOLE, (drawn, pull) -> drawn.transformed(pull, "translate(-0.06 0.09)"), "film place"),
    SHIFT_WITH_MARKS(
            Scope.WHOLE,
            (drawn, pull) -> drawn.with(pull, drawn.film(pull).withPageTransform("translate(0.2 0.1)"), place -> true),
            "film place"),
    SCALE(Scope.WHOLE, (drawn, pull) -> ifLarge(drawn, pull, "scale(1.01)"), "film size"),
    SCALE_995(Scope.WHOLE, (drawn, pull) -> ifLarge(drawn, pull, "scale(0.995)"), "film size"),
    LOST_UNIT(Scope.WHOLE, (drawn, pull) -> drawn.transformed(pull, "scale(0.26458333)"), "film size"),
    TURN(Scope.WHOLE, (drawn, pull) -> ifNotRound(drawn, pull, "rotate(0.3 6 6)"), "turned film"),
    UPSIDE_DOWN(Scope.WHOLE, (drawn, pull) -> turned(drawn, pull, 180), "turned film"),
    ON_ITS_SIDE(Scope.WHOLE, (drawn, pull) -> turned(drawn, pull, 90), "turned film"),
    MIRROR(Scope.WHOLE, Spoiling::mirrored, "mirrored film"),
    STRETCH(Scope.WHOLE, (drawn, pull) -> ifAngular(drawn, pull, "scale(1.015 1)"), "stretched film"),
    SLANT(Scope.WHOLE, (drawn, pull) -> ifAngular(drawn, pull, "skewX(0.8)"), "stretched film"),
    NEGATIVE(
            Scope.WHOLE,
            (drawn, pull) -> drawn.withPicture(
                            pull, SpoilCase.square(drawn.frame()).minus(drawn.printed(pull)))
                    .map(spoilt -> new Spoilt(spoilt.films(), place -> true)),
            "negative film"),
    SWAP(Scope.SWAP, Spoiling::swapped, "swapped films"),
    TWICE(Scope.WHOLE, Spoiling::twice, "swapped films"),
    GONE(
            Scope.WHOLE,
            (drawn, pull) -> drawn.printed(pull).isEmpty()
                    ? Optional.empty()
                    : drawn.with(pull, drawn.film(pull).withPicture(Region.EMPTY), place -> true),
            "empty film"),
    CLIPPED_AWAY(
            Scope.WHOLE,
            (drawn, pull) -> drawn.printed(pull).isEmpty()
                    ? Optional.empty()
                    : drawn.with(pull, drawn.film(pull).withPaint("clip-path=\"url(#nothing)\""), place -> true),
            "empty film"),
    BLANK(
            Scope.WHOLE,
            (drawn, pull) -> drawn.printed(pull).isEmpty()
                    ? Optional.empty()
                    : drawn.with(
                            pull, drawn.film(pull).withPicture(Region.EMPTY).withMarks(List.of()), place -> true),
            "empty film"),
    NO_FILE(
            Scope.WHOLE,
            (drawn, pull) -> {
                List<Optional<WrittenFilm>> films = new ArrayList<>(drawn.films());
                films.set(pull, Optional.empty());
                return Optional.of(new Spoilt(films, place -> true));
            },
            "missing film"),
    GREY(Scope.PLACE, (drawn, pull) -> painted(drawn, pull, "fill=\"#555555\""), "grey paint"),
    PALE(Scope.PLACE, (drawn, pull) -> painted(drawn, pull, "fill=\"#cccccc\""), "grey paint"),
    TRANSLUCENT(
            Scope.PLACE, (drawn, pull) -> painted(drawn, pull, "fill=\"#000000\" fill-opacity=\"0.8\""), "grey paint"),
    GREY_SPOT(Scope.PLACE, (drawn, pull) -> spot(drawn, pull, drawn.shown(pull), 0.3, "#aaaaaa"), "grey paint"),
    MARK_MOVED(
            Scope.PLACE,
            (drawn, pull) -> {
                List<Place> marks = new ArrayList<>(drawn.film(pull).marks());
                Place moved = marks.get(1);
                marks.set(1, new Place(moved.x() + 0.1, moved.y()));
                return drawn.with(pull, drawn.film(pull).withMarks(marks), SpoilCase.near(moved));
            },
            "register marks"),
    MARK_DROPPED(
            Scope.PLACE,
            (drawn, pull) -> {
                List<Place> marks = new ArrayList<>(drawn.film(pull).marks());
                Place dropped = marks.remove(2);
                return drawn.with(pull, drawn.film(pull).withMarks(marks), SpoilCase.near(dropped));
            },
            "register marks"),
    HOLE(Scope.PLACE, (drawn, pull) -> spot(drawn, pull, drawn.shown(pull), 0.05, "#ffffff"), "missing ink"),
    LARGE_HOLE(Scope.PLACE, (drawn, pull) -> spot(drawn, pull, drawn.shown(pull), 0.5, "#ffffff"), "missing ink"),
    SLIT(Scope.PLACE, (drawn, pull) -> slit(drawn, pull, 0.06), "missing ink"),
    FINE_SLIT(Scope.NOTHING, (drawn, pull) -> slit(drawn, pull, 0.04)),
    FINEST_SLIT(Scope.NOTHING, (drawn, pull) -> slit(drawn, pull, 0.001)),
    HALF_GONE(
            Scope.PLACE,
            (drawn, pull) -> {
                Region left = half(drawn.printed(pull), true);
                Region right = half(drawn.printed(pull), false);
                return left.isEmpty() || right.isEmpty() ? Optional.empty() : drawn.without(pull, right);
            },
            "cut film",
            "missing ink"),
    CUT_AT_THE_FOOT(
            Scope.PLACE,
            (drawn, pull) -> drawn.printed(pull).bounds().orElseThrow().height() * 0.15 > 0.1
                    ? drawn.without(pull, foot(drawn.printed(pull), 0.15))
                    : Optional.empty(), // What is lower looks like a trap that is missing.
            "cut film",
            "missing ink"),
    ISLAND_GONE(Scope.PLACE, (drawn, pull) -> islandGone(drawn, pull, Comparator.reverseOrder()), "missing ink"),
    SMALL_ISLAND_GONE(Scope.PLACE, (drawn, pull) -> islandGone(drawn, pull, Comparator.naturalOrder()), "missing ink"),
    EVERY_OTHER_ISLAND_GONE(
            Scope.PLACE,
            (drawn, pull) -> {
                List<Region.Polygon> all = drawn.printed(pull).polygons();
                Region lost = Region.of(IntStream.range(0, all.size())
                        .filter(i -> i % 2 == 1)
                        .mapToObj(i -> Region.of(all.get(i)))
                        .toList());
                return all.size() < 2 ? Optional.empty() : drawn.without(pull, lost);
            },
            "missing ink",
            "cut film"),
    SPECK(Scope.PLACE, (drawn, pull) -> spot(drawn, pull, clear(drawn, pull), 0.05, "#000000"), "ink on sheet"),
    LARGE_SPECK(Scope.PLACE, (drawn, pull) -> spot(drawn, pull, clear(drawn, pull), 0.4, "#000000"), "ink on sheet"),
    HAIRLINE(Scope.PLACE, (drawn, pull) -> hairline(drawn, pull, 0.06), "ink on sheet"),
    FINE_HAIRLINE(Scope.NOTHING, (drawn, pull) -> hairline(drawn, pull, 0.04)),
    ANYWHERE(Scope.PLACE, Spoiling::anywhere, "ink on sheet", "prints over", "missing knockout", "wide rim"),
    PRINTS_OVER(Scope.PLACE, (drawn, pull) -> elsewhere(drawn, pull, true), "prints over"),
    RUNS_BENEATH(Scope.PLACE, (drawn, pull) -> elsewhere(drawn, pull, false), "missing knockout"),
    SOLID(
            Scope.PLACE,
            (drawn, pull) -> drawn.withPicture(pull, SpoilCase.square(drawn.frame())),
            "solid film",
            "ink on sheet",
            "prints over",
            "missing knockout"),
    COAT(Scope.PLACE, Spoiling::coat, "prints over", "missing knockout", "swapped films"),
    SPREAD(
            Scope.WHOLE,
            (drawn, pull) -> drawn.withPicture(
                            pull,
                            drawn.printed(pull).grown(0.1, Corners.ROUND).intersection(SpoilCase.square(drawn.frame())))
                    .filter(spoilt -> isSturdy(drawn, pull, 0.1) && isOnSheet(drawn, pull, 0.1))
                    .map(spoilt -> new Spoilt(spoilt.films(), place -> true)),
            "spread film"),
    CHOKE(
            Scope.WHOLE,
            (drawn, pull) -> drawn.without(
                            pull, drawn.printed(pull).minus(drawn.printed(pull).shrunk(0.1)))
                    .filter(spoilt -> isSturdy(drawn, pull, 0.1))
                    .map(spoilt -> new Spoilt(spoilt.films(), place -> true)),
            "choked film",
            "film size",
            "stretched film"),
    WIDE_RIM(Scope.PLACE, Spoiling::wideRim, "wide rim", "prints over", "missing knockout", "spread film"),
    TRAP_LOST(Scope.HOLD, Spoiling::trapLost, "register lost"),
    OLDER_DRAWING(
            Scope.AROUND,
            Spoiling::older,
            "missing ink",
            "ink on sheet",
            "film place",
            "cut film",
            "unlike film",
            "moved part"),
    ISLAND_SLID(Scope.PLACE, Spoiling::islandSlid, "moved part", "film place"),
    ALL_AT_75(Scope.SET, (drawn, pull) -> drawn.allTransformed("scale(0.75)"), "film size"),
    ALL_AT_133(Scope.SET, (drawn, pull) -> drawn.allTransformed("scale(1.3333333)"), "film size"),
    ALL_WITHOUT_A_UNIT(Scope.SET, (drawn, pull) -> drawn.allTransformed("scale(0.26458333)"), "film size"),
    ALL_MIRRORED(Scope.SET, (drawn, pull) -> drawn.allTransformed("matrix(-1 0 0 1 12 0)"), "mirrored film"),
    ALL_MOVED(Scope.SET, (drawn, pull) -> drawn.allTransformed("translate(3 -2)"), "film place"),
    ALL_TURNED(Scope.SET, (drawn, pull) -> drawn.allTransformed("rotate(90 6 6)"), "turned film"),
    ALL_STRETCHED(Scope.SET, (drawn, pull) -> drawn.allTransformed("scale(1.01 1)"), "stretched film");

    /** How far what is wrong reaches. */
    enum Scope {
        /** All of one film, which is named; nothing else is said. */
        WHOLE,
        /** Likewise of two films. */
        SWAP,
        /** A place; nothing else is said. */
        PLACE,
        /** A place, and more there. */
        AROUND,
        /** How far films hold. */
        HOLD,
        /** All films alike: said once. */
        SET,
        /** No mesh shows it: nothing is said. */
        NOTHING
    }

    final Scope scope;

    /** One of them must find it. */
    final Set<String> rules;

    private final BiFunction<SpoilCase, Integer, Optional<Spoilt>> way;

    Spoiling(Scope scope, BiFunction<SpoilCase, Integer, Optional<Spoilt>> way, String... rules) {
        this.scope = scope;
        this.way = way;
        this.rules = Set.of(rules);
    }

    /** Spoils a film, or with it all of them; nothing if the drawing has no place for it. */
    Optional<Spoilt> spoil(SpoilCase drawn, int pull) {
        return (scope == Scope.SET && pull != firstOf(drawn))
                        || drawn.printed(pull).isEmpty()
                ? Optional.empty()
                : way.apply(drawn, pull);
    }

    private static int firstOf(SpoilCase drawn) {
        return IntStream.range(0, drawn.films().size())
                .filter(pull -> !drawn.printed(pull).isEmpty())
                .findFirst()
                .orElse(0);
    }

    /** On a smaller film a scale by so little is a shift by micrometres, and of a film all of whose parts are thin nobody can tell. */
    private static Optional<Spoilt> ifLarge(SpoilCase drawn, int pull, String transform) {
        Frame bounds = drawn.printed(pull).bounds().orElseThrow();
        return Math.min(bounds.width(), bounds.height()) > 3 ? drawn.transformed(pull, transform) : Optional.empty();
    }

    private static Optional<Spoilt> ifNotRound(SpoilCase drawn, int pull, String transform) {
        Frame bounds = drawn.printed(pull).bounds().orElseThrow();
        return differs(drawn, pull, new Affine(0.99, -0.14, 0.14, 0.99, 0, 0))
                        && Math.max(bounds.width(), bounds.height()) > 5
                ? drawn.transformed(pull, transform)
                : Optional.empty();
    }

    /** A rectangle that is stretched may as well be another rectangle; with more corners it is one thing only. */
    private static Optional<Spoilt> ifAngular(SpoilCase drawn, int pull, String transform) {
        Frame bounds = drawn.printed(pull).bounds().orElseThrow();
        int corners = drawn.printed(pull).polygons().stream()
                .mapToInt(polygon -> polygon.shell().size())
                .sum();
        return corners > 6 && Math.min(bounds.width(), bounds.height()) > 6
                ? drawn.transformed(pull, transform)
                : Optional.empty();
    }

    /** Whether a picture looks another, wherever it lies, once it is turned or mirrored about its middle. */
    private static boolean differs(SpoilCase drawn, int pull, Affine turn) {
        Region own = drawn.printed(pull);
        Frame to = own.bounds().orElseThrow();
        Frame from = turn.of(to);
        Affine back = turn.then(new Affine(
                1,
                0,
                0,
                1,
                to.x() + to.width() / 2 - from.x() - from.width() / 2,
                to.y() + to.height() / 2 - from.y() - from.height() / 2));
        return Fit.misfitMm(back.of(own), own, drawn.frame()) > 0.1;
    }

    /** About the picture's middle; not a film that looks much the same then. */
    private static Optional<Spoilt> turned(SpoilCase drawn, int pull, int degrees) {
        double turn = Math.toRadians(degrees);
        double cos = Math.rint(Math.cos(turn));
        double sin = Math.rint(Math.sin(turn));
        return differs(drawn, pull, new Affine(cos, -sin, sin, cos, 0, 0))
                ? drawn.transformed(pull, "rotate(" + degrees + " 6 6)")
                : Optional.empty();
    }

    /** Not one that is the same once it is turned as well. */
    private static Optional<Spoilt> mirrored(SpoilCase drawn, int pull) {
        boolean isOneSided = differs(drawn, pull, new Affine(-1, 0, 0, 1, 0, 0))
                && differs(drawn, pull, new Affine(1, 0, 0, -1, 0, 0))
                && differs(drawn, pull, new Affine(0, 1, 1, 0, 0, 0))
                && differs(drawn, pull, new Affine(0, -1, -1, 0, 0, 0));
        return isOneSided ? drawn.transformed(pull, "matrix(-1 0 0 1 12 0)") : Optional.empty();
    }

    private static Optional<Spoilt> swapped(SpoilCase drawn, int pull) {
        return another(drawn, pull).map(other -> {
            List<Optional<WrittenFilm>> films = new ArrayList<>(drawn.films());
            films.set(other, drawn.films().get(pull));
            films.set(pull, drawn.films().get(other));
            return new Spoilt(films, place -> true);
        });
    }

    private static Optional<Spoilt> twice(SpoilCase drawn, int pull) {
        return another(drawn, pull).flatMap(other -> drawn.with(pull, drawn.film(other), place -> true));
    }

    private static Optional<Integer> another(SpoilCase drawn, int pull) {
        return IntStream.range(0, drawn.films().size())
                .filter(other -> other != pull
                        && drawn.printed(other).areaMm2() > 1
                        && Fit.misfitMm(drawn.printed(other), drawn.printed(pull), drawn.frame()) > 0.2)
                .boxed()
                .findFirst();
    }

    private static Optional<Spoilt> painted(SpoilCase drawn, int pull, String paint) {
        return drawn.with(pull, drawn.film(pull).withPaint(paint), SpoilCase.in(drawn.printed(pull)));
    }

    private static Optional<Spoilt> spot(SpoilCase drawn, int pull, Region where, double radius, String paint) {
        return drawn.within(where, radius + 0.02)
                .flatMap(place ->
                        drawn.with(pull, drawn.film(pull).withMore(disc(place, radius, paint)), SpoilCase.near(place)));
    }

    private static String disc(Place place, double radius, String paint) {
        return String.format(
                Locale.ROOT,
                "<circle cx=\"%.4f\" cy=\"%.4f\" r=\"%.4f\" fill=\"%s\"/>",
                place.x(),
                place.y(),
                radius,
                paint);
    }

    private static String bar(Place place, double width, double height, String paint) {
        return String.format(
                Locale.ROOT,
                "<rect x=\"%.4f\" y=\"%.4f\" width=\"%.4f\" height=\"%.4f\" fill=\"%s\"/>",
                place.x() - width / 2,
                place.y() - height / 2,
                width,
                height,
                paint);
    }

    private static Optional<Spoilt> slit(SpoilCase drawn, int pull, double width) {
        return drawn.within(drawn.shown(pull), 0.6)
                .flatMap(place -> drawn.with(
                        pull, drawn.film(pull).withMore(bar(place, 1, width, "#ffffff")), SpoilCase.near(place)));
    }

    private static Optional<Spoilt> hairline(SpoilCase drawn, int pull, double width) {
        return drawn.within(clear(drawn, pull), 0.6)
                .flatMap(place -> drawn.with(
                        pull, drawn.film(pull).withMore(bar(place, 1, width, "#000000")), SpoilCase.near(place)));
    }

    /** Bare sheet away from the film. */
    private static Region clear(SpoilCase drawn, int pull) {
        return drawn.sheet().minus(drawn.printed(pull).grown(0.1, Corners.ROUND));
    }

    private static Region half(Region region, boolean isLeft) {
        Frame bounds = region.bounds().orElseThrow();
        double middle = bounds.x() + bounds.width() / 2;
        Region left = SpoilCase.square(
                new Frame(bounds.x() - 1, bounds.y() - 1, middle - bounds.x() + 1, bounds.height() + 2));
        return isLeft ? region.intersection(left) : region.minus(left);
    }

    private static Region foot(Region region, double share) {
        Frame bounds = region.bounds().orElseThrow();
        double height = bounds.height() * share;
        return region.intersection(
                SpoilCase.square(new Frame(bounds.x() - 1, bounds.bottom() - height, bounds.width() + 2, height + 1)));
    }

    private static Optional<Spoilt> islandGone(SpoilCase drawn, int pull, Comparator<Double> bySize) {
        List<Region> islands = drawn.printed(pull).polygons().stream()
                .map(Region::of)
                .sorted(Comparator.comparing(Region::areaMm2, bySize))
                .toList();
        return islands.size() < 2
                ? Optional.empty()
                : islands.stream()
                        .flatMap(island -> drawn.without(pull, island).stream())
                        .findFirst();
    }

    /** A speck where the film is not to print, be it by its own edge. */
    private static Optional<Spoilt> anywhere(SpoilCase drawn, int pull) {
        Region clear = SpoilCase.square(drawn.frame()).minus(drawn.printed(pull));
        return drawn.within(clear, 0.16).flatMap(place -> {
            Prediction prediction = new Prediction(drawn.planned().table().sheet());
            boolean changes = IntStream.range(0, drawn.films().size())
                    .filter(other -> drawn.shown(other).covers(place))
                    .allMatch(other -> prediction.change(
                                    drawn.planned().plan().pulls().get(other).ink(),
                                    List.of(drawn.planned()
                                            .plan()
                                            .pulls()
                                            .get(pull)
                                            .ink()))
                            > 1.02 * Overlap.TOLERANCE);
            return changes
                    ? drawn.with(pull, drawn.film(pull).withMore(disc(place, 0.15, "#000000")), SpoilCase.near(place))
                    : Optional.empty();
        });
    }

    /** A speck far from its own area, over or beneath another ink. */
    private static Optional<Spoilt> elsewhere(SpoilCase drawn, int pull, boolean isOver) {
        return IntStream.range(0, drawn.films().size())
                .filter(other -> other != pull && drawn.planned().isNearer(pull, other) == isOver)
                .filter(other -> isOver
                        || new Overlap(
                                                drawn.planned()
                                                        .plan()
                                                        .pulls()
                                                        .get(pull)
                                                        .ink(),
                                                drawn.planned()
                                                        .plan()
                                                        .pulls()
                                                        .get(other)
                                                        .ink())
                                        .fromUpper()
                                > 1.02 * Overlap.TOLERANCE)
                .mapToObj(other -> drawn.within(
                        (isOver ? drawn.shown(other) : drawn.alone(other))
                                .minus(drawn.printed(pull).grown(0.3, Corners.ROUND)),
                        0.25))
                .flatMap(Optional::stream)
                .findFirst()
                .flatMap(place -> drawn.with(
                        pull, drawn.film(pull).withMore(disc(place, 0.2, "#000000")), SpoilCase.near(place)));
    }

    /** Over all of what another shows, or beneath it. */
    private static Optional<Spoilt> coat(SpoilCase drawn, int pull) {
        return IntStream.range(0, drawn.films().size())
                .filter(other -> other != pull
                        && (drawn.planned().isNearer(pull, other)
                                || new Overlap(
                                                        drawn.planned()
                                                                .plan()
                                                                .pulls()
                                                                .get(pull)
                                                                .ink(),
                                                        drawn.planned()
                                                                .plan()
                                                                .pulls()
                                                                .get(other)
                                                                .ink())
                                                .fromUpper()
                                        > 1.02 * Overlap.TOLERANCE))
                .mapToObj(drawn::shown)
                .filter(shown -> shown.minus(drawn.printed(pull)).areaMm2() > 2)
                .findFirst()
                .flatMap(shown -> drawn.withPicture(pull, drawn.printed(pull).union(shown)));
    }

    /** Whether most of the film is wide enough for an offset to be seen as one. */
    private static boolean isSturdy(SpoilCase drawn, int pull, double offset) {
        Region own = drawn.printed(pull);
        return own.shrunk(2 * offset).perimeterMm() > 0.8 * own.perimeterMm();
    }

    private static boolean isOnSheet(SpoilCase drawn, int pull, double offset) {
        Region rim = drawn.printed(pull).grown(offset, Corners.ROUND).minus(drawn.printed(pull));
        return rim.intersection(drawn.sheet()).areaMm2() > 0.3 * rim.areaMm2();
    }

    private static Optional<Spoilt> wideRim(SpoilCase drawn, int pull) {
        Region rest = Region.EMPTY;
        for (int other = 0; other < drawn.films().size(); other++) {
            rest = other == pull ? rest : rest.union(drawn.shown(other));
        }
        Region rim =
                drawn.own(pull).grown(0.9, Corners.ROUND).intersection(rest).minus(drawn.printed(pull));
        return drawn.within(rim, 0.1)
                .map(place -> SpoilCase.piece(rim, place))
                .filter(piece -> piece.areaMm2() > 2)
                .flatMap(piece -> drawn.withPicture(pull, drawn.printed(pull).union(piece)));
    }

    private static Optional<Spoilt> trapLost(SpoilCase drawn, int pull) {
        Region rim = drawn.printed(pull).minus(drawn.own(pull));
        return drawn.within(rim, 0.15)
                .map(place -> SpoilCase.piece(rim, place))
                .filter(piece -> piece.areaMm2() > 4 * CheckedFilms.REGISTER_MM * CheckedFilms.REGISTER_MM)
                .flatMap(piece -> drawn.with(
                        pull, drawn.film(pull).withPicture(drawn.printed(pull).minus(piece)), SpoilCase.in(piece)));
    }

    /** One of its parts lies half a millimetre beside its place. */
    private static Optional<Spoilt> older(SpoilCase drawn, int pull) {
        List<Region> islands =
                drawn.printed(pull).polygons().stream().map(Region::of).toList();
        if (islands.size() < 2) {
            return Optional.empty();
        }
        Region moved = islands.stream()
                .max(Comparator.comparingDouble(Region::areaMm2))
                .orElseThrow();
        Region there = moved.movedBy(2000, 0).intersection(SpoilCase.square(drawn.frame()));
        return drawn.without(pull, moved.minus(there))
                .flatMap(spoilt -> drawn.withPicture(
                                pull, drawn.printed(pull).minus(moved).union(there))
                        .map(older -> new Spoilt(older.films(), SpoilCase.in(moved))));
    }

    /** The smaller of two islands at least, where nothing of the film is in the way. */
    private static Optional<Spoilt> islandSlid(SpoilCase drawn, int pull) {
        List<Region> islands =
                drawn.printed(pull).polygons().stream().map(Region::of).toList();
        Region sheet = SpoilCase.square(drawn.frame());
        return islands.stream()
                .filter(island -> islands.size() > 1 && island.areaMm2() > 0.5)
                .filter(island -> !Pieces.of(island.intersection(drawn.shown(pull)), drawn.frame())
                        .isEmpty())
                .min(Comparator.comparingDouble(Region::areaMm2))
                .flatMap(island -> {
                    Region rest = drawn.printed(pull).minus(island);
                    Region there = island.movedBy(1200, -1200);
                    return there.minus(sheet).isEmpty()
                                    && rest.intersection(there).isEmpty()
                            ? drawn.withPicture(pull, rest.union(there))
                                    .map(spoilt -> new Spoilt(spoilt.films(), SpoilCase.in(island)))
                            : Optional.empty();
                });
    }
}
