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
 *     +  |-- bar --|  +  |- wedge -|  +    register marks at corners
 *       ............................       and at the middle of each side
 *     + :          picture         : +
 *       :..........................:
 *     +               +               +
 *                label, centred
 * </pre>
 *
 * <p>Beside a narrow picture the bar lies above the marks, and the wedge above the bar. The film is the sheet; where these
 * things do not fit onto it, the film grows beyond the sheet and keeps the sheet's coordinates.
 *
 * @param film the whole film
 * @param sheet the sheet on it
 * @param picture the picture on it, mirrored if the sheet's back is printed
 * @param marks centres of the register marks, row by row; empty if there are none
 * @param bar top left corner of the bar, if there is one
 * @param wedge top left corner of the step wedge, if there is one
 * @param label middle of the first line's baseline
 */
record FilmLayout(
        Box film, Box sheet, Box picture, List<Spot> marks, Optional<Spot> bar, Optional<Spot> wedge, Spot label) {
    /** The strip that keeps bar and label clear of the picture where there are no marks. */
    private static final int BARE_STRIP = mm(3);

    /** Between a register mark and the picture, at least; as long as half of a mark of usual size. */
    private static final int CLEAR = mm(5);

    /** Between any two things that are not the picture. */
    private static final int GAP = mm(3);

    /** What a row of bar or wedge takes. */
    private static final int ROW = ScaleBar.HEIGHT + GAP;

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
        int distance = CLEAR + settings.size() / 2;
        int strip = settings.marks() ? distance + settings.size() / 2 + mm(1) : BARE_STRIP;
        boolean isBeside = settings.marks() && hasRoomBeside(picture, settings.size());
        int rows = isBeside ? 0 : (settings.bar() ? 1 : 0) + (settings.wedge() ? 1 : 0);
        Box needed = new Box(
                Math.min(picture.left() - strip, picture.centreX() - LEAST_WIDTH / 2),
                picture.top() - strip - rows * ROW,
                Math.max(picture.right() + strip, picture.centreX() + LEAST_WIDTH / 2),
                picture.bottom() + strip + Label.height(labelLines));
        int lowest = isBeside ? picture.top() - distance - ScaleBar.HEIGHT / 2 : picture.top() - strip - ROW + GAP;
        int quarter = isBeside ? (picture.width() / 2 + distance) / 2 : 0;
        Optional<Spot> bar = settings.bar()
                ? Optional.of(new Spot(picture.centreX() - quarter - ScaleBar.LENGTH / 2, lowest))
                : Optional.empty();
        Optional<Spot> wedge = settings.wedge()
                ? Optional.of(new Spot(
                        picture.centreX() + quarter - StepWedge.LENGTH / 2,
                        isBeside || bar.isEmpty() ? lowest : lowest - ROW))
                : Optional.empty();
        return new FilmLayout(
                sheet.around(needed),
                sheet,
                picture,
                settings.marks() ? aroundPicture(picture, distance) : List.of(),
                bar,
                wedge,
                new Spot(picture.centreX(), picture.bottom() + strip + Label.FIRST_BASELINE));
    }

    /** Whether bar and wedge fit between the marks above the picture, their figures included. */
    private static boolean hasRoomBeside(Box picture, int markSize) {
        int between = picture.width() / 2 + CLEAR - markSize / 2;
        int clearOfPicture = CLEAR + markSize / 2 - (ScaleBar.HEIGHT + 1) / 2;
        return between >= ScaleBar.LENGTH + 2 * mm(8) && clearOfPicture >= GAP;
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

    private static List<Spot> aroundPicture(Box picture, int distance) {
        int[] across = {picture.left() - distance, picture.centreX(), picture.right() + distance};
        int[] down = {picture.top() - distance, picture.centreY(), picture.bottom() + distance};
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
