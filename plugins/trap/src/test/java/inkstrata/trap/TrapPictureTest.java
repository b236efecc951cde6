package inkstrata.trap;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.separation.FlatDrawing.disc;
import static org.assertj.core.api.Assertions.assertThat;

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
import org.junit.jupiter.api.Test;

/**
 * The picture in the docs, drawn from real output: three drawings printed off register by less than a trap of 0.4 mm, without
 * and with it, and what the trap adds.
 *
 * <p>{@code -Dpictures=rewrite} draws it anew.
 */
class TrapPictureTest {
    private static final Path PICTURE = Path.of("docs", "trap.svg");
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");
    private static final double WIDTH = 0.4;
    private static final double OFF = 0.19;
    private static final double SIDE = 8;
    private static final double CELL = 9;

    @Test
    void showsWhatComesOut() throws IOException {
        String picture = picture();
        if (System.getProperty("pictures", "").equals("rewrite")) {
            Files.writeString(PICTURE, picture);
        }
        assertThat(Files.readString(PICTURE)).isEqualTo(picture);
    }

    private static String picture() {
        List<Separation> rows = List.of(
                new FlatDrawing(SIDE, SIDE)
                        .fill(SAND, rectangle(1, 1, 3, 3))
                        .fill(RUST, rectangle(1, 4, 3, 3))
                        .fill(NIGHT, rectangle(4, 1, 3, 6))
                        .knockedOut(SAND, RUST, NIGHT),
                new FlatDrawing(SIDE, SIDE)
                        .fill(SAND, rectangle(1, 1, 6, 6))
                        .fill(NIGHT, disc(4, 4, 2.4))
                        .fill(SAND, disc(4, 4, 1.2))
                        .knockedOut(SAND, RUST, NIGHT),
                new FlatDrawing(SIDE, SIDE)
                        .fill(SAND, rectangle(1, 1, 6, 6))
                        .fill(RUST, rectangle(2, 3.75, 4, 0.5))
                        .knockedOut(SAND, RUST, NIGHT));
        StringBuilder svg = new StringBuilder();
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.0f\" height=\"%1$.0f\" viewBox=\"0 0 %2$.1f %2$.1f\">\n",
                3 * CELL * 30,
                3 * CELL));
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        for (int row = 0; row < rows.size(); row++) {
            Separation drawn = rows.get(row);
            Separation trapped = new Trap().shape(drawn, TrapJob.with(WIDTH, "round"));
            printed(drawn, 0, row, OFF, svg);
            printed(trapped, 1, row, OFF, svg);
            printed(drawn, 2, row, 0, svg);
            for (int pull = 0; pull < 2; pull++) {
                Region rim = trapped.printed().get(pull).minus(drawn.printed().get(pull));
                path(rim, 2 * CELL, row * CELL, pull == 0 ? "#3fa7d6" : "#f2f2f2", svg);
            }
        }
        return svg.append("</svg>\n").toString();
    }

    /** The second pull is off to the upper left, the third to the lower right. */
    private static void printed(Separation separation, int column, int row, double off, StringBuilder svg) {
        for (int pull = 0; pull < separation.printed().size(); pull++) {
            double shift = pull == 0 ? 0 : pull == 1 ? -off : off;
            Ink ink = separation.plan().pulls().get(pull).ink();
            path(
                    separation.printed().get(pull),
                    column * CELL + shift,
                    row * CELL + shift,
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
}
