package inkstrata.trap;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.plan.PlanningExample.key;
import static inkstrata.separation.FlatDrawing.disc;
import static inkstrata.separation.FlatDrawing.polygon;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.colour.Rgb;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Grid;
import inkstrata.plan.Ink;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pictures in the docs, one for each rule, drawn from real output: printed off register by less than a trap of 0.4 mm, without
 * it and with it, and what the trap adds.
 *
 * <p>{@code -Dpictures=rewrite} draws them anew.
 */
class TrapPictureTest {
    private static final Path FOLDER = Path.of("docs", "rules");
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink CLAY = ink("clay", "#8d6a4f");
    private static final Ink NIGHT = ink("night", "#1d2440");
    private static final Ink KEY = key("night", "#1d2440");
    private static final Ink LEMON = clear("lemon", "#f6cf3a");
    private static final Ink WATER = clear("water", "#3f9fc4");

    /** Colours of the rims of the first, the second and the third pull. */
    private static final List<String> RIMS = List.of("#00a3e0", "#f4f4f4", "#7ac943", "#00a3e0");

    private static final double OFF = 0.14;
    private static final double SIDE = 8;
    private static final double CELL = 9;
    private static final int PIXELS_BY_MM = 14;

    /**
     * A rule and a drawing that shows it.
     *
     * @param name of the picture
     * @param options of the trap besides its width
     */
    private record Rule(String name, Separation drawn, Map<String, Setting> options) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Stream<Rule> rules() {
        return Stream.of(
                rule("lighter-under-darker", sideBySide(SAND, NIGHT)),
                rule("lighter-over-darker", sideBySide(NIGHT, SAND)),
                new Rule("alike", sideBySide(RUST, CLAY), Map.of("alike", new Setting("20", 8))),
                rule(
                        "key-line",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 1, 3, 6))
                                .fill(RUST, rectangle(4, 1, 3, 6))
                                .fill(NIGHT, polygon(3.8, 1, 4.2, 1, 4.7, 7, 3.3, 7))
                                .knockedOut(SAND, RUST, KEY)),
                rule(
                        "hairline-of-sheet",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(CLAY, rectangle(1, 1, 2.85, 6))
                                .fill(NIGHT, rectangle(4.15, 1, 2.85, 6))
                                .knockedOut(CLAY, NIGHT)),
                rule(
                        "white-areas",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 1, 3, 6))
                                .fill(NIGHT, rectangle(4, 1, 3, 6))
                                .fill(Rgb.WHITE, disc(4, 4, 1.2))
                                .knockedOut(SAND, NIGHT)),
                rule(
                        "three-at-a-point",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 1, 3, 3))
                                .fill(RUST, rectangle(1, 4, 3, 3))
                                .fill(NIGHT, rectangle(4, 1, 3, 6))
                                .knockedOut(SAND, RUST, NIGHT)),
                rule(
                        "four-at-a-point",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 1, 3, 3))
                                .fill(RUST, rectangle(4, 1, 3, 3))
                                .fill(CLAY, rectangle(1, 4, 3, 3))
                                .fill(NIGHT, rectangle(4, 4, 3, 3))
                                .knockedOut(SAND, RUST, CLAY, NIGHT)),
                rule(
                        "islands",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 1, 6, 6))
                                .fill(NIGHT, disc(4, 4, 2.4))
                                .fill(SAND, disc(4, 4, 1.2))
                                .knockedOut(SAND, NIGHT)),
                rule(
                        "necks",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 1, 6, 6))
                                .fill(NIGHT, disc(2.6, 4, 1.4))
                                .fill(NIGHT, disc(5.4, 4, 1.4))
                                .fill(NIGHT, rectangle(3, 3.88, 2, 0.24))
                                .knockedOut(SAND, NIGHT)),
                rule(
                        "end-at-the-sheet",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 2, 3, 4))
                                .fill(NIGHT, polygon(4, 1, 7, 1, 7, 7, 4, 7))
                                .knockedOut(SAND, NIGHT)),
                rule(
                        "two-traps-that-meet",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(NIGHT, rectangle(1, 1, 6, 6))
                                .fill(SAND, rectangle(1.6, 1.6, 2.1, 4.8))
                                .fill(RUST, rectangle(4.3, 1.6, 2.1, 4.8))
                                .knockedOut(SAND, RUST, NIGHT)),
                rule(
                        "thinner-than-the-trap",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 1, 3, 6))
                                .fill(NIGHT, rectangle(4, 1, 3, 6))
                                .fill(RUST, rectangle(4, 1, 0.25, 6))
                                .knockedOut(SAND, RUST, NIGHT)),
                rule(
                        "thin-line-under-a-later-light-ink",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 1, 6, 6))
                                .fill(NIGHT, polygon(3.9, 1, 4.1, 1, 5.2, 7, 2.8, 7))
                                .knockedOut(NIGHT, SAND)),
                rule(
                        "overprint-needs-none",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, rectangle(1, 1, 6, 6))
                                .fill(NIGHT, disc(4, 4, 2))
                                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), SAND, NIGHT)),
                rule(
                        "run-on-that-ends",
                        new FlatDrawing(SIDE, SIDE)
                                .fill(SAND, polygon(1, 1, 7, 1, 7, 3.8, 1, 4.6))
                                .fill(RUST, polygon(1, 4.6, 7, 3.8, 7, 7, 1, 7))
                                .fill(NIGHT, rectangle(1, 4, 6, 3))
                                .separated(
                                        (ink, row) -> ink.equals(SAND)
                                                ? row.inks().contains(Optional.of(SAND))
                                                : row.top().equals(Optional.of(ink)),
                                        SAND,
                                        RUST,
                                        NIGHT)),
                rule("clear-inks", sideBySide(LEMON, WATER)));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void showsWhatComesOut(Rule rule) throws IOException {
        Path file = FOLDER.resolve(rule.name() + ".svg");
        String picture = picture(rule);
        if (System.getProperty("pictures", "").equals("rewrite")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, picture);
        }
        assertThat(Files.readString(file)).isEqualTo(picture);
        assertThat(Files.readString(Path.of("docs", "trap.md"))).contains("(rules/" + rule.name() + ".svg)");
    }

    private static String picture(Rule rule) {
        Separation trapped = new Trap().shape(rule.drawn(), TrapJob.using(rule.options()));
        StringBuilder svg = new StringBuilder();
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\" viewBox=\"0 0 %.1f %.1f\">\n",
                3 * CELL * PIXELS_BY_MM,
                SIDE * PIXELS_BY_MM,
                3 * CELL,
                SIDE));
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        printed(rule.drawn(), 0, OFF, svg);
        printed(trapped, 1, OFF, svg);
        printed(rule.drawn(), 2, 0, svg);
        for (int pull = 0; pull < trapped.printed().size(); pull++) {
            Region rim =
                    trapped.printed().get(pull).minus(rule.drawn().printed().get(pull));
            path(rim, 2 * CELL, 0, RIMS.get(pull), svg);
        }
        return svg.append("</svg>\n").toString();
    }

    /** Each pull is off to the upper left of the one before it, the last to the lower right. */
    private static void printed(Separation separation, int column, double off, StringBuilder svg) {
        int last = separation.printed().size() - 1;
        for (int pull = 0; pull <= last; pull++) {
            double shift = pull == last ? off : last == 1 || pull > 0 ? -off : 0;
            Ink ink = separation.plan().pulls().get(pull).ink();
            path(
                    separation.printed().get(pull),
                    column * CELL + shift,
                    shift,
                    ink.swatch().hex(),
                    svg);
        }
    }

    private static void path(Region region, double dx, double dy, String colour, StringBuilder svg) {
        if (region.isEmpty()) {
            return;
        }
        svg.append("<path fill=\"").append(colour).append("\" fill-rule=\"evenodd\" d=\"");
        for (Region.Polygon polygon : region.polygons()) {
            ring(polygon.shell(), dx, dy, svg);
            polygon.holes().forEach(hole -> ring(hole, dx, dy, svg));
        }
        svg.append("\"/>\n");
    }

    private static void ring(Ring ring, double dx, double dy, StringBuilder svg) {
        for (int i = 0; i < ring.size(); i++) {
            svg.append(String.format(
                    Locale.ROOT,
                    "%s%.3f %.3f",
                    i == 0 ? "M" : "L",
                    Grid.millimetres(ring.x(i)) + dx,
                    Grid.millimetres(ring.y(i)) + dy));
        }
        svg.append('Z');
    }

    private static Rule rule(String name, Separation drawn) {
        return new Rule(name, drawn, Map.of());
    }

    private static Separation sideBySide(Ink first, Ink second) {
        return new FlatDrawing(SIDE, SIDE)
                .fill(first, rectangle(1, 1, 3, 6))
                .fill(second, rectangle(4, 1, 3, 6))
                .knockedOut(first, second);
    }

    private static Ink clear(String name, String swatch) {
        return new Ink(name, Rgb.parse(swatch), 0.05, Optional.empty(), false);
    }
}
