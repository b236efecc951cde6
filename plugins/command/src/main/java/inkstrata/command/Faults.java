package inkstrata.command;

import inkstrata.artwork.ArtworkException;
import inkstrata.job.JobException;
import inkstrata.plugin.PluginException;
import inkstrata.report.Json;
import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine.ParameterException;

/** Says on one line what went wrong, and whose fault it is. */
final class Faults {
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean isJson;

    /**
     * Where to say them.
     *
     * @param isJson whether they are also printed as JSON, on standard output
     */
    Faults(PrintWriter out, PrintWriter err, boolean isJson) {
        this.out = out;
        this.err = err;
        this.isJson = isJson;
    }

    /** A command line nobody understands. */
    int ofWords(ParameterException fault) {
        return say(ExitCode.COMMAND_AT_FAULT, fault, WordFaults.say(fault));
    }

    /**
     * Anything that went wrong while a verb was at work.
     *
     * @param debug print the stack trace as well
     */
    int of(Throwable fault, boolean debug) {
        if (debug) {
            fault.printStackTrace(err);
        }
        if (fault instanceof ArtworkException) {
            return say(ExitCode.ARTWORK_AT_FAULT, fault, fault.getMessage());
        }
        if (fault instanceof JobException || fault instanceof PluginException || fault instanceof CommandFault) {
            return say(ExitCode.COMMAND_AT_FAULT, fault, oneLine(fault.getMessage()));
        }
        if (fault instanceof IOException) {
            return say(
                    ExitCode.COMMAND_AT_FAULT,
                    fault,
                    "a file can't be read or written: " + oneLine(String.valueOf(fault.getMessage()))
                            + ". Look at its name, its rights and the room on the disk.");
        }
        if (fault instanceof MemoryFault) {
            return say(ExitCode.ARTWORK_AT_FAULT, fault, fault.getMessage());
        }
        return say(
                ExitCode.OUR_FAULT,
                fault,
                "this is a fault of the program, not of your files: " + oneLine(fault.toString())
                        + (debug ? "" : ". Run the same command with --debug and report what it prints."));
    }

    private int say(int exitCode, Throwable fault, String message) {
        if (isJson) {
            out.println(Json.text(FaultReport.json(exitCode, fault, oneLine(message))));
            out.flush();
        }
        message.strip().lines().forEach(line -> err.println("inkstrata: " + line.strip()));
        if (fault instanceof CommandFault command) {
            command.more().forEach(err::println);
        }
        err.flush();
        return exitCode;
    }

    private static String oneLine(String text) {
        return text.strip().replaceAll("\\s*\\R\\s*", " ");
    }
}
