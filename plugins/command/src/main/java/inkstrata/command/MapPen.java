package inkstrata.command;

import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.separation.Finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Draws the parts of a map into SVG, in millimetres. A severity is told by the shape of its number and by its line, not by colour alone. */
final class MapPen {
    /** Width of a letter of common sans-serif faces, of the text's size, on the average. */
    static final double LETTER = 0.53;

    private final StringBuilder svg = new StringBuilder();
    private final double text;

    /** @param text size of letters, in millimetres */
    MapPen(double text) {
        this.text = text;
    }

    static String colour(Severity severity) {
        return switch (severity) {
            case ERROR -> "#b3122b";
            case WARNING -> "#9a5b00";
            case NOTE -> "#2f5f8f";
        };
    }

    static String word(Severity severity) {
        return severity.name().toLowerCase(Locale.ROOT);
    }

    void add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    void words(double x, double y, double size, String style, String words) {
        add(
                "<text x=\"%.3f\" y=\"%.3f\" font-size=\"%.3f\"%s>%s</text>",
                x, y, size, style.isEmpty() ? "" : " " + style, escaped(words));
    }

    /** A square for errors, a triangle for warnings, an open circle for notes, with a number in it. */
    void badge(double x, double y, double side, Severity severity, int number) {
        String colour = colour(severity);
        double half = side / 2;
        String face = severity == Severity.NOTE
                ? String.format(Locale.ROOT, "fill=\"#ffffff\" stroke=\"%s\" stroke-width=\"%.3f\"", colour, side / 12)
                : String.format(Locale.ROOT, "fill=\"%s\" stroke=\"#ffffff\" stroke-width=\"%.3f\"", colour, side / 14);
        switch (severity) {
            case ERROR ->
                add(
                        "<rect x=\"%.3f\" y=\"%.3f\" width=\"%.3f\" height=\"%.3f\" rx=\"%.3f\" %s/>",
                        x - half, y - half, side, side, side / 8, face);
            case WARNING ->
                add(
                        "<path d=\"M%.3f %.3fL%.3f %.3fL%.3f %.3fZ\" stroke-linejoin=\"round\" %s/>",
                        x, y - 0.78 * side, x + 0.72 * side, y + 0.52 * side, x - 0.72 * side, y + 0.52 * side, face);
            case NOTE -> add("<circle cx=\"%.3f\" cy=\"%.3f\" r=\"%.3f\" %s/>", x, y, half, face);
        }
        if (number > 0) {
            double size = 0.62 * side;
            words(
                    x,
                    y + 0.36 * size + (severity == Severity.WARNING ? 0.1 * side : 0),
                    size,
                    "text-anchor=\"middle\" font-weight=\"bold\" fill=\""
                            + (severity == Severity.NOTE ? colour : "#ffffff") + "\"",
                    String.valueOf(number));
        }
    }

    /** What is wrong, filled; its edge is drawn whole for errors, in dashes for warnings, in dots for notes. */
    void area(Region area, Severity severity) {
        svg.append("<path fill-rule=\"evenodd\" fill=\"")
                .append(colour(severity))
                .append("\" fill-opacity=\"0.45\" ")
                .append(line(severity, text / 8))
                .append(" d=\"");
        outline(area);
        svg.append("\"/>\n");
    }

    /** Its colour, width and dashes. */
    String line(Severity severity, double width) {
        String dashes = switch (severity) {
            case ERROR -> "";
            case WARNING -> String.format(Locale.ROOT, " stroke-dasharray=\"%.3f %.3f\"", 5 * width, 2.5 * width);
            case NOTE -> String.format(Locale.ROOT, " stroke-dasharray=\"%.3f %.3f\"", 1.2 * width, 1.8 * width);
        };
        return String.format(Locale.ROOT, "stroke=\"%s\" stroke-width=\"%.3f\"%s", colour(severity), width, dashes);
    }

    void filled(Region region, String colour) {
        svg.append("<path fill-rule=\"evenodd\" fill=\"").append(colour).append("\" d=\"");
        outline(region);
        svg.append("\"/>\n");
    }

    private void outline(Region region) {
        for (Region.Polygon polygon : region.polygons()) {
            ring(polygon.shell());
            polygon.holes().forEach(this::ring);
        }
    }

    private void ring(Ring ring) {
        for (int i = 0; i < ring.size(); i++) {
            svg.append(String.format(
                    Locale.ROOT,
                    "%s%.2f %.2f",
                    i == 0 ? "M" : "L",
                    Grid.millimetres(ring.x(i)),
                    Grid.millimetres(ring.y(i))));
        }
        svg.append('Z');
    }

    /** Words in lines of so many letters at most; a longer word has a line of its own. */
    static List<String> lines(String words, int letters) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > letters) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** For XML 1.0; what it does not allow is replaced. */
    static String escaped(String words) {
        return words.replaceAll("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]", "\uFFFD")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;");
    }

    @Override
    public String toString() {
        return svg.toString();
    }
}
