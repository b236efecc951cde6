package inkstrata.positive.page.read;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.film.FilmDrawing;
import inkstrata.film.FilmSheet;
import inkstrata.plugin.FilmFormat;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/**
 * Reads films from PDF (ISO 32000-1): a page is a film, unless it is painted with several named colorants; then each of these is one. A page with several plates shows the print: those for
 * the back lie as they are seen from the front.
 *
 * <p>Outlines are read as outlines. A page is painted once, when the file is opened, and what was painted is kept.
 */
public final class PdfFilms implements FilmFormat {
    /** Pages that are looked at; nobody prints from so many screens. */
    private static final int MOST_PAGES = 500;

    /** The end-of-file marker (ISO 32000-1, 7.5.5) lies within so many bytes of the end. */
    private static final int TAIL = 1024;

    /** What the library has to say of damaged files goes into our own message; kept here, since loggers nobody holds forget their level. */
    private static final List<Logger> SILENT =
            List.of(Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"));

    static {
        SILENT.forEach(logger -> logger.setLevel(Level.OFF));
    }

    @Override
    public String id() {
        return "pdf-films";
    }

    @Override
    public String description() {
        return "reads films from pages and plates of PDF, for check";
    }

    @Override
    public List<String> endings() {
        return List.of("pdf");
    }

    @Override
    public List<FilmSheet> open(String file, byte[] content) {
        requireEnd(file, content);
        try (PDDocument document = Loader.loadPDF(content)) {
            PdfBounds.check(document);
            int pages = document.getNumberOfPages();
            if (pages > MOST_PAGES) {
                throw new ArtworkException(
                        file,
                        Source.UNKNOWN,
                        pages + " pages are more than anybody's films.",
                        "Give it " + MOST_PAGES + " pages at most.");
            }
            String[] labels = labels(document, pages);
            List<FilmSheet> sheets = new ArrayList<>();
            for (int page = 0; page < pages; page++) {
                PdfPage place = PdfPage.of(document.getPage(page));
                String name = pages == 1 ? file : file + ", page " + (page + 1);
                PdfMarks.Painted painted = painted(name, document, page, place);
                List<String> plates = plates(painted.marks());
                if (plates.isEmpty()) {
                    sheets.add(new Sheet(name, page + 1, labels[page], place, painted, false, PdfFilms::page));
                }
                for (int plate = 0; plate < plates.size(); plate++) {
                    String colorant = plates.get(plate);
                    String label = plates.size() == 1 && !labels[page].isEmpty() ? labels[page] : colorant;
                    sheets.add(new Sheet(
                            name + ", plate " + colorant,
                            plates.size() == 1 ? page + 1 : plate + 1,
                            label,
                            place,
                            painted,
                            plates.size() > 1,
                            mark -> mark.paint().on(colorant)));
                }
            }
            return sheets;
        } catch (ArtworkException fault) {
            throw fault;
        } catch (InvalidPasswordException locked) {
            throw faultWith(file, "it asks for a password.", "Save it without one.", locked);
        } catch (PdfMarks.TooMuchException tooMuch) {
            throw faultWith(file, "it asks for more than any film.", "Output plain black areas.", tooMuch);
        } catch (PixelContours.TooManyException tooMany) {
            throw Refused.tooFine(file, tooMany);
        } catch (OutOfMemoryError tooLarge) {
            throw Refused.tooLarge(file, tooLarge);
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            throw Refused.broken(file, "PDF", broken);
        }
    }

    /** The library mends what was cut off; a film that lacks something must not pass for one. */
    private static void requireEnd(String file, byte[] content) {
        int tail = Math.min(content.length, TAIL);
        String end = new String(content, content.length - tail, tail, StandardCharsets.ISO_8859_1);
        if (!end.contains("%%EOF")) {
            throw new ArtworkException(
                    file, Source.UNKNOWN, "it is no PDF, or its end is missing.", "Output it again.");
        }
    }

    private static PdfMarks.Painted painted(String name, PDDocument document, int page, PdfPage place)
            throws IOException {
        try {
            return PdfMarks.of(document.getPage(page), place.toMm());
        } catch (UnsupportedOperationException nothingForFilms) {
            throw faultWith(
                    name,
                    "it holds " + nothingForFilms.getMessage() + ", which no film can show.",
                    "Turn it into plain areas before it is output.",
                    nothingForFilms);
        }
    }

    private static ArtworkException faultWith(String name, String wrong, String mend, Throwable cause) {
        ArtworkException fault = new ArtworkException(name, Source.UNKNOWN, wrong, mend);
        fault.initCause(cause);
        return fault;
    }

    /** Labels that say more than a page's number; empty where there are none. */
    private static String[] labels(PDDocument document, int pages) throws IOException {
        String[] labels = new String[pages];
        PDPageLabels given = document.getDocumentCatalog().getPageLabels();
        String[] all = given == null ? new String[0] : given.getLabelsByPageIndices();
        for (int page = 0; page < pages; page++) {
            String label = page < all.length && all[page] != null ? all[page].strip() : "";
            labels[page] = label.matches("[0-9ivxlcdmIVXLCDM]*") ? "" : label;
        }
        return labels;
    }

    /** Named colorants in the order in which they are painted first; inks of the process only beside others. */
    private static List<String> plates(List<PdfMark> marks) {
        Set<String> plates = new LinkedHashSet<>();
        Set<String> process = new LinkedHashSet<>();
        for (PdfMark mark : marks) {
            mark.paint().tints().forEach((colorant, tint) -> {
                if (tint > 0) {
                    (PdfColours.isProcess(colorant) ? process : plates).add(colorant);
                }
            });
        }
        if (!plates.isEmpty()) {
            plates.addAll(process);
        }
        return List.copyOf(plates);
    }

    private static Optional<Rgb> page(PdfMark mark) {
        return Optional.of(mark.paint().shade());
    }

    private record Sheet(
            String name,
            int number,
            String label,
            PdfPage place,
            PdfMarks.Painted painted,
            boolean seenFromFront,
            Function<PdfMark, Optional<Rgb>> shade)
            implements FilmSheet {
        @Override
        public FilmDrawing read() {
            List<FlatShape> shapes = painted.marks().stream()
                    .flatMap(mark -> shade.apply(mark).map(mark::in).stream())
                    .toList();
            return new FilmDrawing(
                    new Artwork(name, place.frame(), shapes, List.of()), place.trim(), painted.blurMm(), seenFromFront);
        }
    }
}
