package inkstrata.shop;

import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Layer;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.util.List;
import java.util.Optional;

/**
 * A layer of the picture as a drawing of its own that reaches as far as it is to be seen: what hides it is drawn into it as a hole.
 * Translucent paint above hides nothing.
 */
final class Uncovered {
    private final String name;
    private final Layer layer;
    private final Rgb hole;
    private Frame reach;

    /** @param hole paint that counts as none: the sheet's colour */
    Uncovered(String name, Layer layer, Rgb hole) {
        this.name = name;
        this.layer = layer;
        this.hole = hole;
    }

    /** Puts what a shape means for this drawing above it; lowest shapes come first. */
    void add(FlatShape shape, List<FlatShape> shapes) {
        Optional<Frame> box = shape.area().outline().controlBox();
        if (box.isEmpty()) {
            return;
        }
        if (Drawings.isIn(layer, shape)) {
            shapes.add(shape.in(name));
            reach = reach == null ? box.get() : around(reach, box.get());
        } else if (shape.drawing().isEmpty() && shape.isOpaque() && reach != null && meet(reach, box.get())) {
            shapes.add(new FlatShape(shape.area(), hole, 1, Optional.empty(), shape.clips(), shape.source(), name));
        }
    }

    private static Frame around(Frame one, Frame other) {
        double left = Math.min(one.x(), other.x());
        double top = Math.min(one.y(), other.y());
        return new Frame(
                left, top, Math.max(one.right(), other.right()) - left, Math.max(one.bottom(), other.bottom()) - top);
    }

    private static boolean meet(Frame one, Frame other) {
        return one.x() <= other.right()
                && other.x() <= one.right()
                && one.y() <= other.bottom()
                && other.y() <= one.bottom();
    }
}
