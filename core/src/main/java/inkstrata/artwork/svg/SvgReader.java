package inkstrata.artwork.svg;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Source;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Reads one drawing from SVG or svgz.
 *
 * <p>Works on a thread of its own with a stack of known size, so that a file nested as deep as {@link Limits} allows is
 * read wherever the caller stands.
 */
public final class SvgReader {
    private SvgReader() {}

    /**
     * Reads a file.
     *
     * @throws ArtworkException if the drawing is at fault
     * @throws IOException if the file cannot be read
     */
    public static Artwork read(Path file, ReadOptions options) throws IOException {
        try (InputStream stream = Files.newInputStream(file)) {
            Path name = file.getFileName();
            return read(name == null ? file.toString() : name.toString(), stream, options);
        }
    }

    /**
     * Reads a stream to its end.
     *
     * @param name for messages and titles
     * @throws ArtworkException if the drawing is at fault
     * @throws IOException if the stream cannot be read
     */
    public static Artwork read(String name, InputStream stream, ReadOptions options) throws IOException {
        byte[] bytes = SvgBytes.read(name, stream);
        FutureTask<Artwork> task = new FutureTask<>(() -> readBytes(name, bytes, options));
        Thread thread = new Thread(null, task, "read " + name, Limits.STACK);
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(Limits.TIME.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException late) {
            task.cancel(true);
            throw new ArtworkException(
                    name,
                    Source.UNKNOWN,
                    "reading took longer than " + Limits.TIME.toMinutes() + " minutes.",
                    "Simplify the drawing: fewer copies, clips and points.");
        } catch (InterruptedException stopped) {
            task.cancel(true);
            Thread.currentThread().interrupt();
            throw new IOException("reading " + name + " was interrupted", stopped);
        } catch (ExecutionException failed) {
            throw thrown(name, bytes.length, failed.getCause());
        }
    }

    private static Artwork readBytes(String name, byte[] bytes, ReadOptions options) {
        Notes notes = new Notes();
        SafeDocument safe = SafeDocument.read(name, bytes, options, notes);
        List<FlatShape> shapes = ArtworkWalk.walk(safe.document(), safe.frame(), notes, options, name);
        Artwork artwork = new Artwork(name, safe.frame(), shapes, notes.list());
        return options.keepOrigin()
                ? artwork.movedBy(safe.origin().x(), safe.origin().y())
                : artwork;
    }

    private static RuntimeException thrown(String name, int bytes, Throwable cause) {
        if (cause instanceof OutOfMemoryError) {
            return new ArtworkException(
                    name,
                    Source.UNKNOWN,
                    String.format(
                            Locale.ROOT,
                            "reading its %.1f MiB takes more than the %d MiB of memory that the program may use.",
                            bytes / 1048576.0,
                            Runtime.getRuntime().maxMemory() >> 20),
                    "Simplify its paths, use fewer copies, split the drawing, or give the program more memory:"
                            + " JDK_JAVA_OPTIONS=-Xmx8g.");
        }
        if (cause instanceof StackOverflowError) {
            return new ArtworkException(
                    name, Source.UNKNOWN, "the drawing is nested too deep.", "Ungroup it and save it again.");
        }
        if (cause instanceof ArtworkException fault) {
            return fault;
        }
        if (cause instanceof Error error) {
            throw error;
        }
        return new IllegalStateException("reading " + name + " failed: " + cause, cause);
    }
}
