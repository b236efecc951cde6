package inkstrata.artwork.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Gives each {@code textPath} a path of plain data to follow, for Batik follows {@code path} elements only and stops at the
 * first mistake in one; SVG 2, section 11.8.1 lets text follow every basic shape.
 */
final class TextGuides {
    private static final String NAME = "inkstrata-guide-";

    private final Reading reading;
    private final Map<Key, String> known = new HashMap<>();

    TextGuides(Reading reading) {
        this.reading = reading;
    }

    private record Key(Element shape, Viewport viewport) {}

    /** Changes the links of the text's paths; words whose shape has no outline are taken out with a note. */
    void give(Element text, Viewport viewport) {
        NodeList found = text.getElementsByTagNameNS(SVGConstants.SVG_NAMESPACE_URI, SVGConstants.SVG_TEXT_PATH_TAG);
        List<Element> textPaths = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            textPaths.add((Element) found.item(i));
        }
        for (Element textPath : textPaths) {
            String id = Style.fragment(Elements.href(textPath));
            if (id.startsWith(NAME)) {
                continue;
            }
            Optional<String> guide = reading.references().find(id).flatMap(shape -> guide(new Key(shape, viewport)));
            if (guide.isPresent()) {
                textPath.setAttributeNS(SVGConstants.XLINK_NAMESPACE_URI, "xlink:href", "#" + guide.get());
            } else {
                reading.notes()
                        .warning(
                                Elements.source(textPath),
                                "what it follows, #" + id + ", has no outline; its words are left out");
                textPath.getParentNode().removeChild(textPath);
            }
        }
    }

    private Optional<String> guide(Key key) {
        if (!known.containsKey(key)) {
            Optional<LocalPath> outline = reading.outline(key.shape(), key.viewport());
            if (outline.isEmpty()) {
                return Optional.empty();
            }
            known.put(key, add(outline.get(), reading.transform(key.shape(), key.viewport()), key.shape()));
        }
        return Optional.of(known.get(key));
    }

    private String add(LocalPath outline, AffineTransform transform, Element shape) {
        String id = NAME + known.size();
        Element guide = OpenSvgImplementation.guide(shape.getOwnerDocument());
        guide.setAttributeNS(null, "id", id);
        guide.setAttributeNS(null, "d", data(outline.path().getPathIterator(transform)));
        Element definitions = shape.getOwnerDocument().createElementNS(SVGConstants.SVG_NAMESPACE_URI, "defs");
        definitions.appendChild(guide);
        shape.getOwnerDocument().getDocumentElement().appendChild(definitions);
        return id;
    }

    private static String data(PathIterator at) {
        StringBuilder data = new StringBuilder();
        double[] c = new double[6];
        for (; !at.isDone(); at.next()) {
            int segment = at.currentSegment(c);
            data.append("MLQCZ".charAt(segment));
            int count = switch (segment) {
                case PathIterator.SEG_CUBICTO -> 6;
                case PathIterator.SEG_QUADTO -> 4;
                case PathIterator.SEG_CLOSE -> 0;
                default -> 2;
            };
            for (int i = 0; i < count; i++) {
                data.append(' ').append(c[i]);
            }
        }
        return data.toString();
    }
}
