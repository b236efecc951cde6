package inkstrata.samples;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FlatShape;
import inkstrata.colour.Rgb;
import inkstrata.measure.Place;

/**
 * What shows at one place of an opaque drawing, by the definition: shapes from the lowest to the topmost, each inside its
 * outline by a count of windings (SVG 2, section 13.4.2) and inside all its clips. The umpire where two programs disagree.
 */
final class PaintersEye {
    /** Chords a curve is cut into: on curves of 100 mm they stay within a micrometre. */
    private static final int CHORDS = 400;

    private PaintersEye() {}

    static Rgb colourAt(Artwork artwork, Rgb sheet, Place place) {
        Rgb colour = sheet;
        for (FlatShape shape : artwork.shapes()) {
            if (isInside(shape.area(), place) && shape.clips().stream().allMatch(clip -> shows(clip, place))) {
                colour = shape.colour();
            }
        }
        return colour;
    }

    private static boolean shows(Clip clip, Place place) {
        return clip.parts().stream().anyMatch(part -> isInside(part, place));
    }

    private static boolean isInside(Area area, Place place) {
        Windings windings = new Windings(place);
        area.outline().sendTo(windings);
        windings.close();
        return area.rule().inside(windings.count);
    }

    /** Counts how often contours wind around a place, by the lines that cross the ray from it to the right. */
    private static final class Windings implements CurveSink {
        private final Place place;
        private int count;
        private double startX;
        private double startY;
        private double x;
        private double y;

        Windings(Place place) {
            this.place = place;
        }

        void close() {
            lineTo(startX, startY);
        }

        @Override
        public void moveTo(double newX, double newY) {
            close();
            startX = newX;
            startY = newY;
            x = newX;
            y = newY;
        }

        @Override
        public void lineTo(double toX, double toY) {
            if ((y <= place.y()) != (toY <= place.y())) {
                double crossing = x + (place.y() - y) / (toY - y) * (toX - x);
                if (crossing > place.x()) {
                    count += toY > y ? 1 : -1;
                }
            }
            x = toX;
            y = toY;
        }

        @Override
        public void quadTo(double x1, double y1, double toX, double toY) {
            cubicTo(
                    x + 2 * (x1 - x) / 3,
                    y + 2 * (y1 - y) / 3,
                    toX + 2 * (x1 - toX) / 3,
                    toY + 2 * (y1 - toY) / 3,
                    toX,
                    toY);
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
            double fromX = x;
            double fromY = y;
            for (int chord = 1; chord < CHORDS; chord++) {
                double t = (double) chord / CHORDS;
                lineTo(cubic(fromX, x1, x2, toX, t), cubic(fromY, y1, y2, toY, t));
            }
            lineTo(toX, toY);
        }

        private static double cubic(double p0, double p1, double p2, double p3, double t) {
            double s = 1 - t;
            return s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3;
        }
    }
}
