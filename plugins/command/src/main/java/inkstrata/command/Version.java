package inkstrata.command;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Which Inkstrata this is; the build writes it down. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            Properties properties = new Properties();
            properties.load(Objects.requireNonNull(in, "version.properties is missing from the jar"));
            return new String[] {"inkstrata " + properties.getProperty("version")};
        }
    }
}
