package inkstrata.plugin;

import inkstrata.film.FilmSheet;
import java.util.List;

/** Reads films from one kind of file. SVG needs none: the core reads it. */
public non-sealed interface FilmFormat extends Plugin {
    /** Endings of such files' names: small letters, without a dot. */
    List<String> endings();

    /**
     * Opens a file.
     *
     * @param file its name, for messages
     * @param content all of it; not to be changed
     * @return the films it holds, in the file's order; they are read when asked
     * @throws inkstrata.artwork.ArtworkException if it is no such file, or asks for more than a film can
     */
    List<FilmSheet> open(String file, byte[] content);
}
