package inkstrata.command;

import inkstrata.colour.Rgb;
import inkstrata.command.MapSpots.Spot;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.plan.Pull;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was found, drawn onto the sheet at its true size: what is to be printed, pale; over it all that is wrong, and a number at each place;
 * beside it, by number, what was found there, on which film, and what to do.
 *
 * <p>The worst comes first. Of more places than can be read, the rest is drawn and counted.
 */
record FindingsMap(Separation planned, Inspection inspection) {
    /** Letters' size, of the sheet's longer side. */
    private static final double TEXT = 1.0 / 85;

    /** Letters of a line of the list. */
    private static final int LINE = 58;

    private static final double LEADING = 1.32;

    /** How much of the artwork's colour is left, in per cent. */
    private static final int PALE = 30;

    /** Lengths that a scale may have, in millimetres. */
    private static final int[] SCALES = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

    /** By which a map of ours is known. */
    private static final String MARK =
            "<!-- Map of what Inkstrata found when it checked films; it may be replaced. -->";

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
        double text = Math.max(sheet.width(), sheet.height()) * TEXT;
        MapSpots spots = MapSpots.of(inspection.findings(), 1.5 * text);
        MapPen title = new MapPen(text);
        double above = title(title, text);
        MapPen drawn = new MapPen(text);
        sheet(drawn, text);
        places(drawn, spots, text);
        legend(drawn, sheet, text);
        MapPen list = new MapPen(text);
        double below = sheet.height() + 6 * text;
        double right = list(list, spots, sheet.width() + 3 * text, below, text);
        double margin = 2 * text;
        double width = right + 2 * margin;
        double height = above + below + 2 * margin;
        return MARK
                + "\n"
                + String.format(
                        Locale.ROOT,
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.2fmm\" height=\"%2$.2fmm\""
                                + " viewBox=\"0 0 %1$.2f %2$.2f\" font-family=\"sans-serif\" fill=\"#1d1d1f\">\n",
                        width,
                        height)
                + "<title>" + MapPen.escaped(heading()) + "</title>\n"
                + "<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n"
                + String.format(Locale.ROOT, "<g transform=\"translate(%.2f %.2f)\">\n", margin, margin)
                + title
                + String.format(Locale.ROOT, "<g transform=\"translate(0 %.2f)\">\n", above)
                + drawn
                + list
                + "</g>\n</g>\n</svg>\n";
    }

    private String heading() {
        return "What was found on the films of " + planned.artwork().name();
    }

    /** Heading, verdict and numbers; gives the height it takes. */
    private double title(MapPen pen, double text) {
        double y = 1.9 * text;
        pen.words(0, y, 1.9 * text, "font-weight=\"bold\"", heading());
        y += 2 * text;
        List<String> counts = new ArrayList<>();
        for (Severity severity : List.of(Severity.ERROR, Severity.WARNING, Severity.NOTE)) {
            long count = inspection.findings().stream()
                    .filter(finding -> finding.severity() == severity)
                    .count();
            if (count > 0) {
                counts.add(count + " " + MapPen.word(severity) + (count == 1 ? "" : "s"));
            }
        }
        pen.words(0, y, 1.15 * text, "", counts.isEmpty() ? "Nothing is wrong." : String.join(", ", counts) + ".");
        double wide = planned.table().sheet().size().width() + 3 * text + LINE * MapPen.LETTER * text;
        for (String line : inspection
                .verdict()
                .map(verdict -> MapPen.lines(verdict.line(), (int) (wide / (1.15 * MapPen.LETTER * text))))
                .orElse(List.of())) {
            y += LEADING * 1.15 * text;
            pen.words(0, y, 1.15 * text, "", line);
        }
        return y + 2 * text;
    }

    private void sheet(MapPen pen, double text) {
        Size sheet = planned.table().sheet().size();
        pen.add(
                "<rect width=\"%.2f\" height=\"%.2f\" fill=\"%s\" stroke=\"#77777c\" stroke-width=\"%.2f\"/>",
                sheet.width(),
                sheet.height(),
                pale(planned.table().sheet().colour()).hex(),
                text / 14);
        List<Pull> pulls = planned.plan().pulls();
        for (int pull : planned.table().sheet().farthestFirst(pulls)) {
            Region printed = planned.printed().get(pull);
            if (!printed.isEmpty()) {
                pen.filled(printed, pale(pulls.get(pull).ink().swatch()).hex());
            }
        }
    }

    /** Areas first, the mildest lowest; then rings and dots; then numbers with lines to their places. */
    private void places(MapPen pen, MapSpots spots, double text) {
        for (Severity severity : Severity.values()) {
            inspection.findings().stream()
                    .filter(finding -> finding.severity() == severity)
                    .forEach(finding ->
                            finding.area().filter(area -> !area.isEmpty()).ifPresent(area -> pen.area(area, severity)));
        }
        for (Finding finding : spots.rest()) {
            pen.add(
                    "<circle cx=\"%.3f\" cy=\"%.3f\" r=\"%.3f\" fill=\"%s\" stroke=\"#ffffff\" stroke-width=\"%.3f\"/>",
                    finding.place().x(), finding.place().y(), text / 4, MapPen.colour(finding.severity()), text / 16);
        }
        List<Spot> placed = spots.numbered().stream()
                .filter(spot -> spot.place().isPresent())
                .toList();
        List<Place> asked =
                placed.stream().flatMap(spot -> spot.place().stream()).toList();
        Size sheet = planned.table().sheet().size();
        double side = 1.7 * text;
        List<Place> badges = new MapBadges(new Frame(0, 0, sheet.width(), sheet.height()), side).places(asked);
        for (int i = 0; i < placed.size(); i++) {
            ring(pen, placed.get(i).worst(), asked.get(i), badges.get(i), text);
        }
        for (int i = 0; i < placed.size(); i++) {
            pen.badge(
                    badges.get(i).x(),
                    badges.get(i).y(),
                    side,
                    placed.get(i).worst(),
                    1 + spots.numbered().indexOf(placed.get(i)));
        }
    }

    private static void ring(MapPen pen, Severity severity, Place place, Place badge, double text) {
        double radius = 0.75 * text;
        double away = Math.hypot(badge.x() - place.x(), badge.y() - place.y());
        if (away > radius) {
            double x = place.x() + (badge.x() - place.x()) * radius / away;
            double y = place.y() + (badge.y() - place.y()) * radius / away;
            for (String stroke : new String[] {"#ffffff", MapPen.colour(severity)}) {
                pen.add(
                        "<path d=\"M%.3f %.3fL%.3f %.3f\" stroke=\"%s\" stroke-width=\"%.3f\"/>",
                        x, y, badge.x(), badge.y(), stroke, text / (stroke.equals("#ffffff") ? 4 : 9));
            }
        }
        pen.add(
                "<circle cx=\"%.3f\" cy=\"%.3f\" r=\"%.3f\" fill=\"none\" stroke=\"#ffffff\" stroke-width=\"%.3f\"/>",
                place.x(), place.y(), radius, text / 2.6);
        pen.add(
                "<circle cx=\"%.3f\" cy=\"%.3f\" r=\"%.3f\" fill=\"none\" %s/>",
                place.x(), place.y(), radius, pen.line(severity, text / 6));
    }

    /** Beneath the sheet: a scale, and what shapes stand for. */
    private static void legend(MapPen pen, Size sheet, double text) {
        int length = SCALES[0];
        for (int scale : SCALES) {
            length = scale <= sheet.width() / 3 ? scale : length;
        }
        double y = sheet.height() + 1.6 * text;
        pen.add(
                "<path d=\"M0 %1$.3fv%2$.3fM0 %3$.3fh%4$dM%4$d %1$.3fv%2$.3f\" fill=\"none\" stroke=\"#1d1d1f\" stroke-width=\"%5$.3f\"/>",
                y - 0.5 * text, text, y, length, text / 10);
        pen.words(length + 0.8 * text, y + 0.35 * text, text, "", length + " mm");
        double x = 0;
        y += 2.6 * text;
        for (Severity severity : List.of(Severity.ERROR, Severity.WARNING, Severity.NOTE)) {
            pen.badge(x + 0.7 * text, y - 0.35 * text, 1.2 * text, severity, 0);
            pen.words(x + 2 * text, y, text, "", MapPen.word(severity));
            x += (3.4 + MapPen.LETTER * MapPen.word(severity).length()) * text;
        }
        pen.words(x, y, text, "fill=\"#55555a\"", "filled: all that is wrong");
    }

    /** In columns as high as the sheet; gives where the last ends. */
    private double list(MapPen pen, MapSpots spots, double left, double bottom, double text) {
        double wide = (3 + LINE * MapPen.LETTER) * text;
        double x = left;
        double y = 0;
        int number = 0;
        for (Spot spot : spots.numbered()) {
            number++;
            List<Line> lines = lines(spot);
            double height = lines.stream().mapToDouble(Line::height).sum() * LEADING * text;
            if (y > 0 && y + height > bottom) {
                x += wide + text;
                y = 0;
            }
            pen.badge(x + 0.8 * text, y + 0.65 * text, 1.4 * text, spot.worst(), number);
            for (Line line : lines) {
                y += line.height() * LEADING * text;
                if (!line.words().isEmpty()) {
                    pen.words(x + 2.4 * text, y - 0.3 * text, text, line.style(), line.words());
                }
            }
            y += 0.9 * text;
        }
        if (!spots.rest().isEmpty()) {
            List<String> more = MapPen.lines(rest(spots), LINE);
            if (y > 0 && y + more.size() * LEADING * text > bottom) {
                x += wide + text;
                y = 0;
            }
            for (String line : more) {
                y += LEADING * text;
                pen.words(x, y - 0.3 * text, text, "font-weight=\"bold\"", line);
            }
        }
        return x + wide;
    }

    private record Line(String words, String style) {
        /** Between two findings of one spot. */
        static final Line GAP = new Line("", "");

        /** In lines of words. */
        double height() {
            return equals(GAP) ? 0.4 : 1;
        }
    }

    private static String rest(MapSpots spots) {
        Map<String, Integer> byRule = spots.restByRule();
        return "And " + spots.rest().size() + " more, each a dot: "
                + byRule.entrySet().stream()
                        .map(rule -> rule.getValue() + " " + rule.getKey())
                        .collect(Collectors.joining(", "))
                + ". Mend these first, and check again.";
    }

    private static List<Line> lines(Spot spot) {
        List<Line> lines = new ArrayList<>();
        for (Finding finding : spot.findings()) {
            if (!lines.isEmpty()) {
                lines.add(Line.GAP);
            }
            String place = spot.place().isEmpty()
                    ? "the whole set"
                    : String.format(
                            Locale.ROOT,
                            "at %.1f, %.1f mm",
                            finding.place().x(),
                            finding.place().y());
            String film = Stream.of(finding.subject().file(), finding.subject().ink())
                    .filter(word -> !word.isEmpty())
                    .findFirst()
                    .map(word -> ", " + word)
                    .orElse("");
            MapPen.lines(MapPen.word(finding.severity()) + ": " + finding.rule() + film + ", " + place, LINE - 4)
                    .forEach(line -> lines.add(
                            new Line(line, "font-weight=\"bold\" fill=\"" + MapPen.colour(finding.severity()) + "\"")));
            MapPen.lines(finding.measured() + "; limit: " + finding.limit() + ".", LINE)
                    .forEach(line -> lines.add(new Line(line, "")));
            MapPen.lines(finding.remedy(), LINE).forEach(line -> lines.add(new Line(line, "fill=\"#55555a\"")));
        }
        if (spot.more() > 0) {
            lines.add(new Line("and " + spot.more() + " more here", "font-weight=\"bold\""));
        }
        return lines;
    }

    private static Rgb pale(Rgb colour) {
        return new Rgb(pale(colour.red()), pale(colour.green()), pale(colour.blue()));
    }

    private static int pale(int channel) {
        return 255 - (255 - channel) * PALE / 100;
    }
}
