package inkstrata.film;

import inkstrata.artwork.Artwork;
import inkstrata.measure.Frame;

/**
 * What a file says that a film prints, before anybody asks where on the sheet it lies.
 *
 * @param page black, grey or clear on clear, in millimetres; its name is for messages. Where its frame starts elsewhere than at 0, 0 the file says
 *     itself that these are the sheet's coordinates
 * @param meant the part of the page that is the sheet, or the picture alone: the page's frame where the file says nothing else
 * @param blurMm outlines may lie that far from where they were meant, since the film is made of pixels: one pixel's side; 0 for drawn outlines
 * @param seenFromFront whether it is not mirrored for the back: one of several plates on a page, which shows the print as one looks at it
 */
public record FilmDrawing(Artwork page, Frame meant, double blurMm, boolean seenFromFront) {
    public FilmDrawing {
        if (!(blurMm >= 0)) {
            throw new IllegalArgumentException("blur " + blurMm + " mm is less than 0");
        }
    }

    /** One that is mirrored if it is for the back, as films are. */
    public FilmDrawing(Artwork page, Frame meant, double blurMm) {
        this(page, meant, blurMm, false);
    }

    /** One with drawn outlines, all of which is meant. */
    public static FilmDrawing of(Artwork page) {
        return new FilmDrawing(page, page.frame(), 0);
    }

    /** The same, its upper left corner at that place of the sheet; in the film's own view, if it is mirrored. */
    public FilmDrawing at(double xMm, double yMm) {
        Artwork moved = page.movedBy(xMm - page.frame().x(), yMm - page.frame().y());
        return new FilmDrawing(moved, moved.frame(), blurMm, seenFromFront);
    }
}
