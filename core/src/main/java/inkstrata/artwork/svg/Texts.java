package inkstrata.artwork.svg;

import inkstrata.artwork.FillRule;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.SVGTextElementBridge;
import org.apache.batik.bridge.StrokingTextPainter;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.text.GVTAttributedCharacterIterator;
import org.w3c.dom.Element;
import org.w3c.dom.svg.SVGTransformable;

/**
 * Turns text into outlines (SVG 2, chapter 11) with Batik's layout.
 *
 * <p>Known limits: glyphs come from the fonts of this machine, on a grid of 1/3,072 of the font size; fonts that the file
 * brings along are not used.
 */
final class Texts {
    private final Reading reading;

    Texts(Reading reading) {
        this.reading = reading;
    }

    void paint(Element element, Scene scene, Source source, Canvas canvas) {
        TextNode node = laidOut(element);
        if (node.getAttributedCharacterIterator() == null) {
            return;
        }
        double unitMm = ShapePainter.largestScale(scene.toMm());
        double fillAlpha = ColourAlpha.of(element, "fill");
        double strokeAlpha = ColourAlpha.of(element, "stroke");
        int before = canvas.size();
        node.getTextPainter().paint(node, new ShapeRecorder(unitMm, (shape, paint, alpha, isStroke) -> {
            if (!(paint instanceof Color colour)) {
                throw reading.refusals()
                        .refuse(
                                source,
                                "this text is painted with a gradient or pattern, which a single film cannot hold.",
                                "Give the text one flat colour.");
            }
            double opacity = alpha * colour.getAlpha() / 255 * (isStroke ? strokeAlpha : fillAlpha);
            if (opacity > 0) {
                FlatPaint flat = new FlatPaint(Rgb.of(colour.getRGB() & 0xffffff), opacity);
                canvas.add(shape, FillRule.NONZERO, flat, scene, source);
            }
        }));
        if (canvas.size() > before) {
            noteFonts(element, node, source);
        }
    }

    /** All letters as one shape in the text's units; empty where there are none. */
    Optional<Shape> outline(Element element) {
        TextNode node = laidOut(element);
        return node.getAttributedCharacterIterator() == null
                ? Optional.empty()
                : Optional.ofNullable(node.getOutline());
    }

    /** Null where there are no letters. */
    Rectangle2D.Double box(Element element, AffineTransform transform) {
        return outline(element).map(shape -> TightBox.of(shape, transform)).orElse(null);
    }

    private TextNode laidOut(Element element) {
        LayoutOnly layout = new LayoutOnly();
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
        String asked = Style.value(element, SVGCSSEngine.FONT_FAMILY_INDEX).getCssText();
        reading.notes()
                .info(
                        source,
                        "text was turned into outlines with the font " + String.join(", ", used)
                                + "; the drawing asks for " + asked);
    }

    /** Lays text out without looking at its transform, clip, mask and filter, which the walk takes care of. */
    private static final class LayoutOnly extends SVGTextElementBridge {
        @Override
        protected AffineTransform computeTransform(SVGTransformable element, BridgeContext context) {
            return new AffineTransform();
        }

        @Override
        public void buildGraphicsNode(BridgeContext context, Element element, GraphicsNode node) {
            element.normalize();
            computeLaidoutText(context, element, node);
            elemTPI.clear();
        }
    }
}
