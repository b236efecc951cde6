package inkstrata.artwork.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.w3c.dom.Element;

/**
 * An svg element inside the drawing, or a symbol in use (SVG 2, section 8.2).
 *
 * @param frame what it shows, in the units around it
 * @param content from the units inside to the units around it
 * @param viewport what percentages inside refer to
 */
record NestedSvg(Rectangle2D.Double frame, AffineTransform content, Viewport viewport) {
    /** Empty if it has no size and so shows nothing. */
    static Optional<NestedSvg> of(Element element, Viewport around) {
        Lengths lengths = new Lengths(element, around);
        double x = lengths.across("x", 0);
        double y = lengths.down("y", 0);
        double width = lengths.across("width", around.width());
        double height = lengths.down("height", around.height());
        if (!(width > 0 && height > 0)) {
            return Optional.empty();
        }
        AffineTransform content = AffineTransform.getTranslateInstance(x, y);
        Optional<ViewBox> viewBox = ViewBox.of(element);
        Viewport inside = new Viewport(width, height);
        if (viewBox.isPresent()) {
            if (viewBox.get().isEmpty()) {
                return Optional.empty();
            }
            content.concatenate(viewBox.get().fit(width, height, element.getAttributeNS(null, "preserveAspectRatio")));
            inside = new Viewport(viewBox.get().width(), viewBox.get().height());
        }
        return Optional.of(new NestedSvg(new Rectangle2D.Double(x, y, width, height), content, inside));
    }
}
