package inkstrata.artwork.svg;

import inkstrata.artwork.Area;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.artwork.TranslucentGroup;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers the shapes of a drawing in paint order; not for several threads. */
final class Canvas {
    /** A shape may stick out of a rectangular clip by this much and still count as inside: rounding of a few operations. */
    private static final double ROUNDING_MM = 1e-9;

    private final List<FlatShape> shapes = new ArrayList<>();
    private final ClipBoxes boxes;
    private final Budget budget;

    Canvas(ClipBoxes boxes, Budget budget) {
        this.boxes = boxes;
        this.budget = budget;
    }

    List<FlatShape> shapes() {
        return shapes;
    }

    int size() {
        return shapes.size();
    }

    /** Takes away what was added since there were so many. */
    void takeBack(int size) {
        shapes.subList(size, shapes.size()).clear();
    }

    /** Adds a shape given in the scene's user units, unless its clips hide it; clips that hide nothing of it are dropped. */
    void add(Shape shape, FillRule rule, FlatPaint paint, Scene scene, Source source) {
        add(shape, rule, false, paint, scene, source);
    }

    /** Adds what a stroke covers, likewise. */
    void addStroke(Shape shape, FlatPaint paint, Scene scene, Source source) {
        add(shape, FillRule.NONZERO, true, paint, scene, source);
    }

    private void add(Shape shape, FillRule rule, boolean byPen, FlatPaint paint, Scene scene, Source source) {
        Outline outline = Outlines.of(shape, scene.toMm());
        Rectangle2D.Double box = Outlines.box(outline);
        if (box == null || box.width == 0 || box.height == 0) {
            return;
        }
        List<Clip> clips = new ArrayList<>();
        for (Clip clip : scene.clips()) {
            Rectangle2D.Double reach = boxes.reach(clip);
            if (reach == null || apart(reach, box)) {
                return;
            }
            Rectangle2D.Double open = boxes.open(clip);
            if (open == null || !contains(open, box)) {
                clips.add(clip);
            }
        }
        budget.curves(outline.commandCount(), source);
        Area area = new Area(outline, rule, byPen);
        shapes.add(new FlatShape(area, paint.colour(), paint.opacity(), scene.group(), clips, source));
    }

    /**
     * Ends a group: if only one shape stands in it, the shape shines through by itself.
     *
     * @param from how many shapes there were when the group opened
     */
    void fold(TranslucentGroup group, int from) {
        if (shapes.size() != from + 1) {
            return;
        }
        FlatShape only = shapes.get(from);
        Optional<TranslucentGroup> its = only.group();
        if (its.isPresent() && its.get().number() == group.number()) {
            shapes.set(
                    from,
                    new FlatShape(
                            only.area(),
                            only.colour(),
                            only.opacity() * group.opacity(),
                            group.outer(),
                            only.clips(),
                            only.source()));
        }
    }

    private static boolean apart(Rectangle2D.Double a, Rectangle2D.Double b) {
        return a.getMaxX() <= b.x || b.getMaxX() <= a.x || a.getMaxY() <= b.y || b.getMaxY() <= a.y;
    }

    private static boolean contains(Rectangle2D.Double outer, Rectangle2D.Double inner) {
        return inner.x >= outer.x - ROUNDING_MM
                && inner.y >= outer.y - ROUNDING_MM
                && inner.getMaxX() <= outer.getMaxX() + ROUNDING_MM
                && inner.getMaxY() <= outer.getMaxY() + ROUNDING_MM;
    }
}
