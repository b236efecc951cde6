package inkstrata.positive.page;

import inkstrata.artwork.Area;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A page to look at on a screen or to pin up: areas in colours on white.
 *
 * @param title in words
 * @param frame in millimetres
 * @param painted lowest first
 */
public record ColourSheet(String title, Frame frame, List<Painted> painted) {
    /** Some 200 to the inch: fine enough for a page that is pinned up. */
    private static final double PIXELS_PER_MM = 8;

    public ColourSheet {
        painted = List.copyOf(painted);
    }

    /**
     * One area in one colour.
     *
     * @param words that it shows; may be empty
     * @param area in millimetres
     * @param colour opaque
     */
    public record Painted(String words, Area area, Rgb colour) {}

    /** As SVG 1.1; closes the stream. */
    public void writeSvg(OutputStream stream) throws IOException {
        try (Writer out = new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), 1 << 16)) {
            String width = MmText.of(frame.width());
            String height = MmText.of(frame.height());
            out.append("""
                    <?xml version="1.0" encoding="UTF-8"?>
                    <svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="%smm" height="%smm" viewBox="%s %s %s %s">
                    <title>%s</title>
                    """.formatted(
                    width, height, MmText.of(frame.x()), MmText.of(frame.y()), width, height, XmlText.escaped(title)));
            for (Painted one : painted) {
                String rule = one.area().rule() == FillRule.EVENODD ? " fill-rule=\"evenodd\"" : "";
                String words = one.words().isEmpty() ? "" : "<title>" + XmlText.escaped(one.words()) + "</title>";
                out.append("<path fill=\"" + one.colour().hex() + "\"" + rule + " d=\"");
                SvgPath.write(one.area().outline(), out);
                out.append(words.isEmpty() ? "\"/>\n" : "\">" + words + "</path>\n");
            }
            out.append("</svg>\n");
        }
    }

    /** As PNG, in colours, with its resolution; closes the stream. */
    public void writePng(OutputStream stream) throws IOException {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(frame.width() * PIXELS_PER_MM),
                (int) Math.ceil(frame.height() * PIXELS_PER_MM),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, image.getWidth(), image.getHeight());
        pen.scale(PIXELS_PER_MM, PIXELS_PER_MM);
        pen.translate(-frame.x(), -frame.y());
        for (Painted one : painted) {
            pen.setColor(new Color(one.colour().packed()));
            pen.fill(path(one.area()));
        }
        pen.dispose();
        PixelFile.write(image, PIXELS_PER_MM, PixelFile.Format.PNG, stream);
    }

    private static Path2D path(Area area) {
        Path2D path = new Path2D.Double(area.rule() == FillRule.EVENODD ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
        area.outline().sendTo(new CurveSink() {
            @Override
            public void moveTo(double x, double y) {
                path.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                path.lineTo(x, y);
            }

            @Override
            public void quadTo(double x1, double y1, double x, double y) {
                path.quadTo(x1, y1, x, y);
            }

            @Override
            public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
                path.curveTo(x1, y1, x2, y2, x, y);
            }
        });
        return path;
    }
}
