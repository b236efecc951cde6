package inkstrata.artwork.svg;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.WRITE;

import inkstrata.colour.Rgb;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The renderer resvg in a process of node's, installed by npm into the build folder when it is first asked for; needs node
 * 18 or later and npm on the PATH. Not for several threads.
 */
public final class Resvg implements AutoCloseable {
    private static final Path FOLDER = Path.of("target", "other-pictures");
    private static final Pattern SHARE = Pattern.compile("\"(#[0-9a-f]{6})\":([0-9.e-]+)");

    private final Process process;
    private final Writer questions;
    private final BufferedReader answers;

    private Resvg(Process process) {
        this.process = process;
        this.questions = process.outputWriter(StandardCharsets.UTF_8);
        this.answers = process.inputReader(StandardCharsets.UTF_8);
    }

    public static Resvg start() throws IOException, InterruptedException {
        Files.createDirectories(FOLDER);
        // Tests of another process wait until it is there.
        try (FileChannel lock = FileChannel.open(FOLDER.resolve("lock"), CREATE, WRITE)) {
            lock.lock();
            install();
        }
        return new Resvg(begin("node", "visible-areas.js"));
    }

    private static void install() throws IOException, InterruptedException {
        for (String file : List.of("package.json", "visible-areas.js")) {
            try (InputStream stream = Resvg.class.getResourceAsStream("/inkstrata/artwork/node/" + file)) {
                Files.copy(stream, FOLDER.resolve(file), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        if (!Files.isDirectory(emoji())) {
            int code = begin("npm", "install", "--no-audit", "--no-fund", "--no-package-lock")
                    .waitFor();
            if (code != 0) {
                throw new IOException("npm install in core/" + FOLDER + " ended with code " + code);
            }
        }
    }

    private static Process begin(String... command) throws IOException {
        return new ProcessBuilder(command)
                .directory(FOLDER.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /** Where @twemoji/svg lies. */
    public static Path emoji() {
        return FOLDER.resolve(Path.of("node_modules", "@twemoji", "svg"));
    }

    /** What shows in a picture of that many pixels across, on a white sheet. */
    VisibleAreas areas(Path svg, int width) throws IOException {
        questions.write(width + " " + svg.toAbsolutePath() + "\n");
        questions.flush();
        String answer = answers.readLine();
        if (answer == null) {
            throw new IOException("resvg could not draw " + svg);
        }
        Map<Rgb, Double> shares = new TreeMap<>();
        Matcher matcher = SHARE.matcher(answer);
        while (matcher.find()) {
            shares.put(Rgb.parse(matcher.group(1)), Double.valueOf(matcher.group(2)));
        }
        return new VisibleAreas(shares, 0);
    }

    @Override
    public void close() {
        process.destroy();
    }
}
