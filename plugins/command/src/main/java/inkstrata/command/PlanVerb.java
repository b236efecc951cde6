package inkstrata.command;

import inkstrata.artwork.Artwork;
import inkstrata.job.Job;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Plans the pulls and says why, without writing anything. */
@Command(
        name = "plan",
        header = "Plans the pulls: which inks, in which order, what each covers, and why.",
        description = {
            "",
            "Nothing is written. Go through the decisions as you would with a printer; what you want otherwise goes into"
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

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Desk desk = new Desk(spec.commandLine().getErr(), inkstrata);
        try (Progress progress = desk.progress();
                FoundPlugins found = FoundPlugins.in(inkstrata.plugins())) {
            Job job = desk.job(arguments);
            progress.begins("reading the drawing");
            Artwork artwork = arguments.read(job, Separator.drawings(found.plugins(), job));
            Separation separation = new Separator(found.plugins(), progress::begins).separate(artwork, job);
            if (inkstrata.json()) {
                out.println(Json.of(PlanReport.json(separation)));
            } else {
                PlanReport.lines(separation).forEach(out::println);
            }
        }
        return ExitCode.DONE;
    }
}
