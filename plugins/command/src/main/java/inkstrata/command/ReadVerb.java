package inkstrata.command;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.Note;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.report.Decimals;
import inkstrata.report.Json;
import inkstrata.report.Remarks;
import inkstrata.report.SeamEntries;
import inkstrata.shop.Look;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Looks at a drawing and says what is in it. */
@Command(
        name = "read",
        header = "Says what is in a drawing: true size, colours and how much of each shows, notes.",
        description = {
            "",
            "Look here first. Is the size right? Are there more colours than you drew? Each of them becomes an ink unless"
                    + " it is joined to another (merge, in the job file). Areas are of what shows, not of what lies hidden"
                    + " beneath.",
            ""
        },
        footer = {"", "Example: inkstrata read boats.svg --width \"400 mm\""})
final class ReadVerb implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @ParentCommand
    private InkstrataCommand inkstrata;

    @Mixin
    private ArtworkArguments arguments;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Desk desk = new Desk(spec.commandLine().getErr(), inkstrata);
        try (Progress progress = desk.progress();
                FoundPlugins found = FoundPlugins.in(inkstrata.plugins())) {
            Job job = desk.job(arguments);
            found.plugins().check(job);
            progress.begins("reading the drawing");
            Artwork artwork = arguments.read(job, Set.of(), inkstrata.in());
            progress.begins(
                    "mapping " + artwork.shapes().size() + (artwork.shapes().size() == 1 ? " shape" : " shapes"));
            Look look = Look.at(artwork, job);
            if (inkstrata.json()) {
                out.println(Json.text(json(artwork, look)));
            } else {
                lines(artwork, look.visible()).forEach(out::println);
                for (Note note : look.notes()) {
                    out.println(Notices.line(artwork.name(), note));
                }
            }
        }
        return ExitCode.DONE;
    }

    private static List<String> lines(Artwork artwork, Map<Rgb, Double> visible) {
        double whole = artwork.frame().width() * artwork.frame().height();
        Table table = new Table("lrr", "colour", "mm²", "of picture");
        largestFirst(visible)
                .forEach(entry -> table.row(
                        entry.getKey().hex(),
                        String.format(Locale.ROOT, "%.1f", entry.getValue()),
                        String.format(Locale.ROOT, "%.2f %%", 100 * entry.getValue() / whole)));
        String head = String.format(
                Locale.ROOT,
                "%s: %.2f x %.2f mm, shapes: %d, colours: %d",
                artwork.name(),
                artwork.frame().width(),
                artwork.frame().height(),
                artwork.shapes().size(),
                visible.size());
        List<String> lines = new ArrayList<>(List.of(head));
        if (!visible.isEmpty()) {
            lines.addAll(table.lines());
        }
        return lines;
    }

    private static Map<String, Object> json(Artwork artwork, Look look) {
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("format", Json.FORMAT);
        Map<String, Object> drawing = new LinkedHashMap<>();
        drawing.put("name", artwork.name());
        drawing.put("widthMm", Decimals.length(artwork.frame().width()));
        drawing.put("heightMm", Decimals.length(artwork.frame().height()));
        result.put("artwork", drawing);
        result.put("shapes", artwork.shapes().size());
        List<Map<String, Object>> colours = new ArrayList<>();
        for (Map.Entry<Rgb, Double> shows : largestFirst(look.visible())) {
            Map<String, Object> colour = new LinkedHashMap<>();
            colour.put("colour", shows.getKey().hex());
            colour.put("areaMm2", Decimals.area(shows.getValue()));
            colours.add(colour);
        }
        result.put("colours", colours);
        result.put("seams", SeamEntries.of(look.map()));
        result.put("notes", Remarks.notes(look.notes()));
        return result;
    }

    private static List<Map.Entry<Rgb, Double>> largestFirst(Map<Rgb, Double> visible) {
        return visible.entrySet().stream()
                .sorted(Map.Entry.<Rgb, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .toList();
    }
}
