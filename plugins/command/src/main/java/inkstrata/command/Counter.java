package inkstrata.command;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;

/** Takes the words of a command line, lets a verb do the work, and turns faults into one line and an exit code. */
final class Counter {
    /** Columns of the help. */
    private static final int WIDTH = 100;

    private final InputStream in;
    private final PrintWriter out;
    private final PrintWriter err;
    private volatile InkstrataCommand command;
    private volatile Faults faults;

    Counter(InputStream in, PrintWriter out, PrintWriter err) {
        this.in = in;
        this.out = out;
        this.err = err;
    }

    /** Does what the words ask for; never throws. */
    int serve(String... words) {
        command = new InkstrataCommand(in);
        faults = new Faults(out, err, List.of(words).contains("--json"));
        CommandLine line = new CommandLine(command)
                .setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setUsageHelpWidth(WIDTH)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((fault, given) -> faults.ofWords(fault))
                .setExecutionExceptionHandler((fault, verb, given) -> of(fault));
        try {
            return line.execute(words);
        } catch (OutOfMemoryError | StackOverflowError fault) {
            return of(fault);
        }
    }

    /** Says that memory is too short for what is being done. */
    int giveUp() {
        return faults.of(new MemoryFault(command.doing(), null), false);
    }

    private int of(Throwable fault) {
        return faults.of(MemoryFault.in(fault, command.doing()), command.debug());
    }
}
