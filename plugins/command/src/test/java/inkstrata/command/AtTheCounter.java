package inkstrata.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * What came of one command line.
 *
 * @param code exit code
 * @param out standard output
 * @param err standard error
 */
record AtTheCounter(int code, String out, String err) {
    /** What is said where work takes long, as it may on a busy machine. */
    private static final String PROGRESS = "inkstrata: .* \\(\\d+ s\\)";

    static AtTheCounter say(Object... words) {
        return sayWith("", words);
    }

    /** With this on standard input. */
    static AtTheCounter sayWith(String input, Object... words) {
        InputStream in = new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] texts = new String[words.length];
        for (int i = 0; i < words.length; i++) {
            texts[i] = words[i].toString();
        }
        int code = new Counter(in, new PrintWriter(out), new PrintWriter(err)).serve(texts);
        return new AtTheCounter(code, out.toString(), err.toString());
    }

    /** Ended with this code and one line on standard error that holds these words, and nothing on standard output. */
    void failsWith(int expected, String... words) {
        assertThat(code).as(err).isEqualTo(expected);
        assertThat(said().stream().filter(line -> !line.contains("job file: ")))
                .as("lines on standard error")
                .hasSize(1);
        assertThat(err).contains(words).doesNotContain("\tat ");
        assertThat(out).isEmpty();
    }

    /** Lines on standard error but for progress. */
    List<String> said() {
        return err.lines().filter(line -> !line.matches(PROGRESS)).toList();
    }

    AtTheCounter isDone() {
        assertThat(code).as(err).isEqualTo(ExitCode.DONE);
        return this;
    }

    /** A drawing with two colours side by side and a third upon them: 60 x 40 mm. */
    static String drawing() {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='40mm' viewBox='0 0 60 40'>"
                + "<rect width='30' height='40' fill='#f4d78c'/><rect x='30' width='20' height='40' fill='#d2603f'/>"
                + "<rect x='10' y='10' width='30' height='5' fill='#14182c'/></svg>";
    }

    static Path write(Path file, String text) throws IOException {
        return Files.writeString(file, text);
    }
}
