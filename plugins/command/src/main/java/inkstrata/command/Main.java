package inkstrata.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Where the program starts and ends. */
public final class Main {
    private Main() {}

    /** Serves one command line and ends the program with one of the codes of {@link ExitCode}. */
    public static void main(String[] words) {
        PrintWriter out = utf8(FileDescriptor.out);
        PrintWriter err = utf8(FileDescriptor.err);
        Counter counter = new Counter(System.in, out, err);
        MemoryWatch.start(() -> System.exit(counter.giveUp()));
        int code = counter.serve(words);
        out.flush();
        err.flush();
        System.exit(code);
    }

    private static PrintWriter utf8(FileDescriptor file) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(file), StandardCharsets.UTF_8), false);
    }
}
