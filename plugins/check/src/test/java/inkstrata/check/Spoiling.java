package inkstrata.check;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Corners;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.Similarity;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Ways to spoil a set of films; each names the rule that must find it, and where. */
enum Spoiling {
    SHIFT("film place") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            return whole(drawn, "translate(0.2 0)");
        }
    },
    SHIFT_ASLANT("film place") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            return whole(drawn, "translate(-0.06 0.09)");
        }
    },
    SCALE("film size") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            // On a smaller film a scale by so little is a shift by micrometres.
            return whole(drawn, "scale(1.002)")
                    .filter(spoilt ->
                            drawn.printed(spoilt.pull()).bounds().orElseThrow().width() > 6);
        }
    },
    LOST_UNIT("film size") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            return whole(drawn, "scale(0.26458333)");
        }
    },
    TURN("turned film") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            return whole(drawn, "rotate(0.3 6 6)");
        }
    },
    MIRROR("mirrored film") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            return whole(drawn, "matrix(-1 0 0 1 12 0)").filter(spoilt -> {
                Region own = drawn.printed(spoilt.pull());
                Region turned = Similarity.mirror(12).of(own);
                return Fit.misfitMm(turned, own, drawn.planned.artwork().frame()) > 0.1;
            });
        }
    },
    UPSIDE_DOWN("turned film") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            return turned(drawn, 180);
        }
    },
    ON_ITS_SIDE("turned film") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            return turned(drawn, 90);
        }
    },
    SHIFT_WITH_MARKS("film place") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            WrittenFilm film = drawn.film(drawn.busiest()).withTransform("translate(0.2 0)");
            List<Place> marks = film.marks().stream()
                    .map(mark -> new Place(mark.x() + 0.2, mark.y()))
                    .toList();
            return drawn.with(drawn.busiest(), film.withMarks(marks), place -> true);
        }
    },
    NEGATIVE("negative film") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            Region own = drawn.printed(drawn.busiest());
            Region negative = square(drawn.planned.artwork().frame()).minus(own);
            return drawn.with(drawn.busiest(), drawn.film(drawn.busiest()).withPicture(negative), place -> true);
        }
    },
    SWAP("swapped films") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            int other = IntStream.range(0, drawn.films.size())
                    .filter(pull ->
                            pull != drawn.busiest() && drawn.printed(pull).areaMm2() > 1)
                    .findFirst()
                    .orElse(-1);
            if (other < 0) {
                return Optional.empty();
            }
            List<Optional<WrittenFilm>> films = new ArrayList<>(drawn.films);
            films.set(other, drawn.films.get(drawn.busiest()));
            films.set(drawn.busiest(), drawn.films.get(other));
            return Optional.of(new Spoilt(films, other, place -> true));
        }
    },
    EMPTY("empty film") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            WrittenFilm film = drawn.film(drawn.busiest());
            return drawn.with(drawn.busiest(), film.withPicture(Region.EMPTY).withMarks(List.of()), place -> true);
        }
    },
    NO_FILE("missing film") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            List<Optional<WrittenFilm>> films = new ArrayList<>(drawn.films);
            films.set(drawn.busiest(), Optional.empty());
            return Optional.of(new Spoilt(films, drawn.busiest(), place -> true));
        }
    },
    GREY("grey paint") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            WrittenFilm film = drawn.film(drawn.busiest());
            return drawn.with(drawn.busiest(), film.withPaint("fill=\"#555555\""), place -> true);
        }
    },
    TRANSLUCENT("grey paint") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            WrittenFilm film = drawn.film(drawn.busiest());
            return drawn.with(drawn.busiest(), film.withPaint("fill=\"#000000\" fill-opacity=\"0.8\""), place -> true);
        }
    },
    GREY_SPOT("grey paint") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            return drawn.within(drawn.shown(drawn.busiest()), 0.4)
                    .flatMap(place -> drawn.with(
                            drawn.busiest(),
                            drawn.film(drawn.busiest()).withMore(disc(place, 0.3, "#aaaaaa")),
                            near(place)));
        }
    },
    MARK_MOVED("register marks") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            WrittenFilm film = drawn.film(drawn.busiest());
            List<Place> marks = new ArrayList<>(film.marks());
            Place moved = marks.get(1);
            marks.set(1, new Place(moved.x() + 0.1, moved.y()));
            return drawn.with(drawn.busiest(), film.withMarks(marks), near(moved));
        }
    },
    MARK_DROPPED("register marks") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            WrittenFilm film = drawn.film(drawn.busiest());
            List<Place> marks = new ArrayList<>(film.marks());
            Place dropped = marks.remove(2);
            return drawn.with(drawn.busiest(), film.withMarks(marks), near(dropped));
        }
    },
    HOLE("missing ink") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            Region bare = drawn.shown(drawn.busiest());
            for (int pull = 0; pull < drawn.films.size(); pull++) {
                bare = pull == drawn.busiest() ? bare : bare.minus(drawn.printed(pull));
            }
            return drawn.within(bare, 0.3)
                    .flatMap(place -> drawn.with(
                            drawn.busiest(),
                            drawn.film(drawn.busiest()).withMore(disc(place, 0.2, "#ffffff")),
                            near(place)));
        }
    },
    ISLAND_LOST("missing ink") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            // Only where another film prints beneath: else it is a gap.
            Region shown = drawn.shown(drawn.busiest());
            Region beneath = Region.EMPTY;
            for (int pull = 0; pull < drawn.films.size(); pull++) {
                beneath = pull == drawn.busiest()
                        ? beneath
                        : beneath.union(drawn.printed(pull).intersection(shown));
            }
            return drawn.within(beneath, 0.15)
                    .flatMap(place -> drawn.with(
                            drawn.busiest(),
                            drawn.film(drawn.busiest()).withMore(disc(place, 0.12, "#ffffff")),
                            near(place)));
        }
    },
    ISLAND_ADDED("ink on sheet") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            Region sheet = square(drawn.planned.artwork().frame()).minus(Check.picture(drawn.planned));
            return drawn.within(sheet, 0.4)
                    .flatMap(place -> drawn.with(
                            drawn.busiest(),
                            drawn.film(drawn.busiest()).withMore(disc(place, 0.3, "#000000")),
                            near(place)));
        }
    },
    PRINTS_OVER("prints over") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            int last = drawn.films.size() - 1;
            return IntStream.range(0, last)
                    .mapToObj(pull -> drawn.within(far(drawn.shown(pull), drawn.printed(last)), 0.3))
                    .flatMap(Optional::stream)
                    .findFirst()
                    .flatMap(place ->
                            drawn.with(last, drawn.film(last).withMore(disc(place, 0.2, "#000000")), near(place)));
        }
    },
    RUNS_BENEATH("missing knockout") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            return IntStream.range(1, drawn.films.size())
                    .mapToObj(pull -> drawn.within(far(drawn.shown(pull), drawn.printed(0)), 0.3))
                    .flatMap(Optional::stream)
                    .findFirst()
                    .flatMap(place -> drawn.with(0, drawn.film(0).withMore(disc(place, 0.2, "#000000")), near(place)));
        }
    },
    WIDE_RIM("wide rim") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            int pull = drawn.busiest();
            Region own = drawn.planned
                    .map()
                    .dissolve(drawn.planned.plan().pulls().get(pull).prints());
            Region rest = Region.EMPTY;
            for (int other = 0; other < drawn.films.size(); other++) {
                rest = other == pull ? rest : rest.union(drawn.shown(other));
            }
            Region rim = own.grown(0.9, Corners.ROUND).intersection(rest).minus(drawn.printed(pull));
            return drawn.within(rim, 0.1)
                    .flatMap(place -> drawn.with(
                            pull,
                            drawn.film(pull).withPicture(drawn.printed(pull).union(piece(rim, place))),
                            in(piece(rim, place))));
        }
    },
    TRAP_LOST("register lost") {
        @Override
        Optional<Spoilt> spoil(Case drawn) {
            for (int pull = 0; pull < drawn.films.size(); pull++) {
                Region own = drawn.planned
                        .map()
                        .dissolve(drawn.planned.plan().pulls().get(pull).prints());
                Region rim = drawn.printed(pull).minus(own);
                Optional<Place> place = drawn.within(rim, 0.15);
                if (place.isPresent()
                        && piece(rim, place.get()).areaMm2()
                                > 4 * CheckedFilms.REGISTER_MM * CheckedFilms.REGISTER_MM) {
                    return drawn.with(
                            pull,
                            drawn.film(pull).withPicture(drawn.printed(pull).minus(piece(rim, place.get()))),
                            in(piece(rim, place.get())));
                }
            }
            return Optional.empty();
        }
    };

    /** Films that lie wrong as wholes: once that is said, nothing else is an error. */
    static final Set<Spoiling> WHOLE = EnumSet.of(
            SHIFT,
            SHIFT_ASLANT,
            SHIFT_WITH_MARKS,
            SCALE,
            LOST_UNIT,
            TURN,
            UPSIDE_DOWN,
            ON_ITS_SIDE,
            NEGATIVE,
            MIRROR,
            SWAP,
            EMPTY,
            NO_FILE);

    /** What the finding must be called. */
    final String rule;

    Spoiling(String rule) {
        this.rule = rule;
    }

    /** Nothing if the drawing has no place for it. */
    abstract Optional<Spoilt> spoil(Case drawn);

    /**
     * Spoilt films.
     *
     * @param pull whose film it is
     * @param isThere whether a place is where the fault must be found
     */
    record Spoilt(List<Optional<WrittenFilm>> films, int pull, Predicate<Place> isThere) {}

    /** Faults are this near to the place that is named, in millimetres. */
    private static final double NEAR_MM = 1;

    private static Predicate<Place> near(Place fault) {
        return place -> Math.hypot(place.x() - fault.x(), place.y() - fault.y()) < NEAR_MM;
    }

    private static Predicate<Place> in(Region fault) {
        return fault.grown(NEAR_MM, Corners.ROUND)::covers;
    }

    /** A drawing and its films as they ought to be. */
    record Case(Separation planned, List<Optional<WrittenFilm>> films) {
        WrittenFilm film(int pull) {
            return films.get(pull).orElseThrow();
        }

        Region printed(int pull) {
            return planned.printed().get(pull);
        }

        /** What the drawing shows in that ink; each place prints one, by knockout. */
        Region shown(int pull) {
            return planned.map().dissolve(planned.plan().pulls().get(pull).prints());
        }

        /** The film with the largest area. */
        int busiest() {
            return IntStream.range(0, films.size())
                    .boxed()
                    .max(Comparator.comparingDouble(pull -> printed(pull).areaMm2()))
                    .orElseThrow();
        }

        /** A place of a region that far inside it. */
        Optional<Place> within(Region region, double millimetres) {
            return region.shrunk(millimetres).polygons().stream()
                    .max(Comparator.comparingDouble(
                            polygon -> Region.of(polygon).areaMm2()))
                    .map(polygon -> new Place(
                            Grid.millimetres(polygon.shell().x(0)),
                            Grid.millimetres(polygon.shell().y(0))));
        }

        Optional<Spoilt> with(int pull, WrittenFilm film, Predicate<Place> isThere) {
            List<Optional<WrittenFilm>> spoilt = new ArrayList<>(films);
            spoilt.set(pull, Optional.of(film));
            return Optional.of(new Spoilt(spoilt, pull, isThere));
        }
    }

    private static Optional<Spoilt> whole(Case drawn, String transform) {
        WrittenFilm film = drawn.film(drawn.busiest());
        return drawn.with(drawn.busiest(), film.withTransform(transform), place -> true);
    }

    /** About the picture's middle; not a film that looks much the same then. */
    private static Optional<Spoilt> turned(Case drawn, int degrees) {
        return whole(drawn, "rotate(" + degrees + " 6 6)").filter(spoilt -> {
            Region own = drawn.printed(spoilt.pull());
            double turn = Math.toRadians(degrees);
            Region turned = Similarity.move(-6, -6)
                    .then(new Similarity(Math.rint(Math.cos(turn)), Math.rint(Math.sin(turn)), 6, 6, false))
                    .of(own);
            return Fit.misfitMm(turned, own, drawn.planned.artwork().frame()) > 0.1;
        });
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

    /** The polygon that holds a place. */
    private static Region piece(Region region, Place place) {
        return region.polygons().stream()
                .map(Region::of)
                .filter(polygon -> polygon.covers(place))
                .findFirst()
                .orElseThrow();
    }

    /** Farther from another region than any rim. */
    private static Region far(Region region, Region other) {
        return region.minus(other.grown(1.7, Corners.ROUND));
    }

    private static Region square(Frame frame) {
        Outline outline = Outline.rectangle(frame.x(), frame.y(), frame.width(), frame.height());
        PlanarMap map = PlanarMapper.map(
                new Artwork(
                        "square",
                        frame,
                        List.of(FlatShape.opaque(new Area(outline, FillRule.NONZERO), Rgb.BLACK, Source.UNKNOWN)),
                        List.of()),
                MapSettings.DEFAULT);
        return map.dissolve(StackSet.of(IntStream.range(0, map.stacks().size())
                .filter(stack -> !map.stacks().get(stack).isBare())));
    }
}
