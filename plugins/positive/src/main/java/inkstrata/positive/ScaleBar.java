package inkstrata.positive;

import inkstrata.measure.Grid;
import inkstrata.positive.page.Page.Item;
import java.util.ArrayList;
import java.util.List;

/**
 * A bar by which a printmaker finds out whether a film has its true size, ruled in 1 and 10 mm: 100 mm long, shorter on tiles.
 *
 * <p>Two rows of blocks of 10 mm, black and clear in turn, and one of blocks of 1 mm, so that every ruling is an edge and no
 * line width blurs the length: the bar ends where its outermost black ends.
 */
final class ScaleBar {
    static final int LENGTH = 100 * Grid.STEPS_PER_MM;

    /** From its top to the foot of its figures. */
    static final int HEIGHT = 7 * Grid.STEPS_PER_MM;

    private static final int BLOCK = 10 * Grid.STEPS_PER_MM;
    private static final int RULING = Grid.STEPS_PER_MM;
    private static final int ROW = Grid.STEPS_PER_MM;
    private static final int FIGURES = 6_600 * Grid.STEPS_PER_MM / 1000;

    private ScaleBar() {}

    /** Draws the one of full length with that top left corner. */
    static List<Item> at(Spot corner) {
        return at(corner, LENGTH, "50");
    }

    /**
     * Draws one.
     *
     * @param length in grid steps, a multiple of 10 mm
     * @param words below its middle
     */
    static List<Item> at(Spot corner, int length, String words) {
        Shapes blocks = new Shapes();
        for (int block = 0; block < length / BLOCK; block++) {
            int left = corner.x() + block * BLOCK;
            int top = corner.y() + block % 2 * ROW;
            blocks.box(new Box(left, top, left + BLOCK, top + ROW));
        }
        for (int ruling = 0; ruling < length / RULING; ruling += 2) {
            int left = corner.x() + ruling * RULING;
            int top = corner.y() + 2 * ROW;
            blocks.box(new Box(left, top, left + RULING, top + ROW));
        }
        List<Item> items = new ArrayList<>(List.of(new Item(blocks.area())));
        figure(corner, 0, "0", items);
        figure(corner, length / 2, words, items);
        figure(corner, length, length / Grid.STEPS_PER_MM + " mm", items);
        return items;
    }

    private static void figure(Spot corner, int along, String words, List<Item> items) {
        items.add(Label.line(new Spot(corner.x() + along, corner.y() + FIGURES), words));
    }
}
