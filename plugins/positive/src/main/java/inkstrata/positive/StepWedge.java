package inkstrata.positive;

import inkstrata.measure.Grid;
import inkstrata.positive.page.Page.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Pairs of lines from 0.1 to 1 mm wide, black on clear and clear on black: what of them stands on the washed-out screen says
 * whether it was exposed too long, which closes thin black lines, or too short, which opens or loses clear ones (common
 * practice, no source).
 */
final class StepWedge {
    /** In hundredths of a millimetre. */
    private static final int[] WIDTHS = {10, 15, 20, 25, 30, 40, 50, 60, 80, 100};

    private static final int CELL = 10 * Grid.STEPS_PER_MM;
    static final int LENGTH = WIDTHS.length * CELL;

    /** From its top to the foot of its figures. */
    static final int HEIGHT = ScaleBar.HEIGHT;

    private static final int LINE_HEIGHT = 3 * Grid.STEPS_PER_MM;
    private static final int BLOCK_WIDTH = 4_400 * Grid.STEPS_PER_MM / 1000;
    private static final int FIGURES = 6_600 * Grid.STEPS_PER_MM / 1000;

    /** Clear lines end within their block. */
    private static final int RIM = 400 * Grid.STEPS_PER_MM / 1000;

    private StepWedge() {}

    /** Draws it with that top left corner. */
    static List<Item> at(Spot corner) {
        Shapes lines = new Shapes();
        List<Item> figures = new ArrayList<>();
        for (int step = 0; step < WIDTHS.length; step++) {
            int width = WIDTHS[step] * Grid.STEPS_PER_MM / 100;
            int left = corner.x() + step * CELL;
            int top = corner.y();
            // Two lines as far apart as they are wide, in the middle of each half of the cell.
            int positive = left + CELL / 4 - 3 * width / 2;
            lines.box(new Box(positive, top, positive + width, top + LINE_HEIGHT));
            lines.box(new Box(positive + 2 * width, top, positive + 3 * width, top + LINE_HEIGHT));
            negative(left + 3 * CELL / 4, top, width, lines);
            figures.add(Label.line(
                    new Spot(left + CELL / 2, top + FIGURES),
                    String.format(Locale.ROOT, "%.2f", WIDTHS[step] / 100.0)));
        }
        List<Item> items = new ArrayList<>(List.of(new Item(lines.area())));
        items.addAll(figures);
        return items;
    }

    private static void negative(int middle, int top, int width, Shapes lines) {
        int left = middle - BLOCK_WIDTH / 2;
        int right = left + BLOCK_WIDTH;
        int bottom = top + LINE_HEIGHT;
        int first = middle - 3 * width / 2;
        lines.boxAround(new Box(left, top, middle, bottom), new Box(first, top + RIM, first + width, bottom - RIM));
        lines.boxAround(
                new Box(middle, top, right, bottom),
                new Box(first + 2 * width, top + RIM, first + 3 * width, bottom - RIM));
    }
}
