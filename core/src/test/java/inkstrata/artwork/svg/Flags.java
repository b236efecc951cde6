package inkstrata.artwork.svg;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.util.List;

/** The flags of flag-icons 7.5.0 (MIT licence), from its webjar on the test class path. */
public final class Flags {
    private static final String ROOT = "META-INF/resources/webjars/flag-icons/7.5.0/flags/";

    private Flags() {}

    /** Names such as {@code 4x3/ad.svg}, sorted. */
    public static List<String> names() {
        try {
            JarURLConnection jar = (JarURLConnection) url("4x3/ad.svg").openConnection();
            return jar.getJarFile().stream()
                    .map(entry -> entry.getName())
                    .filter(name -> name.startsWith(ROOT) && name.endsWith(".svg"))
                    .map(name -> name.substring(ROOT.length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static InputStream open(String name) {
        return Flags.class.getClassLoader().getResourceAsStream(ROOT + name);
    }

    public static URL url(String name) {
        return Flags.class.getClassLoader().getResource(ROOT + name);
    }
}
