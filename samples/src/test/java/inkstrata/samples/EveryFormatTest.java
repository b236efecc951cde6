package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.film.Film;
import inkstrata.film.FilmDrawing;
import inkstrata.film.FilmReader;
import inkstrata.film.FilmSheet;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.plan.Ink;
import inkstrata.plugin.FilmFormat;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.Splitter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Films of the samples in eight formats, read back: what is found is what is found in the plan itself, and nothing else. */
class EveryFormatTest {
    /** How a set is kept. */
    enum Kept {
        SVG,
        SVGZ,
        PAGES,
        PLATES,
        /** A file for each page. */
        PDF_EACH,
        TIFF,
        PNG,
        /** Twice as coarse, and packed otherwise. */
        PNG_600;

        private String formats() {
            return switch (this) {
                case SVG, SVGZ -> "svg";
                case PAGES, PDF_EACH -> "pdf";
                case PLATES -> "pdf-inks";
                case TIFF -> "tiff";
                case PNG, PNG_600 -> "png";
            };
        }
    }

    /** One with a film for the back of the sheet. */
    @ParameterizedTest
    @CsvSource({"blind, PAGES", "blind, PLATES", "blind, PNG_600"})
    void aSampleIsRight(String name, Kept kept) throws IOException {
        isRight(new Sample(name), kept);
    }

    static List<Sample> everySample() {
        return Sample.all();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("everySample")
    void everySampleIsRightInEveryFormat(Sample sample) throws IOException {
        for (Kept kept : Kept.values()) {
            isRight(sample, kept);
        }
    }

    private static void isRight(Sample sample, Kept kept) throws IOException {
        Plugins plugins = Press.plugins();
        String resolution = kept == Kept.PNG_600 ? "600" : "1440";
        String text = Files.readString(sample.job());
        String positive = "positive: {formats: " + kept.formats() + ", resolution: " + resolution + "}";
        Job job = JobReader.read(
                sample.job().toString(),
                text.contains("\nuse:")
                        ? text.replace("\nuse:", "\nuse:\n  " + positive)
                        : text + "\nuse: {" + positive + "}\n");
        Separator separator = new Separator(plugins);
        Separation planned = separator.separate(Press.read(sample), job);
        Map<String, byte[]> files = Press.files(planned, job, plugins);
        List<Optional<Film>> films = films(kept, files, planned, plugins.formats());
        assertThat(films)
                .as("%s as %s", sample, kept)
                .hasSameSizeAs(planned.plan().pulls());
        Inspection own = separator.compare(planned, asPlanned(planned, films), job);
        Inspection found = separator.compare(planned, films, job);
        assertThat(worse(found)).as("%s as %s", sample, kept).isEqualTo(worse(own));
        assertThat(found.verdict()).as("%s as %s", sample, kept).isEqualTo(own.verdict());
    }

    /** Films that hold just what was planned, with the marks of those that were read. */
    private static List<Optional<Film>> asPlanned(Separation planned, List<Optional<Film>> films) {
        List<Optional<Film>> exact = new ArrayList<>();
        for (int pull = 0; pull < films.size(); pull++) {
            exact.add(Optional.of(
                    films.get(pull).orElseThrow().withPicture(planned.printed().get(pull))));
        }
        return exact;
    }

    private static List<String> worse(Inspection inspection) {
        return inspection.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .map(finding -> finding.severity() + " " + finding.rule() + ": " + finding.measured())
                .toList();
    }

    private static List<Optional<Film>> films(
            Kept kept, Map<String, byte[]> files, Separation planned, List<FilmFormat> formats) throws IOException {
        FilmReader reader =
                new FilmReader(planned.table().sheet(), planned.artwork().frame());
        List<FilmDrawing> drawings = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            String name = file.getKey();
            boolean isFilm = name.matches("\\d.*") || name.equals("films.pdf") || name.equals("inks.pdf");
            if (isFilm && name.endsWith(".svg")) {
                byte[] svg = kept == Kept.SVGZ ? packed(file.getValue()) : file.getValue();
                drawings.add(FilmDrawing.of(
                        SvgReader.read(name, new ByteArrayInputStream(svg), ReadOptions.DEFAULT.keepingOrigin())));
            } else if (isFilm && kept == Kept.PDF_EACH) {
                for (byte[] page : pages(file.getValue())) {
                    sheets(formats, name, page).forEach(sheet -> drawings.add(sheet.read()));
                }
            } else if (isFilm) {
                List<FilmSheet> sheets = new ArrayList<>(sheets(formats, name, file.getValue()));
                // Plates lie as seen from the front; their names begin with their numbers.
                sheets.sort(Comparator.comparing(FilmSheet::label));
                for (FilmSheet sheet : sheets) {
                    drawings.add(placed(sheet.read(), name, files));
                }
            }
        }
        List<Optional<Film>> films = new ArrayList<>();
        for (FilmDrawing drawing : drawings) {
            Ink ink = planned.plan().pulls().get(films.size()).ink();
            films.add(Optional.of(reader.read(drawing, ink)));
        }
        return films;
    }

    /** Images do not say where they lie; the list of files does. */
    private static FilmDrawing placed(FilmDrawing drawing, String name, Map<String, byte[]> files) throws IOException {
        if (name.endsWith(".pdf")) {
            return drawing;
        }
        List<?> list = (List<?>) com.fasterxml
                .jackson
                .jr
                .ob
                .JSON
                .std
                .mapFrom(files.get("films.json"))
                .get("files");
        Map<?, ?> entry = list.stream()
                .map(each -> (Map<?, ?>) each)
                .filter(each -> name.equals(each.get("file")))
                .findFirst()
                .orElseThrow();
        return drawing.at(((Number) entry.get("xMm")).doubleValue(), ((Number) entry.get("yMm")).doubleValue());
    }

    private static List<FilmSheet> sheets(List<FilmFormat> formats, String name, byte[] content) {
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return formats.stream()
                .filter(format -> format.endings().contains(ending))
                .findFirst()
                .orElseThrow()
                .open(name, content);
    }

    private static List<byte[]> pages(byte[] pdf) throws IOException {
        List<byte[]> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDDocument page : new Splitter().split(document)) {
                try (page;
                        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
                    page.save(out);
                    pages.add(out.toByteArray());
                }
            }
        }
        return pages;
    }

    private static byte[] packed(byte[] svg) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            zip.write(svg);
        }
        return out.toByteArray();
    }
}
