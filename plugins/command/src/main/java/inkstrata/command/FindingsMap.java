package inkstrata.command;

import inkstrata.colour.Rgb;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.plan.Pull;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Findings drawn onto the sheet, at its true size: what is to be printed, pale, a numbered ring at each place, and beside the sheet what was found
 * there and what to do.
 */
record FindingsMap(Separation planned, List<Finding> findings) {
    /** Of the sheet's longer side. */
    private static final double RING = 1.0 / 70;

    private static final double TEXT = 1.0 / 85;

    /** Letters of a line of the list. */
    private static final int LINE = 62;

    /** Width of a letter, of the text's size. */
    private static final double LETTER = 0.56;

    /** How much of the artwork's colour is left, in per cent. */
    private static final int PALE = 35;

    /** By which a map of ours is known. */
    private static final String MARK =
            "<!-- Map of what Inkstrata found when it checked films; it may be replaced. -->";

    FindingsMap {
        findings = List.copyOf(findings);
    }

    /** Whether a file is such a map. */
    static boolean isOne(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(MARK.length()), StandardCharsets.UTF_8).equals(MARK);
        }
    }

    String svg() {
        Size sheet = planned.table().sheet().size();
        double side = Math.max(sheet.width(), sheet.height());
        double text = side * TEXT;
        double left = sheet.width() + 2 * text;
        StringBuilder rings = new StringBuilder();
        StringBuilder list = new StringBuilder();
        double y = 2 * text;
        List<Spot> spots = spots(2 * side * RING);
        for (int number = 1; number <= spots.size(); number++) {
            Spot spot = spots.get(number - 1);
            ring(number, spot, side * RING, text, rings);
            text(left + 2 * text, y, true, colour(spot.worst()), String.valueOf(number), list);
            for (Finding finding : spot.findings()) {
                for (String line : wrapped(finding)) {
                    text(left + 2.6 * text, y, false, "#000000", line, list);
                    y += 1.3 * text;
                }
                y += 0.4 * text;
            }
            y += 0.5 * text;
        }
        double width = left + (3 + LETTER * LINE) * text;
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                MARK + "\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.2fmm\" height=\"%2$.2fmm\""
                        + " viewBox=\"0 0 %1$.2f %2$.2f\" font-family=\"sans-serif\" font-size=\"%3$.2f\">\n",
                width,
                Math.max(sheet.height(), y),
                text));
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        svg.append(String.format(
                Locale.ROOT,
                "<rect width=\"%.2f\" height=\"%.2f\" fill=\"%s\" stroke=\"#888888\" stroke-width=\"%.2f\"/>\n",
                sheet.width(),
                sheet.height(),
                pale(planned.table().sheet().colour()).hex(),
                text / 12));
        artwork(svg);
        return svg.append(rings).append(list).append("</svg>\n").toString();
    }

    /**
     * Findings that lie close together, the worst first.
     *
     * @param place of the worst of them
     */
    private record Spot(Place place, List<Finding> findings) {
        Severity worst() {
            return findings.get(0).severity();
        }
    }

    /** The worst first. */
    private List<Spot> spots(double near) {
        List<Spot> spots = new ArrayList<>();
        List<Finding> worstFirst = findings.stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
        for (Finding finding : worstFirst) {
            int at = 0;
            while (at < spots.size() && apart(spots.get(at).place(), finding.place()) > near) {
                at++;
            }
            if (at == spots.size()) {
                spots.add(new Spot(finding.place(), List.of(finding)));
            } else {
                List<Finding> here = new ArrayList<>(spots.get(at).findings());
                here.add(finding);
                spots.set(at, new Spot(spots.get(at).place(), List.copyOf(here)));
            }
        }
        return spots;
    }

    private static void ring(int number, Spot spot, double radius, double text, StringBuilder svg) {
        for (String stroke : new String[] {"#ffffff", colour(spot.worst())}) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<circle cx=\"%.3f\" cy=\"%.3f\" r=\"%.3f\" fill=\"none\" stroke=\"%s\" stroke-width=\"%.2f\"/>\n",
                    spot.place().x(),
                    spot.place().y(),
                    radius,
                    stroke,
                    stroke.equals("#ffffff") ? text / 2.5 : text / 5));
        }
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.3f\" y=\"%.3f\" font-weight=\"bold\" font-size=\"%.2f\" fill=\"%s\""
                        + " stroke=\"#ffffff\" stroke-width=\"%.2f\" paint-order=\"stroke\">%d</text>\n",
                spot.place().x() + 1.2 * radius,
                spot.place().y() - 0.6 * radius,
                1.3 * text,
                colour(spot.worst()),
                text / 3,
                number));
    }

    private static void text(double x, double y, boolean isNumber, String colour, String words, StringBuilder svg) {
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.2f\" y=\"%.2f\" fill=\"%s\"%s>%s</text>\n",
                x,
                y,
                colour,
                isNumber ? " font-weight=\"bold\" text-anchor=\"end\"" : "",
                escaped(words)));
    }

    private void artwork(StringBuilder svg) {
        List<Pull> pulls = planned.plan().pulls();
        for (int pull : planned.table().sheet().farthestFirst(pulls)) {
            svg.append("<path fill-rule=\"evenodd\" fill=\"")
                    .append(pale(pulls.get(pull).ink().swatch()).hex())
                    .append("\" d=\"");
            for (Region.Polygon polygon : planned.printed().get(pull).polygons()) {
                ring(polygon.shell(), svg);
                polygon.holes().forEach(hole -> ring(hole, svg));
            }
            svg.append("\"/>\n");
        }
    }

    private static void ring(Ring ring, StringBuilder svg) {
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

    private static List<String> wrapped(Finding finding) {
        String words = String.format(
                Locale.ROOT,
                "%s: %s. Limit: %s. %s",
                finding.rule(),
                finding.measured(),
                finding.limit(),
                finding.remedy());
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            if (line.length() + word.length() > LINE && line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static String colour(Severity severity) {
        return switch (severity) {
            case ERROR -> "#c8102e";
            case WARNING -> "#c46a00";
            case NOTE -> "#3b6ea5";
        };
    }

    private static Rgb pale(Rgb colour) {
        return new Rgb(pale(colour.red()), pale(colour.green()), pale(colour.blue()));
    }

    private static int pale(int channel) {
        return 255 - (255 - channel) * PALE / 100;
    }

    private static double apart(Place one, Place other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
