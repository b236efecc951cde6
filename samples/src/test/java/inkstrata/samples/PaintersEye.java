package inkstrata.samples;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.TranslucentGroup;
import inkstrata.colour.Rgb;
import inkstrata.measure.Place;
import java.awt.geom.Line2D;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What shows at one place of a drawing, by the definition: shapes from the lowest to the topmost, each inside its outline by
 * a count of windings (SVG 2, section 13.4.2) and inside all its clips, laid over what is there (Compositing and Blending 1,
 * section 5.1, source over), members of a group over each other first. The umpire where two programs disagree.
 */
final class PaintersEye {
    /** Chords a curve is cut into: on curves of 100 mm they stay within a micrometre. */
    private static final int CHORDS = 400;

    private PaintersEye() {}

    static Rgb colourAt(Artwork artwork, Rgb sheet, Place place) {
        return coloursAt(artwork, sheet, place, 0).iterator().next();
    }

    /** Every colour that shows if each outline may lie up to {@code hair} millimetres beside where it is drawn. */
    static Set<Rgb> coloursAt(Artwork artwork, Rgb sheet, Place place, double hair) {
        Set<Layer> seen = Set.of(Layer.of(sheet));
        for (FlatShape shape : artwork.shapes()) {
            Cover cover = cover(shape, place, hair);
            if (cover != Cover.NO) {
                Set<Layer> above = new HashSet<>();
                for (Layer layer : seen) {
                    Layer top = layer.leftFor(shape.group()).openedTo(shape.group());
                    above.add(top.covered(shape.colour(), shape.opacity()));
                    if (cover == Cover.MAYBE) {
                        above.add(top);
                    }
                }
                seen = above;
            }
        }
        return seen.stream()
                .map(layer -> layer.leftFor(Optional.empty()).colour())
                .collect(Collectors.toSet());
    }

    /** Whether something covers a place; the more, the later. */
    private enum Cover {
        NO,
        MAYBE,
        YES
    }

    private static Cover cover(FlatShape shape, Place place, double hair) {
        Cover least = cover(shape.area(), place, hair);
        for (Clip clip : shape.clips()) {
            if (least != Cover.NO) {
                least = min(least, cover(clip, place, hair));
            }
        }
        return least;
    }

    private static Cover cover(Clip clip, Place place, double hair) {
        return clip.parts().stream()
                .map(part -> cover(part, place, hair))
                .max(Comparator.naturalOrder())
                .orElse(Cover.NO);
    }

    private static Cover cover(Area area, Place place, double hair) {
        Windings windings = new Windings(place);
        area.outline().sendTo(windings);
        windings.close();
        if (windings.nearest < hair) {
            return Cover.MAYBE;
        }
        return area.rule().inside(windings.count) ? Cover.YES : Cover.NO;
    }

    private static Cover min(Cover a, Cover b) {
        return a.compareTo(b) < 0 ? a : b;
    }

    /**
     * What a group holds at a place, the sheet at the bottom.
     *
     * @param group it belongs to; none for the sheet
     * @param below what the group will be laid over
     * @param red of 255, multiplied by {@code alpha}
     * @param green likewise
     * @param blue likewise
     * @param alpha 0 to 1
     */
    private record Layer(
            Optional<TranslucentGroup> group,
            Optional<Layer> below,
            double red,
            double green,
            double blue,
            double alpha) {
        static Layer of(Rgb sheet) {
            return new Layer(Optional.empty(), Optional.empty(), 0, 0, 0, 0).covered(sheet, 1);
        }

        Layer covered(Rgb paint, double opacity) {
            return covered(paint.red() * opacity, paint.green() * opacity, paint.blue() * opacity, opacity);
        }

        private Layer covered(double aboveRed, double aboveGreen, double aboveBlue, double opacity) {
            double through = 1 - opacity;
            return new Layer(
                    group,
                    below,
                    aboveRed + red * through,
                    aboveGreen + green * through,
                    aboveBlue + blue * through,
                    opacity + alpha * through);
        }

        /** Closes every group that does not hold that one. */
        Layer leftFor(Optional<TranslucentGroup> next) {
            if (group.isEmpty() || isIn(group.get(), next)) {
                return this;
            }
            double share = group.get().opacity();
            return below.orElseThrow()
                    .covered(red * share, green * share, blue * share, alpha * share)
                    .leftFor(next);
        }

        /** Opens the groups from this one to that one. */
        Layer openedTo(Optional<TranslucentGroup> next) {
            if (next.equals(group)) {
                return this;
            }
            Layer outer = openedTo(next.orElseThrow().outer());
            return new Layer(next, Optional.of(outer), 0, 0, 0, 0);
        }

        private static boolean isIn(TranslucentGroup outer, Optional<TranslucentGroup> inner) {
            return inner.isPresent()
                    && (inner.get().equals(outer) || isIn(outer, inner.get().outer()));
        }

        Rgb colour() {
            return new Rgb((int) Math.round(red), (int) Math.round(green), (int) Math.round(blue));
        }
    }

    /**
     * Counts how often contours wind around a place, by the lines that cross the ray from it to the right, and measures how
     * near they come to it.
     */
    private static final class Windings implements CurveSink {
        private final Place place;
        private int count;
        private double nearest = Double.POSITIVE_INFINITY;
        private double startX;
        private double startY;
        private double x;
        private double y;

        Windings(Place place) {
            this.place = place;
        }

        void close() {
            if (x != startX || y != startY) {
                lineTo(startX, startY);
            }
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
            nearest = Math.min(nearest, Line2D.ptSegDist(x, y, toX, toY, place.x(), place.y()));
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
