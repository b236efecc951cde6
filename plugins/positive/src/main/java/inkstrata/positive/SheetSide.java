package inkstrata.positive;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.Outline;
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

    /** Where that outline of the picture comes to lie. */
    Outline outline(Outline front) {
        if (!mirrored) {
            return front;
        }
        double width = Grid.millimetres(sheetWidth);
        Outline.Builder back = Outline.builder();
        front.sendTo(new CurveSink() {
            @Override
            public void moveTo(double x, double y) {
                back.moveTo(width - x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                back.lineTo(width - x, y);
            }

            @Override
            public void quadTo(double x1, double y1, double x, double y) {
                back.quadTo(width - x1, y1, width - x, y);
            }

            @Override
            public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
                back.cubicTo(width - x1, y1, width - x2, y2, width - x, y);
            }
        });
        return back.build();
    }

    Box box(Box box) {
        return mirrored ? new Box(sheetWidth - box.right(), box.top(), sheetWidth - box.left(), box.bottom()) : box;
    }
}
