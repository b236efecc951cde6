package inkstrata.shop;

import inkstrata.artwork.Artwork;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.plan.Sheet;
import java.util.Locale;

/** Where the picture lies on the sheet. */
final class SheetLayout {
    /** Room for marks on each side of a picture whose sheet nobody has named, in millimetres (common practice, no source). */
    static final double MARGIN_MM = 25;

    /** Such a sheet is at least as wide, so that the 100 mm bar has room (our own choice). */
    static final double LEAST_WIDTH_MM = 130;

    private SheetLayout() {}

    /**
     * The sheet the job names, or one with {@link #MARGIN_MM} around the picture, at least {@link #LEAST_WIDTH_MM} wide.
     *
     * @throws JobException if it is larger than the grid
     */
    static Sheet sheet(Artwork artwork, Job job) {
        Size size = job.sheet()
                .orElseGet(() -> new Size(
                        Math.max(LEAST_WIDTH_MM, artwork.frame().width() + 2 * MARGIN_MM),
                        artwork.frame().height() + 2 * MARGIN_MM));
        double largest = Grid.millimetres(Grid.LIMIT - 1);
        if (size.width() > largest || size.height() > largest) {
            throw new JobException(
                    job.file(),
                    0,
                    String.format(
                            Locale.ROOT,
                            "the sheet of %.1f x %.1f mm is larger than 8388 mm. Make it, or the picture, smaller.",
                            size.width(),
                            size.height()));
        }
        return new Sheet(size, job.sheetColour(), job.side(), job.sheetFilm());
    }

    /**
     * The artwork in its place on the sheet, moved by whole grid steps.
     *
     * @throws JobException if it does not fit on the sheet
     */
    static Artwork place(Artwork artwork, Sheet sheet, Job job) {
        Frame frame = artwork.frame();
        Size size = sheet.size();
        Place corner = job.artworkPlace()
                .orElseGet(() -> new Place((size.width() - frame.width()) / 2, (size.height() - frame.height()) / 2));
        double step = Grid.STEP_MM;
        if (corner.x() < -step
                || corner.y() < -step
                || corner.x() + frame.width() > size.width() + step
                || corner.y() + frame.height() > size.height() + step) {
            throw new JobException(
                    job.file(),
                    0,
                    String.format(
                            Locale.ROOT,
                            "the picture, %.1f x %.1f mm with its corner at %.1f, %.1f, does not lie on the sheet of %.1f x %.1f"
                                    + " mm. Make the sheet larger, or set artwork.width or artwork.place.",
                            frame.width(),
                            frame.height(),
                            corner.x(),
                            corner.y(),
                            size.width(),
                            size.height()));
        }
        return artwork.movedBy(wholeSteps(corner.x() - frame.x()), wholeSteps(corner.y() - frame.y()));
    }

    private static double wholeSteps(double millimetres) {
        return Grid.millimetres(Grid.steps(millimetres));
    }
}
