package inkstrata.film;

import inkstrata.artwork.Artwork;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Size;

/**
 * Where a film's page lies on the sheet.
 *
 * <p>A page whose user units start elsewhere than at 0, 0 says so itself. Else it is the whole sheet, or the picture alone, whichever is
 * nearer to its size.
 *
 * @param sheet size of the sheet
 * @param picture where the picture lies on the film
 */
record FilmPage(Size sheet, Frame picture) {
    /** The page moved there, by whole grid steps. */
    Artwork place(Artwork page) {
        Frame frame = page.frame();
        if (frame.x() != 0 || frame.y() != 0) {
            return page.movedBy(whole(frame.x()) - frame.x(), whole(frame.y()) - frame.y());
        }
        boolean isSheet =
                misfit(frame, sheet.width(), sheet.height()) <= misfit(frame, picture.width(), picture.height());
        return isSheet ? page : page.movedBy(whole(picture.x()), whole(picture.y()));
    }

    /** How far two sizes are apart, as ratios of sides. */
    private static double misfit(Frame frame, double width, double height) {
        return Math.abs(Math.log(frame.width() / width)) + Math.abs(Math.log(frame.height() / height));
    }

    private static double whole(double millimetres) {
        return Grid.millimetres(Grid.steps(millimetres));
    }
}
