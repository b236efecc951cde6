package inkstrata.command;

import inkstrata.plugin.Plugin;
import inkstrata.plugin.Plugins;
import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.zip.ZipException;

/** The plug-ins of this program and those in the jars of a folder; closed when they are no longer needed. */
final class FoundPlugins implements AutoCloseable {
    private final URLClassLoader loader;
    private final Plugins plugins;

    private FoundPlugins(URLClassLoader loader, Plugins plugins) {
        this.loader = loader;
        this.plugins = plugins;
    }

    /**
     * Finds them.
     *
     * @param folder whose jars are looked through as well
     * @throws CommandFault if the folder is not there
     * @throws inkstrata.plugin.PluginException if a plug-in can't be loaded
     */
    static FoundPlugins in(Optional<Path> folder) throws IOException {
        List<URL> jars = new ArrayList<>();
        if (folder.isPresent()) {
            for (Path jar : jars(folder.get())) {
                jars.add(url(jar));
            }
        }
        URLClassLoader loader = new URLClassLoader(jars.toArray(URL[]::new), FoundPlugins.class.getClassLoader());
        try {
            return new FoundPlugins(loader, Plugins.load(loader));
        } catch (RuntimeException | Error fault) {
            loader.close();
            throw fault;
        }
    }

    Plugins plugins() {
        return plugins;
    }

    /** Name of the jar or folder a plug-in came from. */
    static String home(Plugin plugin) {
        CodeSource source = plugin.getClass().getProtectionDomain().getCodeSource();
        String place = source == null ? "" : source.getLocation().getPath().replaceFirst("/$", "");
        return place.substring(place.lastIndexOf('/') + 1);
    }

    @Override
    public void close() throws IOException {
        loader.close();
    }

    private static List<Path> jars(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new CommandFault(folder + ": there is no such folder of plug-ins. Look at --plugins.");
        }
        List<Path> jars = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.jar")) {
            files.forEach(jars::add);
        }
        Collections.sort(jars);
        for (Path jar : jars) {
            try (JarFile opened = new JarFile(jar.toFile())) {
                opened.size();
            } catch (ZipException fault) {
                throw new CommandFault(jar + ": this is not a jar. Take it away or build it again.", fault);
            }
        }
        return jars;
    }

    private static URL url(Path jar) throws MalformedURLException {
        return jar.toUri().toURL();
    }
}
