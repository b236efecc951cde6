package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.planar.Corners;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What of a difference is wide enough to matter, in pieces, each with its true outline.
 *
 * <p>Slivers fall away, be they by themselves or along the edge of a piece: the difference is shrunk by half of what is too thin, and what is left
 * grows back twice as far within the difference.
 */
final class Pieces {
    private Pieces() {}

    /** The largest first. */
    static List<Region> of(Region difference, Frame frame) {
        List<Region> wide = difference.polygons().stream()
                .map(Region::of)
                .filter(piece -> piece.areaMm2() > Laid.THIN_MM / 4 * Laid.THIN_MM)
                .toList();
        Region core = Region.of(wide).shrunk(Laid.THIN_MM / 2);
        if (core.isEmpty()) {
            return List.of();
        }
        Region grown = core.grown(Laid.THIN_MM, Corners.MITRE);
        Region pieces = CoverMap.of(frame, List.of(grown, difference)).where(cover -> cover.cardinality() == 2);
        return pieces.polygons().stream()
                .map(Region::of)
                .filter(Pieces::isWide)
                .sorted((one, other) -> Double.compare(other.areaMm2(), one.areaMm2()))
                .toList();
    }

    static boolean isWide(Region piece) {
        return piece.areaMm2() > Laid.THIN_MM / 4 * Laid.THIN_MM
                && !piece.shrunk(Laid.THIN_MM / 2).isEmpty();
    }

    /** The polygons of a difference that hold some of these pieces. */
    static Region holding(Region difference, List<Region> pieces, Frame frame) {
        if (pieces.isEmpty()) {
            return Region.EMPTY;
        }
        List<Region> all =
                new ArrayList<>(difference.polygons().stream().map(Region::of).toList());
        int polygons = all.size();
        all.addAll(pieces);
        CoverMap laid = CoverMap.of(frame, all);
        BitSet holding = new BitSet();
        for (int number = 0; number < laid.count(); number++) {
            BitSet cover = laid.cover(number);
            int polygon = cover.nextSetBit(0);
            if (polygon >= 0 && polygon < polygons && cover.nextSetBit(polygons) >= 0) {
                holding.set(polygon);
            }
        }
        return Region.of(holding.stream().mapToObj(all::get).toList());
    }
}
