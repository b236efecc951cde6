package inkstrata.planar;

import java.util.List;

/**
 * How many seams there are.
 *
 * @param count of them
 * @param lengthMm all together
 * @param widestMm the widest; 0 if there are none
 */
public record SeamTally(int count, double lengthMm, double widestMm) {
    /** Of those that were closed. */
    public static SeamTally closed(PlanarMap map) {
        return of(map.seams().stream().filter(Seam::closed).toList());
    }

    /** Of those that are a little too wide for that, and were kept. */
    public static SeamTally kept(PlanarMap map) {
        return of(map.seams().stream().filter(seam -> !seam.closed()).toList());
    }

    private static SeamTally of(List<Seam> seams) {
        return new SeamTally(
                seams.size(),
                seams.stream().mapToDouble(Seam::lengthMm).sum(),
                seams.stream().mapToDouble(Seam::widestMm).max().orElse(0));
    }
}
