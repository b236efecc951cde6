package inkstrata.command;

import static inkstrata.command.AtTheCounter.drawing;
import static inkstrata.command.AtTheCounter.say;
import static inkstrata.command.AtTheCounter.write;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Films of every format pass their own check, are known whatever inks are called, and damaged ones are refused in words. */
class FilmFormatsTest {
    private static final String ALL =
            "use: {positive: {formats: [svg, pdf, pdf-inks, tiff, png], resolution: 600, tiles: A5}}";

    @TempDir
    private Path folder;

    private Path boats;
    private Path films;

    @BeforeEach
    void aDrawing() throws IOException {
        boats = write(folder.resolve("boats.svg"), drawing());
        films = folder.resolve("films");
    }

    @ParameterizedTest
    @ValueSource(strings = {"svg", "pdf", "pdf-inks", "tiff", "png"})
    void ourOwnSetsAreRight(String format) throws IOException {
        job("use: {positive: {formats: " + format + ", resolution: 600}}");
        say("separate", boats, "-o", films).isDone();
        isRight(say("check", boats, films));
    }

    @ParameterizedTest
    @ValueSource(strings = {"svg", "pdf", "tiff"})
    void soAreMirroredOnesForTheBack(String format) throws IOException {
        job("sheet: {size: 140 x 130 mm, print: back}\nartwork: {place: {x: 15 mm, y: 30 mm}}\n"
                + "use: {positive: {formats: " + format + ", resolution: 600}}");
        say("separate", boats, "-o", films).isDone();
        isRight(say("check", boats, films));
    }

    /** One ink on the back of the sheet, the others on its front. */
    @ParameterizedTest
    @ValueSource(strings = {"svg", "pdf", "pdf-inks", "png"})
    void soAreSetsForBothSides(String format) throws IOException {
        job("sheet: {size: 140 x 130 mm, hiding: 0.3}\nartwork: {place: {x: 15 mm, y: 30 mm}}\n"
                + "inks: [{name: rust, prints: \"#d2603f\", side: back}]\n"
                + "use: {positive: {formats: " + format + ", resolution: 600}}");
        say("separate", boats, "-o", films).isDone();
        isRight(say("check", boats, films));
    }

    @Test
    void allFormatsInOneFolderAreRightTogether() throws IOException {
        job(ALL);
        say("separate", boats, "-o", films).isDone();
        isRight(say("check", boats, films));
    }

    /** Outlines are read first, but what changed beside them is read too. */
    @Test
    void aFilmThatChangedBesideARightOneIsFound() throws IOException {
        job(ALL);
        say("separate", boats, "-o", films).isDone();
        Path red = films.resolve("02-red.png");
        Files.copy(third(), red, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        AtTheCounter check = say("check", boats, films);
        assertThat(check.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(check.out()).contains("02-red.png");
    }

    /** Tiles are passed over, but not in silence once they are no longer what was cut from the films. */
    @Test
    void aTileThatChangedIsSaid() throws IOException {
        job("artwork: {width: 300 mm}\nuse: {positive: {tiles: A4}}");
        say("separate", boats, "-o", films).isDone();
        isRight(say("check", boats, films));
        Path tile = films.resolve("tiles");
        try (Stream<Path> tiles = Files.list(tile)) {
            tile = tiles.filter(file -> file.toString().endsWith(".svg"))
                    .sorted()
                    .findFirst()
                    .orElseThrow();
        }
        Files.writeString(tile, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"60mm\" height=\"60mm\"/>");
        AtTheCounter check = say("check", boats, films);
        assertThat(check.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(check.out())
                .contains("(changed tiles): 1 tile is not as separate wrote them: tiles/" + tile.getFileName())
                .contains("Not ready: 1 error (changed tiles)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"films.pdf", "inks.pdf"})
    void pagesAndPlatesAreKnownByThemselves(String pdf) throws IOException {
        job(ALL);
        say("separate", boats, "-o", films).isDone();
        Path alone = Files.createDirectory(folder.resolve("alone"));
        Files.copy(films.resolve(pdf), alone.resolve("from elsewhere.pdf"));
        isRight(say("check", boats, alone));
    }

    @Test
    void theJobMayNameAPage() throws IOException {
        job(ALL);
        say("separate", boats, "-o", films).isDone();
        Path alone = Files.createDirectory(folder.resolve("alone"));
        Files.copy(films.resolve("films.pdf"), alone.resolve("set.pdf"));
        Path turned = write(folder.resolve("turned.yaml"), "films: {red: \"set.pdf#3\"}");
        AtTheCounter check = say("check", boats, alone, "--job", turned);
        assertThat(check.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(check.out()).contains("set.pdf, page 3 prints what");
        Path none = write(folder.resolve("none.yaml"), "films: {red: \"set.pdf#9\"}");
        say("check", boats, alone, "--job", none)
                .failsWith(ExitCode.COMMAND_AT_FAULT, "none.yaml", "set.pdf#9", "holds 3 films");
    }

    /** Greek, Cyrillic, Japanese, accents, slashes, and names that are alike once they are cut or reduced. */
    @ParameterizedTest
    @ValueSource(strings = {"svg", "pdf", "pdf-inks", "png"})
    void inksMayBeCalledAnything(String format) throws IOException {
        job("""
                inks:
                  - {name: "Охра / светлая", prints: "#f4d78c"}
                  - {name: "赤 い", prints: "#d2603f"}
                  - {name: "Bleu d'été (n° 2)", prints: "#14182c"}
                use: {positive: {formats: %s, resolution: 600}}
                """.formatted(format));
        say("separate", boats, "-o", films).isDone();
        isRight(say("check", boats, films));
        Files.delete(films.resolve("films.json"));
        isRight(say("check", boats, films));
    }

    @Test
    void inksThatDifferInLettersNoFileNameHasAreToldApart() throws IOException {
        job("""
                inks:
                  - {name: "красная", prints: "#f4d78c"}
                  - {name: "красный", prints: "#d2603f"}
                  - {name: "синий", prints: "#14182c"}
                """);
        say("separate", boats, "-o", films).isDone();
        isRight(say("check", boats, films));
        Files.delete(films.resolve("films.json"));
        isRight(say("check", boats, films));
    }

    @Test
    void aSetIsKnownByTheSizeItWasMadeAt() throws IOException {
        say("separate", boats, "-o", films, "--width", "45 mm").isDone();
        AtTheCounter check = say("check", boats, films).isDone();
        assertThat(check.said()).singleElement().asString().contains("45.00 mm wide (plan.json)", "not 60.00 mm");
        assertThat(check.out().lines().filter(line -> line.startsWith("error") || line.startsWith("warning")))
                .isEmpty();
        isRight(say("check", boats, films, "--width", "45 mm"));
        AtTheCounter other = say("check", boats, films, "--width", "50 mm");
        assertThat(other.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(other.out().lines().filter(line -> line.startsWith("error") || line.startsWith("warning")))
                .singleElement()
                .asString()
                .contains("picture size", "45.00 mm wide", "50.00 mm, as the command says");
    }

    @Test
    void andByTheInksItWasMadeWith() throws IOException {
        say("separate", boats, "-o", films, "--inks", "2").isDone();
        AtTheCounter check = say("check", boats, films).isDone();
        assertThat(check.said()).singleElement().asString().contains("2 inks at most (plan.json)");
        isRight(say("check", boats, films, "--inks", "2"));
    }

    @Test
    void filesThatAreCutOffAreRefused() throws IOException {
        job(ALL);
        say("separate", boats, "-o", films).isDone();
        for (String name : List.of("films.pdf", "inks.pdf", "02-red.tif", "02-red.png")) {
            byte[] whole = Files.readAllBytes(films.resolve(name));
            for (int part : new int[] {0, 3, 20, whole.length / 2}) {
                Path alone = Files.createDirectories(folder.resolve("cut"));
                Files.write(alone.resolve(name), java.util.Arrays.copyOf(whole, part));
                AtTheCounter check = say("check", boats, alone);
                assertThat(check.code())
                        .as("%s of %s bytes: %s", name, part, check.err())
                        .isEqualTo(ExitCode.ARTWORK_AT_FAULT);
                assertThat(check.said().stream().filter(line -> !line.contains("job file: ")))
                        .singleElement()
                        .asString()
                        .contains(name);
                Files.delete(alone.resolve(name));
            }
        }
    }

    @Test
    void filesThatAskForTooMuchAreRefused() throws IOException {
        Path alone = Files.createDirectory(folder.resolve("large"));
        Files.write(alone.resolve("red.png"), vastPng());
        say("check", boats, alone).failsWith(ExitCode.ARTWORK_AT_FAULT, "red.png", "100,000 x 100,000 pixels");
    }

    @Test
    void aPasswordIsAskedForInWords() throws IOException {
        job("use: {positive: {formats: pdf}}");
        say("separate", boats, "-o", films).isDone();
        Path alone = Files.createDirectory(folder.resolve("locked"));
        try (PDDocument document = Loader.loadPDF(films.resolve("films.pdf").toFile())) {
            document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
            document.save(alone.resolve("films.pdf").toFile());
        }
        say("check", boats, alone).failsWith(ExitCode.ARTWORK_AT_FAULT, "films.pdf", "password");
    }

    @Test
    void imagesWithoutTrueSizeAreRefused() throws IOException {
        Path alone = Files.createDirectory(folder.resolve("sizeless"));
        ImageIO.write(
                new BufferedImage(600, 400, BufferedImage.TYPE_BYTE_BINARY),
                "png",
                alone.resolve("red.png").toFile());
        say("check", boats, alone).failsWith(ExitCode.ARTWORK_AT_FAULT, "red.png", "how many pixels make an inch");
    }

    /** Smoothed edges are grey, and emulsion knows no grey; but each film is still the one it is. */
    @Test
    void greyPixelsAreAFault() throws IOException {
        job("use: {positive: {formats: png, resolution: 600}}");
        say("separate", boats, "-o", films).isDone();
        Path red = films.resolve("02-red.png");
        BufferedImage bits = ImageIO.read(red.toFile());
        BufferedImage grey = new BufferedImage(bits.getWidth(), bits.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = grey.createGraphics();
        pen.drawImage(bits, 0, 0, null);
        pen.dispose();
        grey.getRaster().setSample(bits.getWidth() / 2, bits.getHeight() / 2, 0, 100);
        Pngs.write(grey, 600, red);
        AtTheCounter check = say("check", boats, films);
        assertThat(check.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(check.out().lines().filter(line -> line.startsWith("error") || line.startsWith("warning")))
                .singleElement()
                .asString()
                .contains("grey paint", "02-red.png", "#646464");
    }

    /** A PNG of ten thousand million pixels: its head, and data that would unpack to a row. */
    private static byte[] vastPng() throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        int side = 100_000;
        chunk(png, "IHDR", new byte[] {
            0, 1, (byte) (side >> 8), (byte) side, 0, 1, (byte) (side >> 8), (byte) side, 1, 0, 0, 0, 0
        });
        chunk(png, "pHYs", new byte[] {0, 0, (byte) 0xdd, 0x75, 0, 0, (byte) 0xdd, 0x75, 1});
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (java.util.zip.DeflaterOutputStream out = new java.util.zip.DeflaterOutputStream(packed)) {
            out.write(new byte[12_501]);
        }
        chunk(png, "IDAT", packed.toByteArray());
        chunk(png, "IEND", new byte[0]);
        return png.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream png, String name, byte[] data) throws IOException {
        byte[] type = name.getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(type);
        sum.update(data);
        png.write(java.nio.ByteBuffer.allocate(4).putInt(data.length).array());
        png.write(type);
        png.write(data);
        png.write(java.nio.ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }

    private Path third() throws IOException {
        try (Stream<Path> all = Files.list(films)) {
            return all.filter(file -> file.getFileName().toString().matches("03-.*png"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private void job(String text) throws IOException {
        write(folder.resolve("boats.yaml"), text);
    }

    /** Nothing is found but what the drawing's own register allows, and nothing is said of files. */
    private static void isRight(AtTheCounter check) {
        assertThat(check.code()).as(check.err() + check.out()).isEqualTo(ExitCode.DONE);
        assertThat(Stream.concat(
                                check.out().lines(), check.said().stream().filter(line -> !line.contains("job file: ")))
                        .filter(line -> !line.startsWith("note")
                                && !line.startsWith("Pulls may be")
                                && !line.startsWith("Nothing to register")))
                .isEmpty();
    }
}
