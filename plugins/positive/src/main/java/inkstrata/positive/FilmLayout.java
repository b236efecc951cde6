package inkstrata.positive;

import inkstrata.measure.Grid;
import inkstrata.measure.Size;
import inkstrata.plan.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where things lie on every film of a set: the same on all of them, nothing inside the picture.
 *
 * <pre>
 *        |-- 100 mm bar --|
 *     +          +          +      register marks at corners
 *       ..................         and at the middle of each side
 *     + :    picture     : +
 *       :................:
 *     +          +          +
 *         label, centred
 * </pre>
 *
 * <p>The film is the sheet; where these things do not fit onto it, the film grows beyond the sheet and keeps the sheet's
 * coordinates.
 *
 * @param film the whole film
 * @param sheet the sheet on it
 * @param picture the picture on it, mirrored if the sheet's back is printed
 * @param marks centres of the register marks, row by row; empty if there are none
 * @param bar top left corner of the bar, if there is one
 * @param label middle of the first line's baseline
 */
record FilmLayout(Box film, Box sheet, Box picture, List<Spot> marks, Optional<Spot> bar, Spot label) {
    /** From the picture's side to the centre of a mark: the mark's arm, and as much again to keep clear of ink. */
    private static final int MARK_DISTANCE = 2 * RegisterMark.ARM;

    /** The strip around the picture that belongs to the marks. */
    private static final int MARK_STRIP = MARK_DISTANCE + RegisterMark.ARM + mm(1);

    /** The strip that keeps bar and label clear of the picture where there are no marks. */
    private static final int BARE_STRIP = mm(3);

    /** The least width of a film, to hold the bar with its figures and a readable label. */
    static final int LEAST_WIDTH = mm(120);

    FilmLayout {
        marks = List.copyOf(marks);
    }

    /**
     * Lays things out.
     *
     * @param picture as it lies on the film
     * @param labelLines the most lines that any film's label has at {@link #labelWidth}
     */
    static FilmLayout of(Sheet paper, Box picture, FilmSettings settings, int labelLines) {
        Size size = paper.size();
        Box sheet = new Box(0, 0, Grid.steps(size.width()), Grid.steps(size.height()));
        int strip = settings.marks() ? MARK_STRIP : BARE_STRIP;
        Box needed = new Box(
                Math.min(picture.left() - strip, picture.centreX() - LEAST_WIDTH / 2),
                picture.top() - strip - (settings.bar() ? ScaleBar.ROW : 0),
                Math.max(picture.right() + strip, picture.centreX() + LEAST_WIDTH / 2),
                picture.bottom() + strip + Label.height(labelLines));
        return new FilmLayout(
                sheet.around(needed),
                sheet,
                picture,
                settings.marks() ? aroundPicture(picture) : List.of(),
                settings.bar()
                        ? Optional.of(
                                new Spot(picture.centreX() - ScaleBar.LENGTH / 2, needed.top() + ScaleBar.HEADROOM))
                        : Optional.empty(),
                new Spot(picture.centreX(), picture.bottom() + strip + Label.FIRST_BASELINE));
    }

    /** How wide a centred label may be on that sheet, in grid steps. */
    static int labelWidth(Sheet paper, Box picture) {
        int beside = Math.min(picture.centreX(), Grid.steps(paper.size().width()) - picture.centreX());
        return Math.max(2 * beside, LEAST_WIDTH) - 2 * mm(4);
    }

    /** Whether the sheet was too small to hold everything. */
    boolean isLargerThanSheet() {
        return !film.equals(sheet);
    }

    private static List<Spot> aroundPicture(Box picture) {
        int[] across = {picture.left() - MARK_DISTANCE, picture.centreX(), picture.right() + MARK_DISTANCE};
        int[] down = {picture.top() - MARK_DISTANCE, picture.centreY(), picture.bottom() + MARK_DISTANCE};
        List<Spot> spots = new ArrayList<>();
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                if (row != 1 || column != 1) {
                    spots.add(new Spot(across[column], down[row]));
                }
            }
        }
        return spots;
    }

    private static int mm(int millimetres) {
        return millimetres * Grid.STEPS_PER_MM;
    }
}
