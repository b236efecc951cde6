package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * An upright or level line at which a film ends in the midst of what it is to print.
 *
 * @param side beyond which nothing prints
 * @param atMm where the line lies, from the left edge of the sheet or from its top
 */
record Cut(Side side, double atMm) {
    /** Places nearer to the line than this, in millimetres, lie on it. */
    private static final double ON_IT_MM = 0.02;

    /**
     * Where a film ends that near to the border of what its ink shows in the drawing, it lacks a trap and was not cut: the closed strips of
     * 0.05 mm, and what lies on a line.
     */
    private static final double OWN_BORDER_MM = 0.05 + ON_IT_MM;

    /** The film ends there along so much of it, in millimetres, where the plan does not. */
    private static final double LEAST_MM = 0.08;

    private static final double NEARLY_ALL = 0.97;

    /** A side of the film. */
    enum Side {
        LEFT("left of"),
        RIGHT("right of"),
        TOP("above"),
        BOTTOM("below");

        private final String words;

        Side(String words) {
            this.words = words;
        }

        boolean isUpright() {
            return this == LEFT || this == RIGHT;
        }

        private double of(Frame frame) {
            return switch (this) {
                case LEFT -> frame.x();
                case RIGHT -> frame.right();
                case TOP -> frame.y();
                case BOTTOM -> frame.bottom();
            };
        }

        /** How far out something lies. */
        double out(double at) {
            return this == RIGHT || this == BOTTOM ? at : -at;
        }

        /** Likewise, in the units of the spot. */
        double out(Spot spot) {
            return out(isUpright() ? spot.x() : spot.y());
        }

        /** All of a frame that lies farther out than a line; none if nothing does. */
        Optional<Region> beyond(double line, Frame frame) {
            double inner = Math.min(Math.max(line, low(frame)), low(frame) + extent(frame));
            double left = this == LEFT || this == TOP ? inner - low(frame) : low(frame) + extent(frame) - inner;
            if (left < Laid.THIN_MM || left > extent(frame) - Laid.THIN_MM) {
                return Optional.empty();
            }
            double from = this == LEFT || this == TOP ? low(frame) : inner;
            Frame half = isUpright()
                    ? new Frame(from, frame.y(), left, frame.height())
                    : new Frame(frame.x(), from, frame.width(), left);
            return Optional.of(CoverMap.of(half, List.of(Region.EMPTY)).where(BitSet::isEmpty));
        }

        private double low(Frame frame) {
            return isUpright() ? frame.x() : frame.y();
        }

        private double extent(Frame frame) {
            return isUpright() ? frame.width() : frame.height();
        }

        private Side opposite() {
            return switch (this) {
                case LEFT -> RIGHT;
                case RIGHT -> LEFT;
                case TOP -> BOTTOM;
                case BOTTOM -> TOP;
            };
        }
    }

    /**
     * Those of a film: at most one on each side.
     *
     * @param planned what it is to print, with its traps
     * @param drawn the same without
     */
    static List<Cut> of(Region film, Region planned, Region drawn) {
        List<Cut> cuts = new ArrayList<>();
        Region wide = Region.of(film.polygons().stream()
                .map(Region::of)
                .filter(part -> part.areaMm2() > Laid.THIN_MM / 4 * part.perimeterMm())
                .toList());
        if (wide.isEmpty() || planned.isEmpty()) {
            return cuts;
        }
        Frame of = wide.bounds().orElseThrow();
        Frame to = planned.bounds().orElseThrow();
        for (Side side : Side.values()) {
            Cut cut = new Cut(side, side.of(of));
            if (side.out(side.of(to)) - side.out(cut.atMm) > Laid.THIN_MM && cut.endsInTheMidst(film, planned, drawn)) {
                cuts.add(cut);
            }
        }
        return cuts;
    }

    /** Whether nearly all of a piece lies there: on this side of the line it may run on along an edge that was thin already. */
    boolean isBeyond(Region piece) {
        Frame bounds = piece.bounds().orElseThrow();
        return side.out(side.opposite().of(bounds)) >= side.out(atMm) - Laid.THIN_MM
                || side.beyond(atMm, bounds).stream()
                        .anyMatch(half -> piece.intersection(half).areaMm2() > NEARLY_ALL * piece.areaMm2());
    }

    String words() {
        return String.format(
                Locale.ROOT,
                "%s a line %.2f mm from the sheet's %s",
                side.words,
                atMm,
                side.isUpright() ? "left edge" : "top");
    }

    private boolean endsInTheMidst(Region film, Region planned, Region drawn) {
        NearOutlines outlines = new NearOutlines(List.of(planned), Grid.STEPS_PER_MM / 4.0);
        NearOutlines borders = new NearOutlines(List.of(drawn), Grid.STEPS_PER_MM / 4.0);
        double length = 0;
        for (Ring ring : NearOutlines.rings(film)) {
            for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
                if (isOnIt(ring, i) && isOnIt(ring, j)) {
                    length += unplannedMm(new Stretch(ring.x(j), ring.y(j), ring.x(i), ring.y(i)), outlines, borders);
                }
            }
        }
        return length >= LEAST_MM;
    }

    /** Looked at piece by piece, each no longer than what lies on a line: a border that only crosses an edge does not make all of it planned. */
    private double unplannedMm(Stretch edge, NearOutlines outlines, NearOutlines borders) {
        if (edge.length() > ON_IT_MM * Grid.STEPS_PER_MM) {
            return unplannedMm(edge.firstHalf(), outlines, borders) + unplannedMm(edge.secondHalf(), outlines, borders);
        }
        boolean isPlanned = isAlong(outlines, edge, ON_IT_MM) || isAlong(borders, edge, OWN_BORDER_MM);
        return isPlanned ? 0 : edge.length() * Grid.STEP_MM;
    }

    /** Whether the nearest of the outlines, if one is that near, runs along the edge rather than across. */
    private boolean isAlong(NearOutlines outlines, Stretch edge, double millimetres) {
        Spot middle = edge.middle();
        return outlines.nearest(middle, millimetres * Grid.STEPS_PER_MM)
                .filter(near -> {
                    double x = Math.abs(near.x() - middle.x());
                    double y = Math.abs(near.y() - middle.y());
                    return side.isUpright() ? y <= x + 1 : x <= y + 1;
                })
                .isPresent();
    }

    private boolean isOnIt(Ring ring, int vertex) {
        double at = Grid.millimetres(side.isUpright() ? ring.x(vertex) : ring.y(vertex));
        return Math.abs(at - atMm) < ON_IT_MM / 4;
    }
}
