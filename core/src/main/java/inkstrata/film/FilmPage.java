package inkstrata.film;

import inkstrata.artwork.Artwork;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Size;

/**
 * Where a film's page lies on the sheet.
 *
 * <p>A page whose user units start elsewhere than at 0, 0 says so itself. Else what is meant of it is the whole sheet, or the picture alone,
 * whichever is nearer to its size.
 *
 * @param sheet size of the sheet
 * @param picture where the picture lies on the film
 */
record FilmPage(Size sheet, Frame picture) {
    /** The page moved there, by whole grid steps. */
    Artwork place(FilmDrawing drawing) {
        Artwork page = drawing.page();
        Frame frame = page.frame();
        if (frame.x() != 0 || frame.y() != 0) {
            return page.movedBy(whole(frame.x()) - frame.x(), whole(frame.y()) - frame.y());
        }
        Frame meant = drawing.meant();
        boolean isSheet =
                misfit(meant, sheet.width(), sheet.height()) <= misfit(meant, picture.width(), picture.height());
        double x = whole((isSheet ? 0 : picture.x()) - meant.x());
        double y = whole((isSheet ? 0 : picture.y()) - meant.y());
        return x == 0 && y == 0 ? page : page.movedBy(x, y);
    }

    /** How far two sizes are apart, as ratios of sides. */
    private static double misfit(Frame frame, double width, double height) {
        return Math.abs(Math.log(frame.width() / width)) + Math.abs(Math.log(frame.height() / height));
    }

    private static double whole(double millimetres) {
        return Grid.millimetres(Grid.steps(millimetres));
    }
}
