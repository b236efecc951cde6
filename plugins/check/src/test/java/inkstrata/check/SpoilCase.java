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
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** A drawing and its films as they ought to be. */
record SpoilCase(Separation planned, List<Optional<WrittenFilm>> films) {
    /** Faults are this near to the place that is named, in millimetres. */
    private static final double NEAR_MM = 1;

    static SpoilCase of(Separation planned) {
        return new SpoilCase(planned, CheckedFilms.asPlanned(planned));
    }

    /**
     * Spoilt films.
     *
     * @param isThere whether a place is where the fault must be found
     */
    record Spoilt(List<Optional<WrittenFilm>> films, Predicate<Place> isThere) {}

    Frame frame() {
        return planned.artwork().frame();
    }

    WrittenFilm film(int pull) {
        return films.get(pull).orElseThrow();
    }

    Region printed(int pull) {
        return planned.printed().get(pull);
    }

    /** The artwork's places for that pull, be they beneath others. */
    Region own(int pull) {
        return planned.map().dissolve(planned.plan().pulls().get(pull).prints());
    }

    /** What the drawing shows in that ink. */
    Region shown(int pull) {
        Region shown = own(pull);
        for (int other = 0; other < films.size(); other++) {
            shown = other != pull && planned.isNearer(other, pull) ? shown.minus(own(other)) : shown;
        }
        return shown;
    }

    /** What it shows in that ink, with no other ink over or beneath it. */
    Region alone(int pull) {
        Region alone = shown(pull);
        for (int other = 0; other < films.size(); other++) {
            alone = other == pull ? alone : alone.minus(printed(other));
        }
        return alone;
    }

    /** Bare sheet of the drawing. */
    Region sheet() {
        return square(frame()).minus(Check.picture(planned));
    }

    /** A place that far inside a region. */
    Optional<Place> within(Region region, double millimetres) {
        return region.shrunk(millimetres).polygons().stream()
                .max(Comparator.comparingDouble(polygon -> Region.of(polygon).areaMm2()))
                .map(polygon -> new Place(
                        Grid.millimetres(polygon.shell().x(0)),
                        Grid.millimetres(polygon.shell().y(0))));
    }

    Optional<Spoilt> with(int pull, WrittenFilm film, Predicate<Place> isThere) {
        List<Optional<WrittenFilm>> spoilt = new ArrayList<>(films);
        spoilt.set(pull, Optional.of(film));
        return Optional.of(new Spoilt(spoilt, isThere));
    }

    /** The film with another picture; nothing if the two do not differ by what a mesh can show. */
    Optional<Spoilt> withPicture(int pull, Region picture) {
        Region difference = picture.minus(printed(pull)).union(printed(pull).minus(picture));
        return Pieces.of(difference, frame()).isEmpty()
                ? Optional.empty()
                : with(pull, film(pull).withPicture(picture), in(difference));
    }

    /** Likewise of what somebody would miss: not rims that lie beneath other inks. */
    Optional<Spoilt> without(int pull, Region lost) {
        return Pieces.of(lost.intersection(shown(pull)), frame()).isEmpty()
                ? Optional.empty()
                : withPicture(pull, printed(pull).minus(lost));
    }

    Optional<Spoilt> transformed(int pull, String transform) {
        return with(pull, film(pull).withTransform(transform), place -> true);
    }

    /** All films, marks and all. */
    Optional<Spoilt> allTransformed(String transform) {
        List<Optional<WrittenFilm>> all = films.stream()
                .map(film -> film.map(one -> one.withPageTransform(transform)))
                .toList();
        return all.size() < 2 ? Optional.empty() : Optional.of(new Spoilt(all, place -> true));
    }

    static Predicate<Place> near(Place fault) {
        return place -> Math.hypot(place.x() - fault.x(), place.y() - fault.y()) < NEAR_MM;
    }

    static Predicate<Place> in(Region fault) {
        Region near = fault.grown(NEAR_MM, Corners.ROUND);
        return near::covers;
    }

    /** The polygon that holds a place. */
    static Region piece(Region region, Place place) {
        return region.polygons().stream()
                .map(Region::of)
                .filter(polygon -> polygon.covers(place))
                .findFirst()
                .orElseThrow();
    }

    static Region square(Frame frame) {
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
