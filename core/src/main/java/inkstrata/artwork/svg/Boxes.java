package inkstrata.artwork.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.w3c.dom.Element;

/** Object bounding boxes: of fills, without strokes, markers, clips and masks (SVG 2, section 8.10). */
final class Boxes {
    private final Reading reading;

    Boxes(Reading reading) {
        this.reading = reading;
    }

    /** The box in the element's own units; null if nothing has a place. */
    Rectangle2D.Double of(Element element, Viewport viewport) {
        return measure(element, new AffineTransform(), viewport);
    }

    /**
     * From the unit square to that box (SVG 2, section 8.10); empty where a side is 0.
     */
    Optional<AffineTransform> unitSquare(Element element, Viewport viewport) {
        Rectangle2D.Double box = of(element, viewport);
        if (box == null || box.width == 0 || box.height == 0) {
            return Optional.empty();
        }
        return Optional.of(new AffineTransform(box.width, 0, 0, box.height, box.x, box.y));
    }

    private Rectangle2D.Double measure(Element element, AffineTransform transform, Viewport viewport) {
        if (BasicShapes.isShape(element)) {
            Optional<LocalPath> path = reading.outline(element, viewport);
            return path.isEmpty() ? null : TightBox.of(path.get().path(), transform);
        }
        return switch (element.getLocalName()) {
            case "text" -> reading.texts().box(element, transform, viewport);
            case "use" -> {
                Optional<Element> copy = reading.uses().open(element);
                yield copy.isEmpty() ? null : child(copy.get(), transform, viewport);
            }
            case "svg" -> {
                Optional<NestedSvg> nested = NestedSvg.of(element, viewport);
                if (nested.isEmpty()) {
                    yield null;
                }
                AffineTransform inner = new AffineTransform(transform);
                inner.concatenate(nested.get().content());
                yield children(element, inner, nested.get().viewport());
            }
            case "g", "a", "switch" -> children(element, transform, viewport);
            default -> null;
        };
    }

    private Rectangle2D.Double children(Element parent, AffineTransform transform, Viewport viewport) {
        Rectangle2D.Double all = null;
        for (Element child : Elements.children(parent)) {
            if (Elements.isSvg(child) && Style.isDisplayed(child)) {
                Rectangle2D.Double box = child(child, transform, viewport);
                if (all == null) {
                    all = box;
                } else if (box != null) {
                    all.add(box);
                }
            }
        }
        return all;
    }

    private Rectangle2D.Double child(Element child, AffineTransform transform, Viewport viewport) {
        AffineTransform inner = new AffineTransform(transform);
        inner.concatenate(ArtworkWalk.ownTransform(child, viewport, reading));
        return measure(child, inner, viewport);
    }
}
