package inkstrata.positive.page.read;

import inkstrata.artwork.Area;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** Paths as areas in millimetres. */
final class PdfOutline {
    private PdfOutline() {}

    /**
     * With the rule that the path's winding asks for.
     *
     * @param toMm from the path's units to millimetres on the page
     */
    static Area area(Path2D path, AffineTransform toMm) {
        return area(path, path.getWindingRule(), toMm);
    }

    /** @param winding as in {@link PathIterator} */
    static Area area(Shape path, int winding, AffineTransform toMm) {
        Outline.Builder outline = Outline.builder();
        double[] c = new double[6];
        boolean isOpen = false;
        double startX = 0;
        double startY = 0;
        for (PathIterator at = path.getPathIterator(toMm); !at.isDone(); at.next()) {
            int command = at.currentSegment(c);
            if (command == PathIterator.SEG_MOVETO) {
                startX = c[0];
                startY = c[1];
                isOpen = false;
                continue;
            }
            if (command == PathIterator.SEG_CLOSE) {
                isOpen = false;
                continue;
            }
            if (!isOpen) {
                outline.moveTo(startX, startY);
                isOpen = true;
            }
            switch (command) {
                case PathIterator.SEG_LINETO -> outline.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO -> outline.quadTo(c[0], c[1], c[2], c[3]);
                default -> outline.cubicTo(c[0], c[1], c[2], c[3], c[4], c[5]);
            }
        }
        return new Area(outline.build(), winding == PathIterator.WIND_EVEN_ODD ? FillRule.EVENODD : FillRule.NONZERO);
    }
}
