package inkstrata.artwork.svg;

import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Element;

/**
 * The boxes that transforms refer to: {@code transform-box} (CSS Transforms 1, section 9).
 *
 * <p>For shapes and groups {@code content-box} is the box of the fill, and {@code border-box} that with the stroke. What a box of the fill holds is
 * measured once: boxes in boxes ask for it again and again.
 */
final class ReferenceBoxes {
    private final Boxes boxes;
    private final Notes notes;
    private final Map<Key, Rectangle2D> known = new HashMap<>();

    ReferenceBoxes(Boxes boxes, Notes notes) {
        this.boxes = boxes;
        this.notes = notes;
    }

    private record Key(Element element, Viewport viewport) {}

    Rectangle2D of(Element element, Viewport viewport) {
        String name = element.getAttributeNS(null, "transform-box").trim();
        return switch (name) {
            case "", "view-box" -> new Rectangle2D.Double(0, 0, viewport.width(), viewport.height());
            case "fill-box", "content-box" -> fill(element, viewport);
            case "stroke-box", "border-box" -> {
                notes.warning(
                        Elements.source(element),
                        "transform-box '" + name + "' is taken for fill-box: a stroke does not count");
                yield fill(element, viewport);
            }
            default -> {
                notes.warning(
                        Elements.source(element),
                        "transform-box '" + Declaration.shortened(name) + "' is not understood and was left out");
                yield new Rectangle2D.Double(0, 0, viewport.width(), viewport.height());
            }
        };
    }

    private Rectangle2D fill(Element element, Viewport viewport) {
        Key key = new Key(element, viewport);
        Rectangle2D box = known.get(key);
        if (box == null) {
            box = Optional.<Rectangle2D>ofNullable(boxes.of(element, viewport)).orElseGet(Rectangle2D.Double::new);
            known.put(key, box);
        }
        return box;
    }
}
