package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.jr.ob.JSON;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import inkstrata.plan.Side;
import inkstrata.report.Schemas;
import inkstrata.separation.Separation;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

class FilmFilesTest {
    private static final int PER_INCH = 72;

    @Test
    void eachFormatHasItsFiles() throws IOException {
        assertThat(films("svg")).containsExactly("01-sand.svg", "02-rot-blue.svg", "03-night.svg");
        assertThat(films("pdf")).containsExactly("films.pdf");
        assertThat(films("pdf-inks")).containsExactly("inks.pdf");
        assertThat(films("[tiff, png], resolution: 600"))
                .containsExactly(
                        "01-sand.tif",
                        "02-rot-blue.tif",
                        "03-night.tif",
                        "01-sand.png",
                        "02-rot-blue.png",
                        "03-night.png");
    }

    /** Of a sheet with an ink on its front and one on its back both plates lie as they are seen from the front; films do not. */
    @Test
    void platesForTheBackLieAsSeenFromTheFront() throws IOException {
        Separation both = PrintExample.onBothSides();
        Map<String, byte[]> files =
                PrintExample.written(both, JobReader.read("job.yaml", "use: {positive: {formats: [pdf, pdf-inks]}}"));
        try (PDDocument films = Loader.loadPDF(files.get("films.pdf"));
                PDDocument inks = Loader.loadPDF(files.get("inks.pdf"))) {
            BufferedImage page = new PDFRenderer(inks).renderImageWithDPI(0, PER_INCH, ImageType.RGB);
            assertThat(at(page, 60, 100)).as("front").isEqualTo(0x112233);
            assertThat(at(page, 140, 130)).as("back, as seen from the front").isEqualTo(0x224466);
            assertThat(at(page, 300 - 140, 130)).as("back, mirrored").isEqualTo(0xffffff);
            assertThat(at(page, 75, 105)).as("nearer to the eye").isEqualTo(0x112233);
            assertThat(page.getWidth() * 25.4 / PER_INCH).isCloseTo(300, within(0.3));
            BufferedImage back = new PDFRenderer(films).renderImageWithDPI(1, PER_INCH, ImageType.RGB);
            assertThat(at(back, 300 - 140, 130)).isZero();
            assertThat(at(back, 140, 130)).isEqualTo(0xffffff);
        }
        Map<String, Object> ledger = JSON.std.mapFrom(files.get("films.json"));
        assertThat((List<?>) ledger.get("files"))
                .filteredOn(entry -> ((Map<?, ?>) entry).get("file").equals("inks.pdf"))
                .singleElement()
                .satisfies(
                        entry -> assertThat(((Map<?, ?>) entry).get("widthMm")).isEqualTo(300));
    }

    private static int at(BufferedImage page, double xMm, double yMm) {
        return page.getRGB((int) (xMm * PER_INCH / 25.4), (int) (yMm * PER_INCH / 25.4)) & 0xffffff;
    }

    @Test
    void tilesHaveAFolderOfTheirOwnWithAMap() throws IOException {
        List<String> files = films("[svg, pdf], tiles: A3");
        assertThat(files)
                .startsWith("01-sand.svg", "02-rot-blue.svg", "03-night.svg", "films.pdf", "tiles/map.svg")
                .contains("tiles/01-sand-A1.svg", "tiles/03-night-B2.svg", "tiles.pdf")
                .hasSize(4 + 1 + 3 * 4 + 1);
    }

    @Test
    void aTileShowsWhatItsWindowHolds() throws IOException {
        Map<String, byte[]> files = written("svg, tiles: A3");
        String tile = new String(files.get("tiles/01-sand-B2.svg"), StandardCharsets.UTF_8);
        assertThat(tile)
                .contains("width=\"297mm\" height=\"420mm\" viewBox=\"224 312.5 297 420\"")
                .contains(
                        "<clipPath id=\"picture-window\"><rect x=\"245\" y=\"345\" width=\"255\" height=\"355\"/></clipPath>")
                .contains("<g id=\"picture\" fill-rule=\"evenodd\" clip-path=\"url(#picture-window)\">")
                .contains("tile B2 \u00b7 tide-mill, pull 1 of 3: sand")
                .doesNotContain("id=\"bar\"");
    }

    @Test
    void theLedgerHasEveryFileWithItsChecksum() throws IOException, NoSuchAlgorithmException {
        Map<String, byte[]> files = written("[svg, pdf], tiles: A3");
        Map<String, Object> ledger = JSON.std.mapFrom(files.get("films.json"));
        String schema = "/inkstrata/positive/films.schema.json";
        assertThat(Schemas.faults(schema, new String(files.get("films.json"), StandardCharsets.UTF_8)))
                .isEmpty();
        assertThat(Schemas.described(Path.of("docs/films.md"), "`films.json`:")).isEqualTo(Schemas.keys(schema));
        assertThat(ledger).containsEntry("format", 1).containsEntry("title", "tide-mill");
        List<?> entries = (List<?>) ledger.get("files");
        assertThat(entries).hasSize(files.size() - 1);
        for (Object each : entries) {
            Map<?, ?> entry = (Map<?, ?>) each;
            byte[] bytes = files.get((String) entry.get("file"));
            assertThat(entry.get("sha256"))
                    .isEqualTo(HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        }
        Map<?, ?> first = (Map<?, ?>) entries.get(0);
        assertThat(first.get("what")).isEqualTo("film");
        assertThat(first.get("ink")).isEqualTo("sand");
        assertThat(first.get("side")).isEqualTo("front");
        assertThat(first.get("widthMm")).isEqualTo(500);
    }

    @Test
    void formatsThatNobodyKnowsAreTheJobsFault() {
        refuses("svg, gif", "formats: 'gif' is none of svg, pdf, pdf-inks, tiff, png.");
        refuses("[]", "formats: there is none. Name one or several of svg, pdf, pdf-inks, tiff, png.");
        refuses(
                "tiff, resolution: 1200 dpi",
                "resolution: '1200 dpi' is not a number. Write it plainly, without a unit.");
        refuses("tiff, resolution: 300", "resolution: '300' is outside 600 to 2880.");
        refuses("tiff, resolution: 700.5", "resolution: '700.5' is not whole. Write a whole number.");
        refuses(
                "svg, tiles: A9",
                "tiles: 'A9' is too small: tiles need 148 mm both ways, for their overlaps and margins.");
        refuses("svg, tiles: large", "tiles: 'large' is not a size.");
    }

    private static void refuses(String formats, String why) {
        String list = formats.equals("svg, gif") ? "[svg, gif]" : formats;
        assertThatThrownBy(() -> written(list))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("mill.yaml:1: positive." + why);
    }

    /** What was written but for the overview, the plan and the ledger, in that order. */
    private static List<String> films(String formats) throws IOException {
        return written(formats).keySet().stream()
                .filter(name -> Stream.of("overview.svg", "overview.png", "plan.json", "films.json")
                        .noneMatch(name::equals))
                .toList();
    }

    private static Map<String, byte[]> written(String formats) throws IOException {
        Job job = JobReader.read("mill.yaml", "use: {positive: {formats: " + formats + "}}");
        return PrintExample.written(PrintExample.poster(Side.FRONT), job);
    }
}
