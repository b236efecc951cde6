package inkstrata.artwork.svg;

import inkstrata.artwork.Source;
import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.util.Optional;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.PaintServer;
import org.apache.batik.bridge.SVGTextElementBridge;
import org.apache.batik.css.engine.CSSStylableElement;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.text.TextPaintInfo;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Element;
import org.w3c.dom.svg.SVGTransformable;

/**
 * Batik's layout of one text, without its transform, clip, mask and filter, which the walk takes care of, and with the
 * paints that shapes would get.
 */
final class TextLayout extends SVGTextElementBridge {
    /** Null where only outlines are wanted. */
    private final Paints paints;

    private TextLayout(Paints paints) {
        this.paints = paints;
    }

    static TextLayout painted(Paints paints) {
        return new TextLayout(paints);
    }

    /** All letters black, whatever they are painted with. */
    static TextLayout plain() {
        return new TextLayout(null);
    }

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

    /** Batik's own version looks at fewer properties and misses, say, a {@code fill-opacity} of a part of the text. */
    @Override
    protected TextPaintInfo getTextPaintInfo(
            Element element, GraphicsNode node, TextPaintInfo around, BridgeContext context) {
        TextPaintInfo info = new TextPaintInfo(around);
        setBaseTextPaintInfo(info, element, node, context);
        boolean decorates = !((CSSStylableElement) element)
                .getComputedStyleMap(null)
                .isNullCascaded(SVGCSSEngine.TEXT_DECORATION_INDEX);
        if (decorates) {
            setDecorationTextPaintInfo(info, element);
        }
        return info;
    }

    @Override
    public void setBaseTextPaintInfo(TextPaintInfo info, Element element, GraphicsNode node, BridgeContext context) {
        boolean whole = Elements.isSvg(element, SVGConstants.SVG_TEXT_TAG);
        info.composite = whole ? AlphaComposite.SrcOver : CSSUtilities.convertOpacity(element);
        info.visible = Style.isVisible(element);
        info.fillPaint = Color.BLACK;
        info.strokePaint = null;
        info.strokeStroke = PaintServer.convertStroke(element);
        if (paints != null) {
            Source source = Elements.source(element);
            info.fillPaint = letterPaint("fill-opacity", paints.fill(element, source), source);
            info.strokePaint = letterPaint("stroke-opacity", paints.stroke(element, source), source);
        }
    }

    private Paint letterPaint(String property, Optional<FlatPaint> paint, Source source) {
        paint.ifPresent(flat -> paints.noteOpacity(property, flat.opacity(), source));
        return paint.map(LetterPaint::new).orElse(null);
    }
}
