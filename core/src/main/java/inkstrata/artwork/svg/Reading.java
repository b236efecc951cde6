package inkstrata.artwork.svg;

import inkstrata.artwork.Source;
import inkstrata.artwork.TranslucentGroup;
import java.awt.geom.AffineTransform;
import java.util.Optional;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.BridgeContext;
import org.w3c.dom.Element;

/** What all parts of one reading share; not for several threads. */
final class Reading {
    private final BridgeContext context;
    private final Notes notes;
    private final Refusals refusals;
    private final References references;
    private final ClipBoxes clipBoxes = new ClipBoxes();
    private final Budget budget;
    private final ContextPaints contextPaints = new ContextPaints();
    private final double hostUnitMm;
    private final Paints paints;
    private final Uses uses;
    private final Texts texts;
    private final Boxes boxes;
    private final ReferenceBoxes referenceBoxes;
    private final Clips clips;
    private final Masks masks;
    private final Markers markers;
    private int groupCount;

    /**
     * @param hostUnitMm one px of the outermost viewport in millimetres on the sheet
     */
    Reading(SVGOMDocument document, Refusals refusals, double hostUnitMm) {
        this.context = SafeBridge.open(document);
        this.notes = refusals.notes();
        this.refusals = refusals;
        this.budget = new Budget(refusals.fileName());
        this.references = new References(document);
        this.hostUnitMm = hostUnitMm;
        this.paints = new Paints(references, refusals, notes, contextPaints);
        this.uses = new Uses(references, notes);
        this.texts = new Texts(this);
        this.boxes = new Boxes(this);
        this.referenceBoxes = new ReferenceBoxes(boxes, notes);
        this.clips = new Clips(this);
        this.masks = new Masks(this);
        this.markers = new Markers(this);
    }

    BridgeContext context() {
        return context;
    }

    Notes notes() {
        return notes;
    }

    Refusals refusals() {
        return refusals;
    }

    Budget budget() {
        return budget;
    }

    References references() {
        return references;
    }

    double hostUnitMm() {
        return hostUnitMm;
    }

    Paints paints() {
        return paints;
    }

    ContextPaints contextPaints() {
        return contextPaints;
    }

    Uses uses() {
        return uses;
    }

    Texts texts() {
        return texts;
    }

    Boxes boxes() {
        return boxes;
    }

    Clips clips() {
        return clips;
    }

    Masks masks() {
        return masks;
    }

    Markers markers() {
        return markers;
    }

    Canvas newCanvas() {
        return new Canvas(clipBoxes, budget);
    }

    TranslucentGroup openGroup(double opacity, Optional<TranslucentGroup> outer) {
        return new TranslucentGroup(groupCount++, opacity, outer);
    }

    /** The element with the layers around it as the walk has them, through references. */
    Source source(Element element, Scene scene) {
        return Elements.source(element, scene.inside(Elements.layer(element)).layers());
    }

    AffineTransform transform(Element element, Viewport viewport) {
        return Transforms.isTransformed(element)
                ? Transforms.of(element, referenceBoxes.of(element, viewport), notes)
                : new AffineTransform();
    }

    /** The outline of a shape element; what is wrong with its data is noted. */
    Optional<LocalPath> outline(Element element, Viewport viewport) {
        return BasicShapes.outline(element, viewport, complaint -> notes.warning(Elements.source(element), complaint));
    }
}
