package inkstrata.check;

import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A film as some other program might write it: the same picture and marks in other words.
 *
 * @param picture what it prints
 * @param marks centres of its register marks
 * @param paint of the picture
 * @param transform of the picture, in SVG's words, in millimetres
 * @param more elements within the picture, in millimetres
 * @param pageTransform of all that is on the page; only where one unit is one millimetre
 */
record WrittenFilm(
        Region picture, List<Place> marks, String paint, String transform, String more, String pageTransform) {
    /** The page reaches so far around the picture, in millimetres. */
    static final double MARGIN = 20;

    WrittenFilm(Region picture, List<Place> marks) {
        this(picture, marks, "fill=\"#000000\"", "", "", "");
    }

    WrittenFilm withPicture(Region other) {
        return new WrittenFilm(other, marks, paint, transform, more, pageTransform);
    }

    WrittenFilm withMarks(List<Place> others) {
        return new WrittenFilm(picture, others, paint, transform, more, pageTransform);
    }

    WrittenFilm withPaint(String other) {
        return new WrittenFilm(picture, marks, other, transform, more, pageTransform);
    }

    WrittenFilm withTransform(String other) {
        return new WrittenFilm(picture, marks, paint, other, more, pageTransform);
    }

    WrittenFilm withMore(String other) {
        return new WrittenFilm(picture, marks, paint, transform, other, pageTransform);
    }

    WrittenFilm withPageTransform(String other) {
        return new WrittenFilm(picture, marks, paint, transform, more, other);
    }

    /** Four marks around a picture of that side, in millimetres. */
    static List<Place> marksAround(double side) {
        return List.of(
                new Place(-8, -8), new Place(side + 8, -8), new Place(-8, side + 8), new Place(side + 8, side + 8));
    }

    /**
     * How different programs write.
     *
     * <p>One unit is one millimetre, one path; hundreds of units to the inch, groups in groups, a polygon for each shell; points, style
     * sheet, white paper, holes painted white; centimetres, a symbol that is used; a black page behind a clip; a fill with a hairline of 2 µm around it, in
     * style attributes.
     */
    enum Hand {
        PLAIN,
        GROUPS,
        PAPER,
        SYMBOL,
        CLIP,
        STROKE
    }

    String svg(Hand hand, double side) {
        double page = side + 2 * MARGIN;
        return switch (hand) {
            case PLAIN -> """
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$.6fmm" height="%1$.6fmm" viewBox="%2$.6f %2$.6f %1$.6f %1$.6f">
                <clipPath id="nothing"><path d="M-9 -9h.5v.5z"/></clipPath>
                <g transform="%5$s">%3$s%4$s</g></svg>
                """.formatted(page, -MARGIN, group(path(picture, 1)), marks(1), pageTransform);
            case GROUPS -> {
                double unit = 400 / 25.4;
                yield """
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$.8fin" height="%1$.8fin" viewBox="%2$.6f %2$.6f %3$.6f %3$.6f">
                <g transform="translate(100 50)"><g transform="scale(%4$.10f)"><g transform="translate(%5$.8f %6$.8f)">
                %7$s</g></g></g>
                <g>%8$s</g></svg>
                """.formatted(
                                page / 25.4,
                                -MARGIN * unit,
                                page * unit,
                                unit,
                                -100 / unit,
                                -50 / unit,
                                group(polygons()),
                                marks(unit));
            }
            case PAPER -> {
                double unit = 72 / 25.4;
                yield """
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$.8fpt" height="%1$.8fpt" viewBox="%2$.6f %2$.6f %1$.6f %1$.6f">
                <style>.paper {fill: white} .hole {fill: #fff; stroke: none}</style>
                <rect class="paper" x="%2$.6f" y="%2$.6f" width="%1$.6f" height="%1$.6f"/>
                <g transform="matrix(%3$.10f 0 0 %3$.10f 0 0)">%4$s</g>
                %5$s</svg>
                """.formatted(page * unit, -MARGIN * unit, unit, group(painted()), marks(unit));
            }
            case SYMBOL -> """
                <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="%1$.8fcm" height="%1$.8fcm" viewBox="%2$.6f %2$.6f %3$.6f %3$.6f">
                <defs><g id="picture">%4$s</g></defs>
                <use xlink:href="#picture" transform="scale(10)"/>
                %5$s</svg>
                """.formatted(page / 10, -MARGIN * 10, page * 10, group(path(picture, 1)), marks(10));
            case CLIP ->
                """
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$.6fmm" height="%1$.6fmm" viewBox="%2$.6f %2$.6f %1$.6f %1$.6f">
                <defs><clipPath id="picture">%3$s</clipPath></defs>
                %4$s%5$s</svg>
                """.formatted(
                                page,
                                -MARGIN,
                                path(picture, 1).replace("fill-rule", "clip-rule"),
                                group(
                                        "<rect clip-path=\"url(#picture)\" x=\"%1$.6f\" y=\"%1$.6f\" width=\"%2$.6f\" height=\"%2$.6f\"/>"
                                                .formatted(-MARGIN, page)),
                                marks(1));
            case STROKE -> """
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$.6fmm" height="%1$.6fmm" viewBox="%2$.6f %2$.6f %1$.6f %1$.6f">
                <g style="stroke:#000;stroke-width:.002;stroke-linejoin:round;stroke-miterlimit:4">%3$s</g>%4$s</svg>
                """.formatted(page, -MARGIN, group(path(picture, 1)), marks(1));
        };
    }

    private String group(String content) {
        return "<g " + paint + (transform.isEmpty() ? "" : " transform=\"" + transform + "\"") + ">" + content + "</g>"
                + more + "\n";
    }

    private static String path(Region region, double unit) {
        if (region.isEmpty()) {
            return "";
        }
        StringBuilder path = new StringBuilder("<path fill-rule=\"evenodd\" d=\"");
        for (Ring ring : NearOutlines.rings(region)) {
            path.append(number('M', ring, unit)).append("z ");
        }
        return path.append("\"/>\n").toString();
    }

    private String polygons() {
        StringBuilder polygons = new StringBuilder();
        for (Region.Polygon polygon : picture.polygons()) {
            polygons.append(
                    polygon.holes().isEmpty()
                            ? "<polygon points=\"" + number(' ', polygon.shell(), 1) + "\"/>\n"
                            : path(Region.of(polygon), 1));
        }
        return polygons.toString();
    }

    /** Large shells first, each with its holes painted over it: an island in a hole comes after both. */
    private String painted() {
        List<Region.Polygon> largestFirst = new ArrayList<>(picture.polygons());
        largestFirst.sort(Comparator.comparingDouble(polygon -> -frameArea(polygon)));
        StringBuilder painted = new StringBuilder();
        for (Region.Polygon polygon : largestFirst) {
            painted.append("<polygon points=\"")
                    .append(number(' ', polygon.shell(), 1))
                    .append("\"/>\n");
            for (Ring hole : polygon.holes()) {
                painted.append("<polygon class=\"hole\" points=\"")
                        .append(number(' ', hole, 1))
                        .append("\"/>\n");
            }
        }
        return painted.toString();
    }

    private static double frameArea(Region.Polygon polygon) {
        var frame = Region.of(polygon).bounds().orElseThrow();
        return frame.width() * frame.height();
    }

    private static String number(char first, Ring ring, double unit) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < ring.size(); i++) {
            points.append(String.format(
                    Locale.ROOT,
                    "%s%.6f,%.6f",
                    i == 0 ? first : ' ',
                    Grid.millimetres(ring.x(i)) * unit,
                    Grid.millimetres(ring.y(i)) * unit));
        }
        return points.toString();
    }

    /** Strokes. */
    private String marks(double unit) {
        StringBuilder all = new StringBuilder();
        for (Place mark : marks) {
            all.append(String.format(
                    Locale.ROOT,
                    "<path fill=\"none\" stroke=\"black\" stroke-width=\"%4$.4f\" d=\"M%1$.6f %2$.6f h%3$.6f M%5$.6f %6$.6f v%3$.6f\"/>\n",
                    (mark.x() - 4) * unit,
                    mark.y() * unit,
                    8 * unit,
                    0.2 * unit,
                    mark.x() * unit,
                    (mark.y() - 4) * unit));
        }
        return all.toString();
    }
}
