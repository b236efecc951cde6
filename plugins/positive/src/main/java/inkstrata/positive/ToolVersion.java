package inkstrata.positive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;

/** Which Inkstrata this is; the build writes it down. */
final class ToolVersion {
    private ToolVersion() {}

    static String read() {
        try (InputStream in = ToolVersion.class.getResourceAsStream("tool.properties")) {
            Properties tool = new Properties();
            tool.load(Objects.requireNonNull(in, "tool.properties is missing from the jar"));
            return tool.getProperty("version");
        } catch (IOException e) {
            throw new UncheckedIOException("tool.properties can not be read", e);
        }
    }
}
