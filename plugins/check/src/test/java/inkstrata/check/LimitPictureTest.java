package inkstrata.check;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.separation.FlatDrawing.disc;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.measure.Grid;
import inkstrata.plan.Ink;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The picture in the docs, drawn from real output: openings in register, and films moved until sheet shows there.
 *
 * <p>{@code -Dpictures=rewrite} draws it anew.
 */
class LimitPictureTest {
    private static final Path PICTURE = Path.of("docs", "limit.svg");
    private static final Ink SAND = ink("sand", "#d9a441");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#3c5a99");
    private static final double REACH_MM = 1.5;
    private static final double SIDE = 4;
    private static final double CELL = 4.5;
    private static final int PIXELS_PER_MM = 100;

    /** So much farther than the limit films are moved, in the picture. */
    private static final double BEYOND = 1.25;

    @Test
    void showsWhatComesOut() throws IOException {
        String picture = picture();
        if (System.getProperty("pictures", "").equals("rewrite")) {
            Files.writeString(PICTURE, picture);
        }
        assertThat(Files.readString(PICTURE)).isEqualTo(picture);
    }

    private static String picture() {
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.0f\" height=\"%1$.0f\" viewBox=\"0 0 %2$.1f %2$.1f\">\n",
                2 * CELL * PIXELS_PER_MM,
                2 * CELL));
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        row(strip(), 0, svg);
        row(holes(), CELL, svg);
        return svg.append("</svg>\n").toString();
    }

    private static Separation strip() {
        return new FlatDrawing(SIDE, SIDE)
                .fill(SAND, rectangle(0.7, 1, 1.5, 2))
                .fill(NIGHT, rectangle(1.8, 1, 1.5, 2))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, NIGHT);
    }

    private static Separation holes() {
        return new FlatDrawing(SIDE, SIDE)
                .fill(ink("ground", "#888888"), rectangle(0.7, 0.7, 2.6, 2.6))
                .fill(SAND, disc(1.6, 2.3, 0.2))
                .fill(RUST, disc(2.4, 2.3, 0.2))
                .fill(NIGHT, disc(2, 1.61, 0.2))
                .separated(
                        (ink, row) -> !row.inks().isEmpty() && !row.top().equals(Optional.of(ink)), SAND, RUST, NIGHT);
    }

    private static void row(Separation separation, double top, StringBuilder svg) {
        RegisterLimit limit = RegisterLimit.of(
                separation.printed(),
                Check.picture(separation),
                separation.artwork().frame(),
                REACH_MM);
        Opening opening = limit.smallest().orElseThrow();
        MovedFilms films = new MovedFilms(separation, limit.reach());
        List<Spot> still = new ArrayList<>();
        List<Spot> moved = new ArrayList<>();
        for (int film = 0; film < films.count(); film++) {
            still.add(new Spot(0, 0));
            moved.add(offset(film, opening));
        }
        films(separation, films, still, 0, top, svg);
        spots(opening.spots(), 0, top, svg);
        films(separation, films, moved, CELL, top, svg);
        path(films.gaps(moved, 0), CELL, top, "fill=\"#e00000\"", svg);
    }

    private static Spot offset(int film, Opening opening) {
        Spot bare = IntStream.range(0, opening.spots().size())
                .filter(i -> !opening.films().get(i).get(film))
                .mapToObj(i -> opening.spots().get(i))
                .findFirst()
                .orElseThrow();
        Spot middle = opening.middle();
        return new Spot(BEYOND * (middle.x() - bare.x()), BEYOND * (middle.y() - bare.y()));
    }

    private static void films(
            Separation separation, MovedFilms films, List<Spot> offsets, double left, double top, StringBuilder svg) {
        for (int film = 0; film < films.count(); film++) {
            String colour = separation.plan().pulls().get(film).ink().swatch().hex();
            path(
                    films.moved(film, offsets.get(film)),
                    left,
                    top,
                    String.format(
                            Locale.ROOT,
                            "fill=\"%1$s\" fill-opacity=\".4\" stroke=\"%1$s\" stroke-width=\".02\"",
                            colour),
                    svg);
        }
    }

    private static void spots(List<Spot> spots, double left, double top, StringBuilder svg) {
        svg.append(spots.stream()
                .map(spot -> point(new Coordinate(spot.x(), spot.y()), left, top))
                .collect(Collectors.joining(
                        "L", "<path fill=\"none\" stroke=\"#000000\" stroke-width=\".025\" d=\"M", "Z\"/>\n")));
        for (Spot spot : spots) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<circle cx=\"%.3f\" cy=\"%.3f\" r=\".06\"/>\n",
                    spot.x() * Grid.STEP_MM + left,
                    spot.y() * Grid.STEP_MM + top));
        }
    }

    private static void path(Geometry geometry, double left, double top, String style, StringBuilder svg) {
        svg.append("<path fill-rule=\"evenodd\" ").append(style).append(" d=\"");
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            Polygon polygon = (Polygon) geometry.getGeometryN(i);
            ring(polygon.getExteriorRing(), left, top, svg);
            for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                ring(polygon.getInteriorRingN(hole), left, top, svg);
            }
        }
        svg.append("\"/>\n");
    }

    private static void ring(Geometry ring, double left, double top, StringBuilder svg) {
        Coordinate[] corners = ring.getCoordinates();
        for (int i = 0; i < corners.length - 1; i++) {
            svg.append(i == 0 ? 'M' : 'L').append(point(corners[i], left, top));
        }
        svg.append('Z');
    }

    private static String point(Coordinate corner, double left, double top) {
        return String.format(Locale.ROOT, "%.3f %.3f", corner.x * Grid.STEP_MM + left, corner.y * Grid.STEP_MM + top);
    }
}
