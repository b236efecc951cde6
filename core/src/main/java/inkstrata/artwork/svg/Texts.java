package inkstrata.artwork.svg;

import inkstrata.artwork.FillRule;
import inkstrata.artwork.Source;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.StrokingTextPainter;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.text.GVTAttributedCharacterIterator;
import org.w3c.dom.Element;

/**
 * Turns text into outlines (SVG 2, chapter 11) with Batik's layout.
 *
 * <p>Known limits: glyphs come from the fonts of this machine, on a grid of 1/3,072 of the font size; fonts that the file
 * brings along are not used.
 */
final class Texts {
    /** Families that any font may stand for (CSS Fonts 4, section 2.1.3), as {@link #plain} has them. */
    private static final Set<String> GENERIC =
            Set.of("serif", "sans-serif", "cursive", "fantasy", "monospace", "system-ui", "math");

    private final Reading reading;
    private final TextGuides guides;

    Texts(Reading reading) {
        this.reading = reading;
        this.guides = new TextGuides(reading);
    }

    void paint(Element element, Scene scene, Source source, Canvas canvas) {
        TextNode node = laidOut(element, TextLayout.painted(reading.paints()), scene.viewport());
        if (node.getAttributedCharacterIterator() == null) {
            return;
        }
        double unitMm = ShapePainter.largestScale(scene.toMm());
        int before = canvas.size();
        node.getTextPainter().paint(node, new ShapeRecorder(unitMm, (shape, paint, alpha) -> {
            FlatPaint flat = ((LetterPaint) paint).flat();
            double opacity = alpha * flat.opacity();
            if (opacity > 0) {
                canvas.add(shape, FillRule.NONZERO, new FlatPaint(flat.colour(), opacity), scene, source);
            }
        }));
        if (canvas.size() > before) {
            noteFonts(element, node, source);
        }
    }

    /** All letters as one shape in the text's units; empty where there are none. */
    Optional<Shape> outline(Element element, Viewport viewport) {
        TextNode node = laidOut(element, TextLayout.plain(), viewport);
        return node.getAttributedCharacterIterator() == null
                ? Optional.empty()
                : Optional.ofNullable(node.getOutline());
    }

    /** Null where there are no letters. */
    Rectangle2D.Double box(Element element, AffineTransform transform, Viewport viewport) {
        return outline(element, viewport)
                .map(shape -> TightBox.of(shape, transform))
                .orElse(null);
    }

    private TextNode laidOut(Element element, TextLayout layout, Viewport viewport) {
        reading.budget().letters(element.getTextContent().length(), Elements.source(element));
        guides.give(element, viewport);
        try {
            TextNode node = (TextNode) layout.createGraphicsNode(reading.context(), element);
            layout.buildGraphicsNode(reading.context(), element, node);
            // Text runs are only made when the bounds are asked for.
            node.getPrimitiveBounds();
            return node;
        } catch (BridgeException fault) {
            throw faulty(fault);
        }
    }

    /** Batik throws this, and only this, where an attribute of the text or of what it refers to is at fault. */
    private RuntimeException faulty(BridgeException fault) {
        return reading.refusals()
                .refuse(
                        Elements.source(fault.getElement()),
                        "the text cannot be laid out: "
                                + fault.getMessage().lines().findFirst().orElse("") + ".",
                        "Mend the attribute, or turn the text into outlines.");
    }

    private void noteFonts(Element element, TextNode node, Source source) {
        Set<String> used = new TreeSet<>();
        for (Object run : node.getTextRuns()) {
            Object font = ((StrokingTextPainter.TextRun) run)
                    .getACI()
                    .getAttribute(GVTAttributedCharacterIterator.TextAttribute.GVT_FONT);
            used.add(font instanceof GVTFont known ? known.getFamilyName() : "an unknown font");
        }
        List<String> asked = Style.fonts(element);
        String fonts = String.join(", ", used);
        if (isAsFarAsAsked(used, asked)) {
            reading.notes().info(source, "text was turned into outlines with the font " + fonts);
        } else {
            reading.notes()
                    .warning(
                            source,
                            "the font " + asked.get(0) + " is not on this machine: text was drawn with " + fonts
                                    + " instead. Turn text into outlines in the drawing program, or install the font.");
        }
    }

    /** Whether the font that the drawing likes best was used, or it leaves the choice to us. */
    private static boolean isAsFarAsAsked(Set<String> used, List<String> asked) {
        return asked.isEmpty()
                || GENERIC.contains(plain(asked.get(0)))
                || used.stream().allMatch(font -> plain(font).equals(plain(asked.get(0))));
    }

    private static String plain(String font) {
        return font.replace(" ", "").toLowerCase(Locale.ROOT);
    }
}
