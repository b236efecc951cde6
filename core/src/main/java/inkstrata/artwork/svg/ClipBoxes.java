package inkstrata.artwork.svg;

import inkstrata.artwork.Area;
import inkstrata.artwork.Clip;
import java.awt.geom.Rectangle2D;
import java.util.IdentityHashMap;
import java.util.Optional;

/** Remembers how far each clip reaches, so that most shapes need no look at its curves. */
final class ClipBoxes {
    private final IdentityHashMap<Clip, Boxes> known = new IdentityHashMap<>();

    /** Nothing shows outside this box; null if nothing shows at all. */
    Rectangle2D.Double reach(Clip clip) {
        return known.computeIfAbsent(clip, ClipBoxes::measure).reach;
    }

    /** Everything shows inside this box; null if no such box is known. */
    Rectangle2D.Double open(Clip clip) {
        return known.computeIfAbsent(clip, ClipBoxes::measure).open;
    }

    private static Boxes measure(Clip clip) {
        Rectangle2D.Double reach = null;
        Rectangle2D.Double open = null;
        for (Area part : clip.parts()) {
            Rectangle2D.Double box = Outlines.box(part.outline());
            if (box == null) {
                continue;
            }
            if (reach == null) {
                reach = new Rectangle2D.Double(box.x, box.y, box.width, box.height);
            } else {
                reach.add(box);
            }
            Optional<Rectangle2D.Double> rectangle = Outlines.rectangle(part.outline());
            if (rectangle.isPresent() && (open == null || area(rectangle.get()) > area(open))) {
                open = rectangle.get();
            }
        }
        return new Boxes(reach, open);
    }

    private static double area(Rectangle2D.Double box) {
        return box.width * box.height;
    }

    private record Boxes(Rectangle2D.Double reach, Rectangle2D.Double open) {}
}
