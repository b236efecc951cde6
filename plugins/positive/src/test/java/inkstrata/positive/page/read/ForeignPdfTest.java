package inkstrata.positive.page.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import inkstrata.artwork.ArtworkException;
import inkstrata.colour.Rgb;
import inkstrata.film.Film;
import inkstrata.film.FilmReader;
import inkstrata.film.FilmSheet;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.plan.Ink;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The same film as other programs write it into PDF, here by PDFBox: a square of 40 mm with a round hole, on a sheet of 100 x 80 mm. */
class ForeignPdfTest {
    private static final float K = 72 / 25.4f;
    private static final Frame PICTURE = new Frame(10, 10, 80, 60);
    private static final Sheet SHEET = new Sheet(new Size(100, 80), Rgb.WHITE, Side.FRONT);

    /** How a program writes. */
    private enum Hand {
        /** DeviceCMYK, black alone. */
        BLACK_INK,
        /** A hole painted white over it, in DeviceRGB. */
        WHITE_OVER_BLACK,
        /** A rectangle as large as the page behind a clip. */
        CLIP,
        /** A form that is placed and scaled. */
        FORM,
        /** A thick line around, drawn as a stroke: a square of 38 mm in 2 mm, and a fill inside it. */
        STROKE,
        /** A page turned by 90 degrees. */
        TURNED,
        /** A user unit of 2/72 inch, and a media box that starts elsewhere. */
        UNITS,
        /** A Separation with the colorant All. */
        ALL
    }

    @ParameterizedTest
    @EnumSource(Hand.class)
    void theSameFilmIsRead(Hand hand) throws IOException {
        byte[] pdf = written(hand);
        List<FilmSheet> sheets = new PdfFilms().open("film.pdf", pdf);
        assertThat(sheets).hasSize(1);
        Film film = new FilmReader(SHEET, PICTURE).read(sheets.get(0).read(), Ink.ordinary("black", Rgb.BLACK));
        assertThat(film.stains()).isEmpty();
        assertThat(film.around().isEmpty()).isTrue();
        assertThat(film.picture().areaMm2()).isCloseTo(1600 - Math.PI * 100, offset(0.2));
        Frame bounds = film.picture().bounds().orElseThrow();
        assertThat(bounds.x()).isCloseTo(20, offset(0.001));
        assertThat(bounds.y()).isCloseTo(15, offset(0.001));
        assertThat(bounds.width()).isCloseTo(40, offset(0.001));
        assertThat(bounds.height()).isCloseTo(40, offset(0.001));
        assertThat(film.picture().covers(new Place(40, 35))).isFalse();
        assertThat(film.picture().covers(new Place(22, 17))).isTrue();
    }

    @Test
    void platesThatDoNotOverprintKnockOut() throws IOException {
        for (boolean overprints : new boolean[] {true, false}) {
            byte[] pdf = plates(overprints);
            List<FilmSheet> sheets = new PdfFilms().open("plates.pdf", pdf);
            assertThat(sheets).extracting(FilmSheet::label).containsExactly("rust", "Ночь");
            Film rust = new FilmReader(SHEET, PICTURE).read(sheets.get(0).read(), Ink.ordinary("rust", Rgb.BLACK));
            assertThat(rust.picture().areaMm2()).isCloseTo(overprints ? 1600 : 1200, offset(0.2));
        }
    }

    @Test
    void halfATintIsGrey() throws IOException {
        Film film = film(content -> {
            content.setNonStrokingColor(0f, 0f, 0f, 0.5f);
            content.addRect(20 * K, 25 * K, 10 * K, 10 * K);
            content.fill();
        });
        assertThat(film.stains()).singleElement().satisfies(stain -> {
            assertThat(stain.region().areaMm2()).isCloseTo(100, offset(0.01));
            assertThat(stain.shade()).isEqualTo(new Rgb(128, 128, 128));
        });
    }

    @Test
    void pagesHaveTheirLabels() throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.addPage(page());
            document.addPage(page());
            PDPageLabels labels = new PDPageLabels(document);
            for (int page = 0; page < 2; page++) {
                PDPageLabelRange range = new PDPageLabelRange();
                range.setPrefix(page == 0 ? "sand" : "night");
                labels.setLabelItem(page, range);
            }
            document.getDocumentCatalog().setPageLabels(labels);
            assertThat(new PdfFilms().open("set.pdf", saved(document)))
                    .extracting(FilmSheet::label)
                    .containsExactly("sand", "night");
        }
    }

    @Test
    void whatNoFilmCanShowIsRefused() throws IOException {
        assertThatThrownBy(() -> film(content -> {
                    PDExtendedGraphicsState state = new PDExtendedGraphicsState();
                    COSDictionary mask = new COSDictionary();
                    mask.setItem(COSName.S, COSName.LUMINOSITY);
                    state.getCOSObject().setItem(COSName.SMASK, mask);
                    content.setGraphicsStateParameters(state);
                    content.addRect(20 * K, 25 * K, 10 * K, 10 * K);
                    content.fill();
                }))
                .isInstanceOf(ArtworkException.class)
                .hasMessageContaining("which no film can show");
    }

    /** A stream of zeros that unpacks to sixteen thousand million bytes, a thousandth of that in the file. */
    @Test
    void streamsThatUnpackWithoutEndAreRefused() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = page();
            document.addPage(page);
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (java.util.zip.DeflaterOutputStream out = new java.util.zip.DeflaterOutputStream(packed)) {
                byte[] spaces = new byte[1 << 20];
                java.util.Arrays.fill(spaces, (byte) ' ');
                for (int i = 0; i < 1200; i++) {
                    out.write(spaces);
                }
            }
            org.apache.pdfbox.pdmodel.common.PDStream stream = new org.apache.pdfbox.pdmodel.common.PDStream(document);
            try (java.io.OutputStream out = stream.getCOSObject().createRawOutputStream()) {
                out.write(packed.toByteArray());
            }
            stream.getCOSObject().setItem(COSName.FILTER, COSName.FLATE_DECODE);
            page.setContents(stream);
            byte[] pdf = saved(document);
            assertThat(pdf.length).isLessThan(4 << 20);
            assertThatThrownBy(() -> new PdfFilms().open("bomb.pdf", pdf))
                    .isInstanceOf(ArtworkException.class)
                    .hasMessageContaining("bomb.pdf", "more than any film");
        }
    }

    private interface Painting {
        void on(PDPageContentStream content) throws IOException;
    }

    private static Film film(Painting painting) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = page();
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                painting.on(content);
            }
            FilmSheet sheet = new PdfFilms().open("film.pdf", saved(document)).get(0);
            return new FilmReader(SHEET, PICTURE).read(sheet.read(), Ink.ordinary("black", Rgb.BLACK));
        }
    }

    private static PDPage page() {
        return new PDPage(new PDRectangle(100 * K, 80 * K));
    }

    private static byte[] saved(PDDocument document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    private static byte[] written(Hand hand) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = page();
            document.addPage(page);
            float unit = K;
            if (hand == Hand.TURNED) {
                page.setMediaBox(new PDRectangle(80 * K, 100 * K));
                page.setRotation(90);
            }
            if (hand == Hand.UNITS) {
                unit = K / 2;
                page.setUserUnit(2);
                page.setMediaBox(new PDRectangle(-30, 40, 100 * unit, 80 * unit));
            }
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                if (hand == Hand.TURNED) {
                    // Shown turned clockwise: what is drawn along y goes to the right.
                    content.transform(new Matrix(0, 1, -1, 0, 80 * K, 0));
                }
                if (hand == Hand.UNITS) {
                    content.transform(Matrix.getTranslateInstance(-30, 40));
                }
                draw(hand, document, content, unit);
            }
            return saved(document);
        }
    }

    private static void draw(Hand hand, PDDocument document, PDPageContentStream content, float unit)
            throws IOException {
        switch (hand) {
            case BLACK_INK, TURNED, UNITS -> {
                content.setNonStrokingColor(0f, 0f, 0f, 1f);
                square(content, unit);
                hole(content, unit);
                content.fillEvenOdd();
            }
            case WHITE_OVER_BLACK -> {
                content.setNonStrokingColor(0f, 0f, 0f);
                square(content, unit);
                content.fill();
                content.setNonStrokingColor(1f, 1f, 1f);
                hole(content, unit);
                content.fill();
            }
            case CLIP -> {
                square(content, unit);
                hole(content, unit);
                content.clipEvenOdd();
                content.addRect(-5, -5, 100 * unit, 100 * unit);
                content.fill();
            }
            case FORM -> {
                PDFormXObject form = new PDFormXObject(document);
                form.setBBox(new PDRectangle(0, 0, 500, 500));
                form.setResources(new PDResources());
                try (java.io.OutputStream out = form.getContentStream().createOutputStream()) {
                    out.write(("0 0 0 1 k 20 25 40 40 re 50 45 m 50 50.522847 45.522847 55 40 55 c"
                                    + " 34.477153 55 30 50.522847 30 45 c 30 39.477153 34.477153 35 40 35 c"
                                    + " 45.522847 35 50 39.477153 50 45 c h f*")
                            .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
                }
                content.saveGraphicsState();
                content.transform(new Matrix(AffineTransform.getScaleInstance(unit, unit)));
                content.drawForm(form);
                content.restoreGraphicsState();
            }
            case STROKE -> {
                content.setStrokingColor(new PDColor(new float[] {0, 0, 0, 1}, PDDeviceCMYK.INSTANCE));
                content.setLineWidth(2 * unit);
                content.addRect(21 * unit, 26 * unit, 38 * unit, 38 * unit);
                content.stroke();
                content.addRect(21 * unit, 26 * unit, 38 * unit, 38 * unit);
                hole(content, unit);
                content.fillEvenOdd();
            }
            case ALL -> {
                PDColorSpace all = separation("All");
                content.setNonStrokingColor(new PDColor(new float[] {1}, all));
                square(content, unit);
                hole(content, unit);
                content.fillEvenOdd();
            }
        }
    }

    /** 20 mm from the left, 15 mm from the top. */
    private static void square(PDPageContentStream content, float unit) throws IOException {
        content.addRect(20 * unit, 25 * unit, 40 * unit, 40 * unit);
    }

    /** A radius of 10 mm, in four cubics. */
    private static void hole(PDPageContentStream content, float unit) throws IOException {
        float c = 10 * 0.5522847f;
        content.moveTo(50 * unit, 45 * unit);
        content.curveTo(50 * unit, (45 + c) * unit, (40 + c) * unit, 55 * unit, 40 * unit, 55 * unit);
        content.curveTo((40 - c) * unit, 55 * unit, 30 * unit, (45 + c) * unit, 30 * unit, 45 * unit);
        content.curveTo(30 * unit, (45 - c) * unit, (40 - c) * unit, 35 * unit, 40 * unit, 35 * unit);
        content.curveTo((40 + c) * unit, 35 * unit, 50 * unit, (45 - c) * unit, 50 * unit, 45 * unit);
        content.closePath();
    }

    /** A square of rust, and over a quarter of it one of another. */
    private static byte[] plates(boolean overprints) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = page();
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                PDExtendedGraphicsState state = new PDExtendedGraphicsState();
                state.setNonStrokingOverprintControl(overprints);
                content.setGraphicsStateParameters(state);
                content.setNonStrokingColor(new PDColor(new float[] {1}, separation("rust")));
                square(content, K);
                content.fill();
                content.setNonStrokingColor(new PDColor(new float[] {1}, separation("Ночь")));
                content.addRect(20 * K, 25 * K, 20 * K, 20 * K);
                content.fill();
            }
            return saved(document);
        }
    }

    private static PDColorSpace separation(String colorant) throws IOException {
        COSDictionary tint = new COSDictionary();
        tint.setInt(COSName.FUNCTION_TYPE, 2);
        tint.setItem(COSName.DOMAIN, numbers(0, 1));
        tint.setItem(COSName.C0, numbers(0));
        tint.setItem(COSName.C1, numbers(1));
        tint.setItem(COSName.N, COSInteger.ONE);
        COSArray space = new COSArray();
        space.add(COSName.SEPARATION);
        space.add(COSName.getPDFName(colorant));
        space.add(COSName.DEVICEGRAY);
        space.add(tint);
        return new PDSeparation(space, null);
    }

    private static COSArray numbers(float... values) {
        COSArray numbers = new COSArray();
        for (float value : values) {
            numbers.add(new COSFloat(value));
        }
        return numbers;
    }
}
