package inkstrata.artwork.svg;

import inkstrata.artwork.Clip;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Source;
import inkstrata.artwork.TranslucentGroup;
import inkstrata.measure.Frame;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.SVGUtilities;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.w3c.dom.Element;
import org.w3c.dom.css.CSSPrimitiveValue;

/**
 * Walks a drawing from its root and lays down flat shapes in paint order (SVG 2, section 3.3).
 *
 * <p>Batik computes styles and lays out text; outlines, transforms and clips are worked out here in 64-bit numbers, for
 * Batik's own tree holds 32-bit ones and forgets ids and lines.
 */
final class ArtworkWalk {
    private final Reading reading;
    private final Canvas canvas;
    private final ShapePainter painter;
    private final boolean whole;

    private ArtworkWalk(Reading reading, Canvas canvas, boolean whole) {
        this.reading = reading;
        this.canvas = canvas;
        this.painter = new ShapePainter(reading, canvas);
        this.whole = whole;
    }

    /**
     * All shapes of a drawing, in millimetres.
     *
     * @param document mended, its styles on its elements
     * @param frame where the picture lies
     * @param notes where it is said what was simplified
     * @throws inkstrata.artwork.ArtworkException if something cannot be held by film and is not to be left out
     */
    static List<FlatShape> walk(
            SVGOMDocument document, Frame frame, Notes notes, ReadOptions options, String fileName) {
        Element root = document.getDocumentElement();
        RootScale scale = RootScale.of(root, frame);
        Reading reading = new Reading(document, new Refusals(fileName, options.leaveOut(), notes), scale.hostUnitMm());
        Canvas canvas = reading.newCanvas();
        Scene scene = new Scene(scale.toMm(), scale.viewport(), List.of(), Optional.empty(), List.of());
        reading.context().openViewport(root, scale.viewport());
        new ArtworkWalk(reading, canvas, false).element(root, scene);
        reading.refusals().settle(canvas.size());
        return canvas.shapes();
    }

    /**
     * The shapes inside an element that is no part of the drawing itself, such as a marker or a mask; nothing is left out
     * of it: it is whole or refused.
     */
    static void inside(Element holder, Scene scene, Reading reading, Canvas canvas) {
        new ArtworkWalk(reading, canvas, true).children(holder, scene);
    }

    /** From inside an element to the units around it; {@code use} moves what it shows (SVG 2, section 5.6). */
    static AffineTransform ownTransform(Element element, Viewport viewport, Reading reading) {
        AffineTransform own = reading.transform(element, viewport);
        if (Elements.isSvg(element, "use")) {
            Lengths lengths = new Lengths(element, viewport);
            own.translate(lengths.across("x", 0), lengths.down("y", 0));
        }
        return own;
    }

    private void children(Element parent, Scene scene) {
        for (Element child = Elements.firstChild(parent); child != null; child = Elements.nextSibling(child)) {
            element(child, scene);
        }
    }

    private void element(Element element, Scene outer) {
        if (!Kind.of(element).isDrawn() || !applies(element) || !Style.isDisplayed(element)) {
            return;
        }
        AffineTransform own = ownTransform(element, outer.viewport(), reading);
        double opacity = Style.opacity(element);
        if (!(Math.abs(own.getDeterminant()) > 0) || opacity == 0) {
            return;
        }
        Scene scene = outer.transformed(own);
        Source source = reading.source(element, scene);
        int before = canvas.size();
        try {
            refuseEffects(element, source);
            List<Clip> clips = new ArrayList<>(reading.clips().of(element, scene, source));
            clips.addAll(reading.masks().of(element, scene, source));
            Scene clipped = scene.clippedBy(clips);
            if (opacity == 1) {
                content(element, clipped, source);
            } else {
                TranslucentGroup group = reading.openGroup(opacity, outer.group());
                content(element, clipped.inGroup(Optional.of(group)), source);
                canvas.fold(group, before);
                if (canvas.size() > before) {
                    reading.paints().noteOpacity("opacity", opacity, source);
                }
            }
        } catch (Refusals.LeftOut leftOut) {
            leaveOut(element, leftOut, before);
        } catch (Reach.Exceeded far) {
            leaveOut(element, tooFar(source), before);
        } catch (Strokes.TooManyDashes tooMany) {
            leaveOut(element, tooManyDashes(tooMany, source), before);
        }
        if (element instanceof LeanElement lean) {
            lean.forgetStyle();
        }
    }

    private void leaveOut(Element element, Refusals.LeftOut leftOut, int before) {
        if (whole) {
            throw leftOut;
        }
        canvas.takeBack(before);
        reading.refusals().leftOut(shapesIn(element));
    }

    /** How many shapes, texts, images and copies stand in an element; 1 for one that is one of them. */
    private static int shapesIn(Element element) {
        return switch (Kind.of(element)) {
            case SHAPE, TEXT, IMAGE, FOREIGN, USE -> 1;
            case GROUP, SVG, SWITCH ->
                Elements.children(element).stream()
                        .mapToInt(ArtworkWalk::shapesIn)
                        .sum();
            case NOTHING -> 0;
        };
    }

    private Refusals.LeftOut tooFar(Source source) {
        return reading.refusals()
                .refuse(
                        source,
                        String.format(
                                Locale.ROOT,
                                "it or its clip reaches more than %.0f km from the sheet.",
                                Reach.KILOMETRES),
                        "Mend its numbers and transforms, or take it out.");
    }

    private Refusals.LeftOut tooManyDashes(Strokes.TooManyDashes tooMany, Source source) {
        return reading.refusals()
                .refuse(
                        source,
                        String.format(
                                Locale.ROOT,
                                "its dashes are so short that there would be %.0f of them; %.0f are the limit.",
                                tooMany.count(),
                                Limits.DASHES),
                        "Lengthen the dashes in stroke-dasharray, or draw a solid line.");
    }

    private boolean applies(Element element) {
        return SVGUtilities.matchUserAgent(element, reading.context().getUserAgent());
    }

    private void refuseEffects(Element element, Source source) {
        if (Style.value(element, SVGCSSEngine.FILTER_INDEX).getPrimitiveType() == CSSPrimitiveValue.CSS_URI) {
            throw reading.refusals()
                    .refuse(
                            source,
                            "a filter changes this element, which a single film cannot hold.",
                            "Take the filter off, or draw its effect as shapes.");
        }
        String blend = element.getAttributeNS(null, "mix-blend-mode").trim();
        if (!blend.isEmpty() && !blend.equals("normal")) {
            throw reading.refusals()
                    .refuse(
                            source,
                            "mix-blend-mode is " + blend + ", which flat inks cannot do.",
                            "Set it to normal and draw the mixed colour as shapes.");
        }
    }

    private void content(Element element, Scene scene, Source source) {
        Scene inside = scene.inside(Elements.layer(element));
        switch (Kind.of(element)) {
            case SHAPE -> painter.paint(element, scene, source);
            case TEXT -> reading.texts().paint(element, scene, source, canvas);
            case GROUP -> children(element, inside);
            case SWITCH ->
                Elements.children(element).stream()
                        .filter(child -> Elements.isSvg(child) && applies(child))
                        .findFirst()
                        .ifPresent(child -> element(child, inside));
            case SVG -> svg(element, inside);
            case USE -> {
                try {
                    reading.uses().open(element).ifPresent(copy -> element(copy, inside));
                } finally {
                    reading.uses().close(element);
                }
            }
            default -> {
                if (Style.isVisible(element)) {
                    throw reading.refusals()
                            .refuse(
                                    source,
                                    Kind.of(element) == Kind.IMAGE
                                            ? "this is an image, which has no outlines."
                                            : "this is not SVG and has no outlines.",
                                    "Trace it into flat shapes, or take it out.");
                }
            }
        }
    }

    private void svg(Element element, Scene scene) {
        boolean outermost = element == element.getOwnerDocument().getDocumentElement();
        if (outermost) {
            children(element, scene);
            return;
        }
        Optional<NestedSvg> nested = NestedSvg.of(element, scene.viewport());
        if (nested.isEmpty()) {
            return;
        }
        Scene framed = Style.hidesOverflow(element)
                ? scene.clippedBy(List.of(Clips.rectangle(nested.get().frame(), scene.toMm())))
                : scene;
        reading.context().openViewport(element, nested.get().viewport());
        try {
            children(
                    element,
                    framed.transformed(nested.get().content())
                            .within(nested.get().viewport()));
        } finally {
            reading.context().closeViewport(element);
            reading.context().removeViewport(element);
        }
    }
}
