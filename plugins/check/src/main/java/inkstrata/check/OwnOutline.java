package inkstrata.check;

import inkstrata.check.OutlinePoints.Point;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Affine;
import inkstrata.planar.Region;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Points along a film's own outline: how many of them lie where an outline was planned tells whether a film lies right, whatever it lacks.
 *
 * @param right evenly along it, those that lie on an outline that was planned
 * @param off likewise, the others
 * @param frame the picture's; where it cuts the film there are no points
 */
record OwnOutline(List<Spot> right, List<Spot> off, Frame frame) {
    private static final int POINTS = 600;

    /** So near to the frame, in millimetres, an outline is the frame's. */
    private static final double ON_FRAME_MM = 0.01;

    OwnOutline {
        right = List.copyOf(right);
        off = List.copyOf(off);
    }

    /**
     * Takes them.
     *
     * @param painted all that a film prints in the frame
     * @param targets what was planned; with its traps and without
     */
    static OwnOutline of(Region painted, List<Region> targets, double reachMm, Frame frame) {
        NearOutlines planned = new NearOutlines(targets, Grid.STEPS_PER_MM / 4.0);
        Map<Boolean, List<Spot>> spots = OutlinePoints.of(painted, POINTS).stream()
                .map(Point::spot)
                .filter(spot -> isWithin(frame, spot.place(), ON_FRAME_MM))
                .collect(Collectors.partitioningBy(spot ->
                        planned.nearest(spot, reachMm * Grid.STEPS_PER_MM).isPresent()));
        return new OwnOutline(spots.get(true), spots.get(false), frame);
    }

    boolean holdsAny() {
        return right.size() + off.size() > 0;
    }

    /** Of 1. */
    double shareThatLiesRight() {
        return (double) right.size() / Math.max(1, right.size() + off.size());
    }

    /**
     * How much of it lies on other outlines once the film is placed otherwise, of 1. If its size is off by the ratio of two units, what would lie outside
     * the frame is not asked: that is what belongs around the picture.
     */
    double share(NearOutlines outlines, Affine place, double reachMm) {
        boolean isSlip = UnitSlip.of(1 / place.scale()).isPresent();
        List<Place> there = Stream.concat(
                        right.stream().map(spot -> place.of(spot.place())),
                        off.stream()
                                .map(spot -> place.of(spot.place()))
                                .filter(at -> !isSlip || isWithin(frame, at, 0)))
                .toList();
        long near = there.stream()
                .map(at -> new Spot(at.x() * Grid.STEPS_PER_MM, at.y() * Grid.STEPS_PER_MM))
                .filter(spot ->
                        outlines.nearest(spot, reachMm * Grid.STEPS_PER_MM).isPresent())
                .count();
        return (double) near / Math.max(1, there.size());
    }

    private static boolean isWithin(Frame frame, Place at, double margin) {
        return at.x() > frame.x() + margin
                && at.y() > frame.y() + margin
                && at.x() < frame.right() - margin
                && at.y() < frame.bottom() - margin;
    }
}
