package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * The picture in the docs, drawn from real output.
 *
 * <p>{@code -Dpictures=rewrite} draws it anew.
 */
class SeamPictureTest {
    private static final Path PICTURE = Path.of("docs", "seams.svg");
    private static final Rgb RUST = Rgb.of(0xb4512d);
    private static final Rgb SAND = Rgb.of(0xd9a441);
    private static final Rgb NIGHT = Rgb.of(0x3c5a99);
    private static final Rgb MINT = Rgb.of(0xcfe8d5);
    private static final double SIDE = 0.4;
    private static final double CELL = 0.44;

    @Test
    void showsWhatComesOut() throws IOException {
        String picture = picture();
        if (System.getProperty("pictures", "").equals("rewrite")) {
            Files.writeString(PICTURE, picture);
        }
        assertThat(Files.readString(PICTURE)).isEqualTo(picture);
    }

    private static String picture() {
        List<List<FlatShape>> drawings = List.of(
                List.of(polygon(RUST, -1, -1, 0.18, -1, 0.18, 2, -1, 2), polygon(SAND, 0.21, -1, 2, -1, 2, 2, 0.21, 2)),
                List.of(
                        polygon(RUST, -1, -1, 2, -1, 2, 0.18, -1, 0.18),
                        polygon(SAND, -1, 0.21, 0.19, 0.21, 0.19, 2, -1, 2),
                        polygon(NIGHT, 0.215, 0.21, 2, 0.21, 2, 2, 0.215, 2)),
                List.of(
                        polygon(RUST, -1, -1, 0.18, -1, 0.18, 2, -1, 2),
                        polygon(SAND, 0.2, -0.2, 2, -0.2, 2, 0.6, 0.248, 0.6)),
                List.of(
                        polygon(MINT, -1, -1, 2, -1, 2, 2, -1, 2),
                        polygon(RUST, -1, -1, 0.18, -1, 0.18, 2, -1, 2),
                        polygon(SAND, 0.21, -1, 2, -1, 2, 2, 0.21, 2)));
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\" viewBox=\"0 0 %.2f %.2f\">\n",
                drawings.size() * CELL * 500,
                2 * CELL * 500,
                drawings.size() * CELL,
                2 * CELL));
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        for (int i = 0; i < drawings.size(); i++) {
            // So long that a strip across the picture is longer than ten times its width.
            Artwork artwork = new Artwork("picture", new Frame(-0.5, -0.5, 1.4, 1.4), drawings.get(i), List.of());
            for (int row = 0; row < 2; row++) {
                MapSettings settings = MapSettings.DEFAULT.withThreads(1).withSeam(row * 0.05);
                cell(PlanarMapper.map(artwork, settings), i * CELL + 0.02, row * CELL + 0.02, svg);
            }
        }
        return svg.append("</svg>\n").toString();
    }

    private static void cell(PlanarMap map, double x, double y, StringBuilder svg) {
        svg.append(String.format(
                Locale.ROOT,
                "<svg x=\"%.2f\" y=\"%.2f\" width=\"%3$.1f\" height=\"%3$.1f\" viewBox=\"0 0 %3$.1f %3$.1f\">\n",
                x,
                y,
                SIDE));
        for (int stack = 0; stack < map.stacks().size(); stack++) {
            PaintStack paints = map.stacks().get(stack);
            String fill = paints.isBare()
                    ? "#ffffff"
                    : paints.paints().get(0).colour().hex();
            svg.append("<path fill=\"").append(fill).append("\" d=\"");
            for (Region.Polygon polygon : map.dissolve(StackSet.of(stack)).polygons()) {
                ring(polygon.shell(), svg);
                polygon.holes().forEach(hole -> ring(hole, svg));
            }
            svg.append("\"/>\n");
        }
        svg.append(
                "<rect width=\"100%\" height=\"100%\" fill=\"none\" stroke=\"#888888\" stroke-width=\"0.003\"/></svg>\n");
    }

    private static void ring(Ring ring, StringBuilder svg) {
        for (int i = 0; i < ring.size(); i++) {
            svg.append(String.format(
                    Locale.ROOT,
                    "%s%.5f %.5f",
                    i == 0 ? "M" : "L",
                    Grid.millimetres(ring.x(i)),
                    Grid.millimetres(ring.y(i))));
        }
        svg.append("Z");
    }

    private static FlatShape polygon(Rgb colour, double... p) {
        Outline.Builder outline = Outline.builder();
        outline.moveTo(p[0], p[1]);
        for (int i = 2; i < p.length; i += 2) {
            outline.lineTo(p[i], p[i + 1]);
        }
        return FlatShape.opaque(new Area(outline.build(), FillRule.NONZERO), colour, Source.UNKNOWN);
    }
}
