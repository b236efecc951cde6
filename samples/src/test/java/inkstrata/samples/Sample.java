package inkstrata.samples;

import inkstrata.colour.Rgb;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One of the sample artworks.
 *
 * @param name of its folder, its drawing and its job file
 */
record Sample(String name) {
    private static final Pattern SWATCH = Pattern.compile("prints: \"(#[0-9a-f]{6})\"");

    /** The folders beside this module's sources that hold a drawing of their own name. */
    static List<Sample> all() {
        try (Stream<Path> folders = Files.list(Path.of(""))) {
            return folders.map(folder -> new Sample(folder.getFileName().toString()))
                    .filter(sample -> Files.exists(sample.artwork()))
                    .sorted((a, b) -> a.name.compareTo(b.name))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path artwork() {
        return Path.of(name, name + ".svg").toAbsolutePath();
    }

    Path job() {
        return Path.of(name, name + ".yaml").toAbsolutePath();
    }

    Path about() {
        return Path.of(name, "about.md").toAbsolutePath();
    }

    byte[] drawing() throws IOException {
        return Files.readAllBytes(artwork());
    }

    /** The swatches that the job file lists. */
    List<Rgb> listedInks() throws IOException {
        return SWATCH.matcher(Files.readString(job()))
                .results()
                .map(match -> Rgb.parse(match.group(1)))
                .toList();
    }

    @Override
    public String toString() {
        return name;
    }
}
