package inkstrata.artwork.svg;

import inkstrata.artwork.stroke.StrokeStyle;
import inkstrata.artwork.stroke.Stroker;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** Strokes within bounds: none reaches too far, none falls into more dashes than anybody draws. */
final class Strokes {
    private Strokes() {}

    /**
     * The outline of a stroke.
     *
     * @param path in any unit
     * @param style of a width more than 0, in the path's unit
     * @param unitMm one unit of the path in millimetres on the sheet
     * @throws Reach.Exceeded if the path or its stroke reaches too far
     * @throws TooManyDashes if there would be more than {@link Limits#DASHES}
     */
    static Path2D.Double outline(Path2D.Double path, StrokeStyle style, double unitMm) {
        check(path, style, unitMm);
        if (style.isDashed()) {
            double count =
                    Stroker.length(path) / style.dashPeriod() * style.dashes().size();
            if (count > Limits.DASHES) {
                throw new TooManyDashes(count);
            }
        }
        return Stroker.outline(path, style, unitMm);
    }

    private static void check(Path2D.Double path, StrokeStyle style, double unitMm) {
        Reach.checked(style.width() * unitMm);
        Reach.checked(style.dashOffset() * unitMm);
        for (double dash : style.dashes()) {
            Reach.checked(dash * unitMm);
        }
        double[] c = new double[6];
        for (PathIterator i = path.getPathIterator(AffineTransform.getScaleInstance(unitMm, unitMm));
                !i.isDone();
                i.next()) {
            int segment = i.currentSegment(c);
            for (int k = 0; k < Outlines.NUMBERS[segment]; k++) {
                Reach.checked(c[k]);
            }
        }
    }

    /** Thrown through the element whose dashes are too short; who knows its place makes a refusal of it. */
    static final class TooManyDashes extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final double count;

        TooManyDashes(double count) {
            super("more than " + Limits.DASHES + " dashes", null, false, false);
            this.count = count;
        }

        double count() {
            return count;
        }
    }
}
