package inkstrata.command;

import inkstrata.artwork.ArtworkException;
import inkstrata.job.JobException;
import inkstrata.plugin.PluginException;
import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine.ParameterException;

/** Says on one line what went wrong, and whose fault it is. */
final class Faults {
    private final PrintWriter err;

    Faults(PrintWriter err) {
        this.err = err;
    }

    /** A command line nobody understands. */
    int ofWords(ParameterException fault) {
        say(WordFaults.say(fault));
        return ExitCode.COMMAND_AT_FAULT;
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
            say(fault.getMessage());
            return ExitCode.ARTWORK_AT_FAULT;
        }
        if (fault instanceof JobException || fault instanceof PluginException || fault instanceof CommandFault) {
            say(fault.getMessage());
            return ExitCode.COMMAND_AT_FAULT;
        }
        if (fault instanceof IOException) {
            say("a file can't be read or written: " + fault.getMessage()
                    + ". Look at its name, its rights and the room on" + " the disk.");
            return ExitCode.COMMAND_AT_FAULT;
        }
        if (fault instanceof OutOfMemoryError) {
            say("memory ran out at " + (Runtime.getRuntime().maxMemory() >> 20)
                    + " MiB. Give the program more: JDK_JAVA_OPTIONS=-Xmx8g.");
            return ExitCode.OUR_FAULT;
        }
        say("this is a fault of the program, not of your files: " + fault
                + (debug ? "" : ". Run the same command with --debug and report what it prints."));
        return ExitCode.OUR_FAULT;
    }

    private void say(String message) {
        err.println("inkstrata: " + oneLine(message));
        err.flush();
    }

    private static String oneLine(String text) {
        return text.strip().replaceAll("\\s*\\R\\s*", " ");
    }
}
