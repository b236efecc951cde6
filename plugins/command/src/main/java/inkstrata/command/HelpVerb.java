package inkstrata.command;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The same as {@code --help}, asked for with a verb. */
@Command(
        name = "help",
        header = "Explains a verb, or the program where none is named.",
        footer = {"", "Example: inkstrata help separate"})
final class HelpVerb implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "VERB", description = "The verb that is to be explained.")
    private String verb;

    @Override
    public Integer call() {
        CommandLine program = spec.commandLine().getParent();
        CommandLine asked = verb == null ? program : program.getSubcommands().get(verb);
        if (asked == null) {
            throw new ParameterException(program, WordFaults.noVerb(verb, program.getCommandSpec()));
        }
        asked.usage(spec.commandLine().getOut());
        return ExitCode.DONE;
    }
}
