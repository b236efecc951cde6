package inkstrata.positive;

import inkstrata.measure.Grid;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;

/**
 * How a picture seen from the front lies on a film: as it is, or mirrored for the back of the sheet.
 *
 * <p>Mirrored about the upright middle line of the sheet, whose width counts in whole grid steps, so that mirroring is
 * exact and mirroring twice changes nothing.
 *
 * @param mirrored for the back
 * @param sheetWidth in grid steps
 */
record SheetSide(boolean mirrored, int sheetWidth) {
    static SheetSide of(Sheet sheet, Side side) {
        return new SheetSide(side == Side.BACK, Grid.steps(sheet.size().width()));
    }

    /** Where that place of the picture comes to lie, across. */
    int x(int x) {
        return mirrored ? sheetWidth - x : x;
    }

    Box box(Box box) {
        return mirrored ? new Box(sheetWidth - box.right(), box.top(), sheetWidth - box.left(), box.bottom()) : box;
    }
}
