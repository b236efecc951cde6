package inkstrata.positive;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.plan.Side;
import inkstrata.planar.Region;
import inkstrata.planar.RegionExample;
import inkstrata.separation.FilmStack;
import inkstrata.separation.Separation;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.util.XMLResourceDescriptor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** What other programs make of a film: jsvg draws it, Batik measures it. */
class FilmDrawnTest {
    /** CSS Values and Units 4, section 6.2: 96 px make one inch of 25.4 mm. */
    private static final double MM_PER_PX = 25.4 / 96;

    @Test
    void theBarDrawnByJsvgIs100MmLong() throws IOException {
        String film = PrintExample.films(PrintExample.poster(Side.FRONT)).get(2);
        // The bar lies from 95 to 195 mm across and 61.5 to 64.5 mm down.
        int perMm = 200;
        BufferedImage upper = FilmStack.film(film.getBytes(UTF_8), new Frame(90, 61.9, 110, 0.2), perMm);
        BufferedImage lower = FilmStack.film(film.getBytes(UTF_8), new Frame(90, 62.9, 110, 0.2), perMm);
        int first = Integer.MAX_VALUE;
        int last = -1;
        int black = 0;
        for (int x = 0; x < upper.getWidth(); x++) {
            boolean isBlack = upper.getRGB(x, 20) != 0 || lower.getRGB(x, 20) != 0;
            black += isBlack ? 1 : 0;
            first = isBlack ? Math.min(first, x) : first;
            last = isBlack ? x : last;
        }
        assertThat((last + 1 - first) / (double) perMm).isCloseTo(100, within(0.01));
        assertThat(black / (double) perMm).as("without a gap").isCloseTo(100, within(0.01));
        assertThat(first / (double) perMm + 90).isCloseTo(95, within(0.01));
    }

    @Test
    void theBarIsRuledEvery10Mm() throws IOException {
        String film = PrintExample.films(PrintExample.poster(Side.FRONT)).get(0);
        BufferedImage row = FilmStack.film(film.getBytes(UTF_8), new Frame(90, 61.9, 110, 0.2), 100);
        StringBuilder rulings = new StringBuilder();
        for (int x = 1; x < row.getWidth(); x++) {
            if ((row.getRGB(x, 10) != 0) != (row.getRGB(x - 1, 10) != 0)) {
                rulings.append(Math.round((90 + x / 100.0) * 20) / 20.0).append(' ');
            }
        }
        assertThat(rulings.toString().strip()).isEqualTo("95.0 105.0 115.0 125.0 135.0 145.0 155.0 165.0 175.0 185.0");
    }

    @Test
    void barAndSheetMeasuredByBatikHaveTheirTrueSize() throws IOException {
        for (Side side : Side.values()) {
            for (String film : PrintExample.films(PrintExample.poster(side))) {
                Document document = document(film);
                BridgeContext context = built(document);
                Rectangle2D bar = bounds(context, child(document.getElementById("bar"), "path"));
                assertThat(bar.getWidth() * MM_PER_PX).isCloseTo(100, within(0.001));
                assertThat(context.getDocumentSize().getWidth() * MM_PER_PX).isCloseTo(500, within(0.001));
                assertThat(context.getDocumentSize().getHeight() * MM_PER_PX).isCloseTo(700, within(0.001));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "20, 20, 0, 0, 20, 20",
        "70, 70, 25, 25, 20, 20",
        "3, 3, 1, 1, 1, 1",
        "500, 700, 50, 75, 400, 550",
        "500, 700, 0, 0, 500, 700",
        "500, 700, 1, 690, 20, 5",
        "1400, 1000, 100, 100, 1200, 800",
        "500.1234, 300.3333, 12.3456, 7.7777, 301.0101, 200.2"
    })
    void nothingLiesInsideThePictureNorBeyondTheFilm(
            double width, double height, double x, double y, double pictureWidth, double pictureHeight)
            throws IOException {
        for (Side side : Side.values()) {
            Frame frame = new Frame(x, y, pictureWidth, pictureHeight);
            Separation print = PrintExample.print(new Size(width, height), frame, side, Region.EMPTY);
            Document document = document(PrintExample.films(print).get(0));
            BridgeContext context = built(document);
            double left = side == Side.BACK ? width - x - pictureWidth : x;
            Rectangle2D picture = new Rectangle2D.Double(left, y, pictureWidth, pictureHeight);
            Rectangle2D film = frame(document);
            NodeList all = document.getElementsByTagName("path");
            int drawn = 0;
            for (int i = 0; i < all.getLength(); i++) {
                Element element = (Element) all.item(i);
                if (!((Element) element.getParentNode()).getAttribute("id").equals("picture")) {
                    Rectangle2D bounds = onSheet(bounds(context, element), film);
                    assertThat(bounds.intersects(picture))
                            .as("%s in the picture", element.getTagName())
                            .isFalse();
                    assertThat(film.contains(bounds))
                            .as("%s %s on the film %s", element.getTagName(), bounds, film)
                            .isTrue();
                    drawn++;
                }
            }
            assertThat(drawn).isGreaterThanOrEqualTo(8 + 2 + 4 + 11 + 2);
        }
    }

    @Test
    void onlyBlackAndClearAreDrawn() throws IOException {
        String film = PrintExample.films(PrintExample.poster(Side.FRONT)).get(0);
        BufferedImage image = FilmStack.film(film.getBytes(UTF_8), new Frame(0, 0, 500, 700), 2);
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        assertThat(java.util.Arrays.stream(pixels).distinct().sorted().toArray())
                .containsExactly(0xff000000, 0);
    }

    @Test
    void thePictureIsBlackWhereTheRegionIs() throws IOException {
        Region region = RegionExample.of(
                RegionExample.polygon(RegionExample.rectangle(40, 40, 60, 40), RegionExample.rectangle(50, 50, 10, 10)),
                RegionExample.polygon(RegionExample.rectangle(52, 52, 4, 4)));
        String film = PrintExample.films(
                        PrintExample.print(new Size(150, 120), new Frame(30, 30, 90, 60), Side.FRONT, region))
                .get(0);
        BufferedImage image = FilmStack.film(film.getBytes(UTF_8), new Frame(30, 30, 90, 60), 10);
        int black = 0;
        for (int pixel : image.getRGB(0, 0, 900, 600, null, 0, 900)) {
            black += pixel != 0 ? 1 : 0;
        }
        assertThat(black / 100.0).isEqualTo(60 * 40 - 100 + 16).isEqualTo(region.areaMm2());
    }

    private static Document document(String film) throws IOException {
        return new SAXSVGDocumentFactory(XMLResourceDescriptor.getXMLParserClassName())
                .createDocument("film:", new StringReader(film));
    }

    private static BridgeContext built(Document document) {
        BridgeContext context = new BridgeContext(new UserAgentAdapter());
        context.setDynamicState(BridgeContext.STATIC);
        context.setDynamic(true);
        new GVTBuilder().build(context, document);
        return context;
    }

    private static Rectangle2D bounds(BridgeContext context, Element element) {
        GraphicsNode node = context.getGraphicsNode(element);
        return node.getGlobalTransform()
                .createTransformedShape(node.getPrimitiveBounds())
                .getBounds2D();
    }

    /** The film's own frame, as its viewBox says. */
    private static Rectangle2D frame(Document document) {
        String[] numbers = document.getDocumentElement().getAttribute("viewBox").split(" ", -1);
        return new Rectangle2D.Double(
                Double.parseDouble(numbers[0]),
                Double.parseDouble(numbers[1]),
                Double.parseDouble(numbers[2]),
                Double.parseDouble(numbers[3]));
    }

    private static Rectangle2D onSheet(Rectangle2D pixels, Rectangle2D film) {
        return new Rectangle2D.Double(
                pixels.getX() * MM_PER_PX + film.getX(),
                pixels.getY() * MM_PER_PX + film.getY(),
                pixels.getWidth() * MM_PER_PX,
                pixels.getHeight() * MM_PER_PX);
    }

    private static Element child(Element parent, String name) {
        List<Node> found = new java.util.ArrayList<>();
        NodeList children = parent.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            if (children.item(i).getNodeName().equals(name)) {
                found.add(children.item(i));
            }
        }
        assertThat(found).hasSize(1);
        return (Element) found.get(0);
    }
}
