package inkstrata.command;

import inkstrata.artwork.Note;
import inkstrata.job.Job;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Stream;

/** What is said on standard error while a verb is at work. */
final class Desk {
    private final PrintWriter err;
    private final boolean quiet;
    private final InkstrataCommand inkstrata;

    Desk(PrintWriter err, InkstrataCommand inkstrata) {
        this.err = err;
        this.quiet = inkstrata.quiet();
        this.inkstrata = inkstrata;
    }

    Progress progress() {
        return new Progress(err, quiet, inkstrata::begins);
    }

    /** Reads the job file and says so where it was not named but found. */
    Job job(ArtworkArguments arguments) throws IOException {
        Job job = arguments.job();
        arguments.jobBeside().ifPresent(file -> say("job file: " + file));
        return job;
    }

    /** Prints the notes that matter to the print; the others stand in what is written. */
    void warning(String words) {
        say("warning: " + words);
    }

    /** Prints lines that go with one before them. */
    void lines(List<String> lines) {
        if (!quiet) {
            lines.forEach(err::println);
            err.flush();
        }
    }

    void warnings(Separation separation) {
        List<Note> notes = Stream.concat(separation.artwork().notes().stream(), separation.notes().stream())
                .toList();
        for (Note note : notes) {
            if (note.severity() == Note.Severity.WARNING) {
                say(Notices.line(separation.artwork().name(), note));
            }
        }
    }

    void say(String line) {
        if (!quiet) {
            err.println("inkstrata: " + line);
            err.flush();
        }
    }
}
