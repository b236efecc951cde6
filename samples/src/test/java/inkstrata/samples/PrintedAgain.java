package inkstrata.samples;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.separation.FilmStack;
import inkstrata.separation.FilmStack.Comparison;
import inkstrata.separation.FilmStack.Difference;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;

/**
 * Films laid over each other by another program, beside the same program's picture of the drawing.
 *
 * @param svg the drawing's file
 * @param films in print order, with the sheet they are printed on
 * @param pixelsPerMm at which both were drawn
 * @param levels by which channels of two colours may differ and still be the same colour
 * @param comparison of the drawing and the films, one over the other, both drawn by jsvg
 */
record PrintedAgain(byte[] svg, Films films, double pixelsPerMm, int levels, Comparison comparison) {
    /** No two colours are joined and no strips closed, so that the print has exactly the drawing's. */
    private static final Job JOB = JobReader.read("", "merge: 0\nseam: 0 mm");

    /** A fifth of a pixel: the flatness of our curves, as much again for jsvg's, and its rounding to floats. */
    private static final double NEAR_MM = 0.03;

    /** How far an outline on a film may lie from the drawing's: 5 µm of flattening, then the grid. */
    private static final double FLAT_MM = 0.006;

    private static final int FINER = 5;

    /**
     * jsvg rounds colours to 255 levels wherever one translucent paint lies over another, we once at the end; opaque colours
     * are the same in both.
     */
    static final int ROUNDED = 2;

    /**
     * Films of an artwork without trap.
     *
     * @param svg the file that {@code artwork} was read from
     * @param pixelsPerMm chosen so that straight edges do not run through the middle of pixels
     */
    static PrintedAgain of(Artwork artwork, byte[] svg, double pixelsPerMm) throws IOException {
        boolean opaque = artwork.shapes().stream().allMatch(FlatShape::isOpaque);
        return of(Films.of(Press.files(artwork, JOB, Press.withoutShapers())), svg, opaque ? 0 : ROUNDED, pixelsPerMm);
    }

    static PrintedAgain of(Films films, byte[] svg, int levels, double pixelsPerMm) {
        BufferedImage drawing = FilmStack.drawing(svg, films.bare(), size(films), pixelsPerMm);
        BufferedImage print = FilmStack.print(films.films(), films.bare(), films.picture(), pixelsPerMm);
        return new PrintedAgain(svg, films, pixelsPerMm, levels, FilmStack.compare(drawing, print, levels));
    }

    /**
     * The differences that two drawings of the same thing need not have: nowhere within {@link #NEAR_MM} of the pixel's middle
     * has the drawing the colour that was printed there.
     *
     * <p>The others lie beside a border, where the pixel's middle falls on one side or the other, or on a part of the drawing
     * thinner than a pixel. Looked for in the drawing at five times as many pixels first, and where it is not seen there,
     * through the magnifying glass.
     */
    List<Difference> disagreements() {
        if (comparison.differences().isEmpty()) {
            return List.of();
        }
        BufferedImage fine = FilmStack.drawing(svg, films.bare(), size(films), FINER * pixelsPerMm);
        return comparison.differences().stream()
                .filter(difference -> !isBeside(fine, difference))
                .filter(difference -> Double.isInfinite(toColour(difference)))
                .toList();
    }

    /**
     * Those of {@link #disagreements} where the umpire does not see the colour that was printed, not even if every outline lay
     * a little beside where it is drawn.
     */
    List<Difference> faults(Artwork artwork) {
        return disagreements().stream()
                .filter(difference -> !mayShow(artwork, difference))
                .toList();
    }

    private boolean mayShow(Artwork artwork, Difference difference) {
        return PaintersEye.coloursAt(artwork, films.bare(), placeOf(difference), FLAT_MM).stream()
                .anyMatch(colour ->
                        FilmStack.isNear(colour.packed(), difference.printed().packed(), levels));
    }

    private double toColour(Difference difference) {
        return FilmStack.toColour(
                svg, films.bare(), size(films), placeOf(difference), difference.printed(), levels, NEAR_MM);
    }

    private static Size size(Films films) {
        return new Size(films.picture().width(), films.picture().height());
    }

    /** The middle of the pixel, from the picture's top left corner. */
    private Place placeOf(Difference difference) {
        return new Place((difference.x() + 0.5) / pixelsPerMm, (difference.y() + 0.5) / pixelsPerMm);
    }

    private boolean isBeside(BufferedImage fine, Difference difference) {
        int left = FINER * difference.x() + FINER / 2 - 1;
        int top = FINER * difference.y() + FINER / 2 - 1;
        for (int y = top; y < Math.min(top + 3, fine.getHeight()); y++) {
            for (int x = left; x < Math.min(left + 3, fine.getWidth()); x++) {
                if (FilmStack.isNear(fine.getRGB(x, y), difference.printed().packed(), levels)) {
                    return true;
                }
            }
        }
        return false;
    }
}
