package inkstrata.command;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import inkstrata.film.Film;
import inkstrata.film.FilmDrawing;
import inkstrata.film.FilmReader;
import inkstrata.measure.Place;
import inkstrata.plan.Ink;
import inkstrata.plugin.FilmFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a film is: a file, or one of the films in it.
 *
 * @param file that holds it
 * @param format which reads it; none for SVG, which the core reads
 * @param index which of those in the file, from 0
 * @param count how many the file holds
 * @param label what the file calls it; empty if it does not
 * @param origin where its upper left corner lies on the sheet, if that was written down
 */
record FilmSource(Path file, Optional<FilmFormat> format, int index, int count, String label, Optional<Place> origin) {
    /** Larger files are no films: a sheet of 700 x 1,000 mm at 1,440 to the inch, one bit a pixel and not packed, takes 270 MB. */
    private static final long MOST_BYTES = 1L << 29;

    /** Kinds of files, the one that is read first: outlines before pixels. */
    private static final List<String> PREFERENCE = List.of("svg", "svgz", "pdf", "tif", "tiff", "png");

    /** The kind of its file: the earlier, the rather it is read. Files of formats from elsewhere come last. */
    int preference() {
        int at = PREFERENCE.indexOf(ending(file).replace("svgz", "svg").replace("tiff", "tif"));
        return at < 0 ? PREFERENCE.size() : at;
    }

    boolean isOneOfMany() {
        return count > 1;
    }

    Film read(FilmReader reader, Ink ink) throws IOException {
        if (format.isEmpty()) {
            return reader.read(file, ink);
        }
        FilmDrawing drawing =
                format.get().open(name(), content(file)).get(index).read();
        return reader.read(
                origin.map(corner -> drawing.at(corner.x(), corner.y())).orElse(drawing), ink);
    }

    static byte[] content(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new ArtworkException(
                    String.valueOf(file.getFileName()),
                    Source.UNKNOWN,
                    "it has more than " + (MOST_BYTES >> 20) + " MiB.",
                    "Output it packed, or with one bit a pixel.");
        }
        return Files.readAllBytes(file);
    }

    /** Of a file's name, in small letters; empty if it has none. */
    static String ending(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.substring(name.lastIndexOf('.') + 1);
    }

    String name() {
        return String.valueOf(file.getFileName());
    }

    /** As a job file names it: {@code films.pdf#3}. */
    String inJob() {
        return isOneOfMany() ? name() + "#" + (index + 1) : name();
    }

    /** As in {@code films.pdf, 3 of 8 (red)}. */
    String nameInFolder() {
        return name() + which();
    }

    private String which() {
        return (isOneOfMany() ? ", " + (index + 1) + " of " + count : "") + (label.isEmpty() ? "" : " (" + label + ")");
    }

    /** With its folder. */
    @Override
    public String toString() {
        return file + which();
    }
}
