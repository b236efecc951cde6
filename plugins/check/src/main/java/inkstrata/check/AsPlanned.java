package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import java.util.List;

/**
 * A film as it was planned, but for what differs by more than its curves may.
 *
 * <p>A curve that is read from a film is followed to 5 µm, as it is in the drawing, but between other points. Along every curve that
 * leaves slivers thinner than both together, in which sheet would seem to show. They are no faults of the film.
 */
final class AsPlanned {
    /** Half of what a sliver may be wide, in millimetres: 5 µm of the film and 5 µm of the drawing, and rounding. */
    private static final double SLIVER_MM = 0.006;

    /** A piece with less area for each length of its outline, in millimetres, is a sliver at first sight. */
    private static final double AT_FIRST_SIGHT_MM = 0.001;

    private AsPlanned() {}

    static Region of(Region read, Region planned, Frame frame) {
        return read.equals(planned) ? planned : carriedOver(read, planned, planned, frame);
    }

    /** What was planned, with all that sets a film apart from what was expected of it. */
    static Region carriedOver(Region read, Region expected, Region planned, Frame frame) {
        return carriedOver(read, expected, planned, frame, 0);
    }

    /** @param leastMm2 smaller pieces set nothing apart: corners of what is spread may be round, cut off or run to a point */
    static Region carriedOver(Region read, Region expected, Region planned, Frame frame, double leastMm2) {
        CoverMap both = CoverMap.of(frame, List.of(read, expected));
        Region more = thick(both.where(cover -> cover.get(0) && !cover.get(1)), leastMm2);
        Region less = thick(both.where(cover -> !cover.get(0) && cover.get(1)), leastMm2);
        if (more.isEmpty() && less.isEmpty()) {
            return planned;
        }
        return CoverMap.of(frame, List.of(planned, more, less))
                .where(cover -> (cover.get(0) || cover.get(1)) && !cover.get(2));
    }

    /** The same with all that is neither black nor clear as it was planned: that is said by itself. */
    static Region without(Region stains, Region picture, Region planned, Frame frame) {
        return stains.isEmpty()
                ? picture
                : CoverMap.of(frame, List.of(picture, planned, stains))
                        .where(cover -> cover.get(2) ? cover.get(1) : cover.get(0));
    }

    private static Region thick(Region difference, double leastMm2) {
        return Region.of(difference.polygons().stream()
                .map(Region::of)
                .filter(piece -> piece.areaMm2() >= leastMm2
                        && piece.areaMm2() > AT_FIRST_SIGHT_MM * piece.perimeterMm()
                        && !piece.shrunk(SLIVER_MM).isEmpty())
                .toList());
    }
}
