package inkstrata.artwork.svg;

import inkstrata.measure.Frame;
import java.awt.geom.AffineTransform;
import java.util.Optional;
import org.w3c.dom.Element;

/**
 * How the outermost svg element is fitted into the picture's frame.
 *
 * @param toMm from its user units to millimetres on the sheet
 * @param viewport what percentages inside refer to
 * @param hostUnitMm one px of the viewport around its viewBox, for strokes that do not scale (SVG 2, section 8.13)
 */
record RootScale(AffineTransform toMm, Viewport viewport, double hostUnitMm) {
    static RootScale of(Element root, Frame frame) {
        Optional<ViewBox> viewBox = ViewBox.of(root).filter(box -> !box.isEmpty());
        Viewport unknown = new Viewport(
                viewBox.map(ViewBox::width).orElse(100.0),
                viewBox.map(ViewBox::height).orElse(100.0));
        Lengths lengths = new Lengths(root, unknown);
        double width = positive(lengths.across("width", 0), unknown.width());
        AffineTransform toMm = AffineTransform.getTranslateInstance(frame.x(), frame.y());
        if (viewBox.isPresent()) {
            toMm.concatenate(
                    viewBox.get().fit(frame.width(), frame.height(), root.getAttributeNS(null, "preserveAspectRatio")));
            return new RootScale(toMm, unknown, frame.width() / width);
        }
        double unitMm = frame.width() / width;
        toMm.scale(unitMm, unitMm);
        return new RootScale(toMm, new Viewport(width, frame.height() / unitMm), unitMm);
    }

    private static double positive(double length, double otherwise) {
        return length > 0 ? length : otherwise;
    }
}
