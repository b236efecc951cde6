package inkstrata.film;

import inkstrata.measure.Frame;
import inkstrata.planar.Corners;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import java.util.List;

/**
 * A film of pixels without what is due to pixels alone.
 *
 * <p>An edge that lies between the middles of two pixels may be drawn anywhere between them, and a part thinner than a pixel may be lost. So what a
 * film has more or less than was planned, and is no wider than a pixel at any place, says nothing about the film, and is taken as it was
 * planned. What is wider stays as it was read.
 */
public final class Sharpening {
    /** An L whose arms are one wide holds a disc of that radius, 1 / (1 + 1 / sqrt 2): both sides of a corner may be off. */
    private static final double CORNER = 0.5858;

    /** Curves are followed to 5 µm, on the film and in the drawing, in millimetres. */
    private static final double CURVES_MM = 0.006;

    private Sharpening() {}

    /**
     * Sharpens it; one with drawn outlines stays as it is.
     *
     * @param planned what it is to print
     * @param frame of the picture
     */
    public static Film of(Film film, Region planned, Frame frame) {
        if (film.blurMm() == 0 || film.picture().equals(planned)) {
            return film;
        }
        double half = CORNER * film.blurMm() + CURVES_MM;
        CoverMap both = CoverMap.of(frame, List.of(film.picture(), planned));
        Region more = wide(both.where(cover -> cover.get(0) && !cover.get(1)), half);
        Region less = wide(both.where(cover -> !cover.get(0) && cover.get(1)), half);
        if (more.isEmpty() && less.isEmpty()) {
            return film.withPicture(planned);
        }
        return film.withPicture(CoverMap.of(frame, List.of(planned, more, less))
                .where(cover -> (cover.get(0) || cover.get(1)) && !cover.get(2)));
    }

    /** Those parts that discs of a radius fit into, with their corners. */
    private static Region wide(Region difference, double radius) {
        return Region.of(difference.polygons().stream()
                .map(Region::of)
                .filter(piece -> mayHold(piece, radius))
                .map(piece -> {
                    Region core = piece.shrunk(radius);
                    return core.isEmpty() ? core : piece.intersection(core.grown(2 * radius, Corners.ROUND));
                })
                .filter(piece -> !piece.isEmpty())
                .toList());
    }

    /** False only if no disc fits in: by its box, its area, and how wide it is across its longest line. */
    private static boolean mayHold(Region piece, double radius) {
        Frame box = piece.bounds().orElseThrow();
        return Math.min(box.width(), box.height()) > 2 * radius
                && piece.areaMm2() > Math.PI * radius * radius
                && Across.widthMm(piece) > 2 * radius;
    }
}
