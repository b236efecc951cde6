package inkstrata.positive.page;

import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;

/** Pages as one PDF document of true size (ISO 32000-1), without dates, the same bytes each time. */
public final class PdfFile {
    /** Of the two that may name a document; any number will do that is always the same. */
    private static final long DOCUMENT = 1;

    /**
     * One ink's areas.
     *
     * @param name of the colorant
     * @param swatch its colour on white
     * @param page what it prints
     */
    public record Plate(String name, Rgb swatch, Page page) {}

    private PdfFile() {}

    /** Writes one page for each, and closes the stream: black (DeviceGray 0) alone; the trim box is what {@link Page#trim()} says. */
    public static void write(String title, List<Page> pages, OutputStream out) throws IOException {
        try (PDDocument document = begin(title)) {
            for (Page page : pages) {
                PDPage sheet = sheet(document, page.frame(), page.trim());
                PDStream content = new PDStream(document);
                try (OutputStream operators = content.createOutputStream(COSName.FLATE_DECODE)) {
                    PdfContent.write(page, page.frame(), "0 g", operators);
                }
                sheet.setContents(content);
            }
            save(document, out);
        }
    }

    /**
     * Writes all plates on one page, and closes the stream: each in a Separation colour space of its own (ISO 32000-1, 8.6.6.4) with its swatch in sRGB
     * numbers as the alternate colour. All overprint (11.7.4): what a film leaves out is left out of its areas already, so a
     * plate never takes away from another.
     *
     * @param plates one or more, farthest from the eye first; their names differ
     */
    public static void writePlates(String title, List<Plate> plates, OutputStream out) throws IOException {
        try (PDDocument document = begin(title)) {
            Frame frame = frame(plates);
            PDPage sheet = sheet(document, frame, plates.get(0).page().trim());
            PDResources resources = new PDResources();
            PDExtendedGraphicsState over = new PDExtendedGraphicsState();
            over.setStrokingOverprintControl(true);
            over.setNonStrokingOverprintControl(true);
            over.setOverprintMode(1);
            resources.put(COSName.getPDFName("Over"), over);
            PDStream content = new PDStream(document);
            try (OutputStream operators = content.createOutputStream(COSName.FLATE_DECODE)) {
                for (int i = 0; i < plates.size(); i++) {
                    String ink = "Ink" + (i + 1);
                    resources.put(COSName.getPDFName(ink), separation(plates.get(i)));
                    PdfContent.write(plates.get(i).page(), frame, "/Over gs /" + ink + " cs 1 scn", operators);
                }
            }
            sheet.setResources(resources);
            sheet.setContents(content);
            save(document, out);
        }
    }

    /** The page that holds all plates. */
    public static Frame frame(List<Plate> plates) {
        return plates.stream()
                .map(plate -> plate.page().frame())
                .reduce(PdfFile::around)
                .orElseThrow();
    }

    private static Frame around(Frame one, Frame other) {
        double left = Math.min(one.x(), other.x());
        double top = Math.min(one.y(), other.y());
        return new Frame(
                left, top, Math.max(one.right(), other.right()) - left, Math.max(one.bottom(), other.bottom()) - top);
    }

    private static PDDocument begin(String title) {
        PDDocument document = new PDDocument();
        document.setDocumentId(DOCUMENT);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setProducer("Inkstrata");
        return document;
    }

    private static PDPage sheet(PDDocument document, Frame frame, Frame trim) {
        PDPage sheet = new PDPage(box(frame, frame));
        sheet.setTrimBox(box(trim, frame));
        sheet.setResources(new PDResources());
        document.addPage(sheet);
        return sheet;
    }

    /** In points from the page's lower left corner. */
    private static PDRectangle box(Frame box, Frame page) {
        double k = PdfContent.POINTS_PER_MM;
        return new PDRectangle(
                (float) ((box.x() - page.x()) * k),
                (float) ((page.bottom() - box.bottom()) * k),
                (float) (box.width() * k),
                (float) (box.height() * k));
    }

    private static PDColorSpace separation(Plate plate) throws IOException {
        COSDictionary tint = new COSDictionary();
        tint.setInt(COSName.FUNCTION_TYPE, 2);
        tint.setItem(COSName.DOMAIN, numbers(0, 1));
        tint.setItem(COSName.C0, numbers(1, 1, 1));
        tint.setItem(
                COSName.C1,
                numbers(
                        plate.swatch().red() / 255f,
                        plate.swatch().green() / 255f,
                        plate.swatch().blue() / 255f));
        tint.setItem(COSName.N, COSInteger.ONE);
        COSArray space = new COSArray();
        space.add(COSName.SEPARATION);
        space.add(COSName.getPDFName(plate.name()));
        space.add(COSName.DEVICERGB);
        space.add(tint);
        return PDColorSpace.create(space);
    }

    private static COSArray numbers(float... values) {
        COSArray numbers = new COSArray();
        for (float value : values) {
            numbers.add(new COSFloat(value));
        }
        return numbers;
    }

    private static void save(PDDocument document, OutputStream out) throws IOException {
        try (out) {
            document.save(out, CompressParameters.NO_COMPRESSION);
        }
    }
}
