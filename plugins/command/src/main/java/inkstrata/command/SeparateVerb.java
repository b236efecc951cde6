package inkstrata.command;

import inkstrata.artwork.Artwork;
import inkstrata.job.Job;
import inkstrata.report.Json;
import inkstrata.report.Remarks;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Runs the whole line and writes a folder. */
@Command(
        name = "separate",
        header = "Makes the films: one for each pull at true size, with an overview and the plan.",
        description = {
            "",
            "The folder appears when all of it is written, or not at all. With --replace it takes the place of one that was"
                    + " written here before and has not been changed since; anything else is left alone.",
            "Print the films at 100 %%, never \"fit to page\": the bar on each of them is 100 mm long.",
            ""
        },
        footer = {"", "Example: inkstrata separate boats.svg --job boats.yaml -o films"})
final class SeparateVerb implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @ParentCommand
    private InkstrataCommand inkstrata;

    @Mixin
    private ArtworkArguments arguments;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            required = true,
            description = "The folder that is to hold the films.")
    private Path folder;

    @Option(names = "--replace", description = "Lets the folder take the place of an older set there.")
    private boolean replaces;

    @Mixin
    private FailOn failOn;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Desk desk = new Desk(spec.commandLine().getErr(), inkstrata);
        try (Progress progress = desk.progress();
                FoundPlugins found = FoundPlugins.in(inkstrata.plugins());
                WholeFolder films = WholeFolder.begin(folder, replaces)) {
            Job job = desk.job(arguments);
            progress.begins("reading the drawing");
            Artwork artwork = arguments.read(job, Separator.drawings(found.plugins(), job), inkstrata.in());
            Separator separator = new Separator(found.plugins(), progress::begins);
            Separation separation = separator.separate(artwork, job, many -> {
                throw new CommandFault(
                        ManyInksReport.head(artwork.name(), many) + " Ask for fewer, or for all of them.",
                        ManyInksReport.choices(many));
            });
            Inspection inspection = separator.inspect(separation, job);
            separator.write(separation, inspection, job, films);
            films.publish();
            desk.warnings(separation);
            if (inkstrata.json()) {
                Map<String, Object> result = Remarks.result(inspection);
                result.put("folder", folder.toString());
                result.put("files", films.names());
                result.put("findings", Remarks.findings(inspection.findings()));
                out.println(Json.text(result));
            } else {
                inspection.findings().forEach(finding -> out.println(Notices.line(finding)));
                films.names().forEach(name -> out.println(folder.resolve(name)));
                inspection.verdict().ifPresent(verdict -> out.println(verdict.line()));
            }
            return failOn.exitCode(inspection.findings());
        }
    }
}
