package inkstrata.command;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The word {@code inkstrata} itself: what all verbs have in common. */
@Command(
        name = "inkstrata",
        header = "Makes the film positives of a screen print from one flat drawing.",
        description = {
            "",
            "Give it an SVG drawing of flat colours. It finds the inks, decides which ink prints where and in which order,"
                    + " spreads light inks under dark ones so that no paper shows between them, and writes one film for each"
                    + " ink: black on clear, at true size, all with the same register marks.",
            ""
        },
        optionListHeading = "%nFor every verb:%n",
        commandListHeading = "%nVerbs:%n",
        footer = {
            "",
            "Begin like this:",
            "  inkstrata read boats.svg                what is in the drawing, and how large it is",
            "  inkstrata plan boats.svg                which inks, in which order, and why",
            "  inkstrata separate boats.svg -o films   the films themselves",
            "  inkstrata check boats.svg films         films read back, ours or others: what is wrong",
            "",
            "A job file says what the drawing can't: sheet, inks, order, trap. Where boats.yaml lies beside boats.svg it"
                    + " is used.",
            "",
            "Exit codes: 0 done, 1 done but something was found (--fail-on), 2 the drawing is at fault, 3 the command or"
                    + " job file is at fault, 4 the program is at fault."
        },
        subcommands = {
            ReadVerb.class,
            PlanVerb.class,
            SeparateVerb.class,
            CheckVerb.class,
            PluginsVerb.class,
            HelpVerb.class
        },
        synopsisSubcommandLabel = "VERB",
        versionProvider = Version.class,
        mixinStandardHelpOptions = false)
final class InkstrataCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @SuppressWarnings("unused") // picocli looks at it
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "Say how this is used.")
    private boolean help;

    @SuppressWarnings("unused") // picocli looks at it
    @Option(names = "--version", versionHelp = true, description = "Say which version this is.")
    private boolean version;

    @Option(names = "--json", scope = ScopeType.INHERIT, description = "Print the result as JSON.")
    private boolean json;

    @Option(names = "--quiet", scope = ScopeType.INHERIT, description = "Say nothing but results and faults.")
    private boolean quiet;

    @Option(names = "--debug", scope = ScopeType.INHERIT, description = "Print a stack trace with a fault.")
    private boolean debug;

    @Option(
            names = "--plugins",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description = "Look for more plug-ins in the jars of this folder.")
    private Path plugins;

    private final InputStream in;
    private volatile String doing = "starting";

    /** @param in standard input */
    InkstrataCommand(InputStream in) {
        this.in = in;
    }

    /** Standard input. */
    InputStream in() {
        return in;
    }

    /** A verb begins something, said as what is being done. */
    void begins(String step) {
        doing = step;
    }

    /** What a verb is doing, or did last. */
    String doing() {
        return doing;
    }

    boolean json() {
        return json;
    }

    boolean quiet() {
        return quiet;
    }

    boolean debug() {
        return debug;
    }

    Optional<Path> plugins() {
        return Optional.ofNullable(plugins);
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "A verb is missing: read, plan, separate, check, plugins or help.");
    }
}
