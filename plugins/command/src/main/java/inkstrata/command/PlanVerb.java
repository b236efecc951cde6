package inkstrata.command;

import inkstrata.artwork.Artwork;
import inkstrata.job.Job;
import inkstrata.report.Json;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import inkstrata.shop.Starter;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Plans the pulls and says why, without writing anything. */
@Command(
        name = "plan",
        header = "Plans the pulls: which inks, in which order, what each covers, and why.",
        description = {
            "",
            "Nothing is written, but for the file that --starter names. Go through the decisions as you would with a printer; what you want otherwise goes into"
                    + " the job file: inks, order, key, trap.",
            ""
        },
        footer = {"", "Example: inkstrata plan boats.svg --job boats.yaml"})
final class PlanVerb implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @ParentCommand
    private InkstrataCommand inkstrata;

    @Mixin
    private ArtworkArguments arguments;

    @Option(
            names = "--starter",
            paramLabel = "JOB.yaml",
            description = "Write a job file to begin with: the same plan, with a remark on every setting.")
    private Path starter;

    @Mixin
    private FailOn failOn;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Desk desk = new Desk(spec.commandLine().getErr(), inkstrata);
        try (Progress progress = desk.progress();
                FoundPlugins found = FoundPlugins.in(inkstrata.plugins())) {
            Job job = desk.job(arguments);
            if (starter != null && !job.file().isEmpty()) {
                throw new CommandFault("--starter: there is a job file already, " + job.file() + ". Edit that one.");
            }
            progress.begins("reading the drawing");
            Artwork artwork = arguments.read(job, Separator.drawings(found.plugins(), job), inkstrata.in());
            Separator separator = new Separator(found.plugins(), progress::begins);
            Separation separation = separator.separate(artwork, job, many -> {
                desk.warning(ManyInksReport.head(artwork.name(), many)
                        + " separate makes films of them only if you ask for it.");
                desk.lines(ManyInksReport.choices(many));
            });
            Inspection inspection = separator.inspect(separation, job);
            if (starter != null) {
                writeStarter(Starter.text(separation, found.plugins(), job, arguments.widthAsked()));
            }
            if (inkstrata.json()) {
                out.println(Json.text(PlanReport.json(separation, inspection)));
            } else {
                PlanReport.lines(separation).forEach(out::println);
                inspection.findings().forEach(finding -> out.println(Notices.line(finding)));
                inspection.verdict().ifPresent(verdict -> out.println(verdict.line()));
            }
            return failOn.exitCode(inspection.findings());
        }
    }

    private void writeStarter(String text) throws IOException {
        try {
            Files.writeString(starter, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw new CommandFault("--starter: " + starter + " is there already. Name another file.", e);
        }
    }
}
