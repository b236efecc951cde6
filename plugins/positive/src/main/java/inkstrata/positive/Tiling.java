package inkstrata.positive;

import inkstrata.measure.Grid;
import inkstrata.measure.Size;
import java.util.ArrayList;
import java.util.List;

/**
 * Films that are larger than a printer's sheet, cut into tiles that overlap: as few as there can be, and all as large.
 *
 * <pre>
 *     |- bar -| +     crosses of neighbours fall on each other
 *    ............
 *    :  A1    : : A2
 *    :        : :
 *  + :........:.: +
 *    :  B1    : :
 *       name    +
 * </pre>
 *
 * @param film that is cut
 * @param width of a tile's sheet, in grid steps
 * @param height of a tile's sheet
 * @param columns 1 or more
 * @param rows 1 or more
 */
record Tiling(Box film, int width, int height, int columns, int rows) {
    /** At a sheet's edges: printers leave 4 to 5 mm blank (common practice, no source). */
    private static final int BLANK = mm(5);

    /** Around what a tile shows of the film: holds crosses, bar and name (our own choice). */
    static final int STRIP = mm(8);

    /** From a sheet's edge to what it shows, at least. */
    private static final int MARGIN = BLANK + STRIP;

    /** How much of the film neighbours both show: room for tape (our own choice). */
    private static final int OVERLAP = mm(10);

    /** Sides of a sheet that are worth cutting a film for, and hold a bar with its words between two crosses: A5 will do. */
    static final int LEAST_MM = 148;

    private static final int ARM = mm(3);

    private static final int GAP = mm(2);

    /**
     * One tile.
     *
     * @param name row as a letter and column as a number, such as {@code B3}
     * @param sheet its sheet, in the film's coordinates
     * @param window what it shows of the film
     */
    record Tile(String name, Box sheet, Box window) {}

    /** With sheets upright or lying, whichever takes fewer; upright if both take as many. */
    static Tiling of(Box film, Size sheet) {
        Tiling upright = laid(film, Grid.steps(sheet.width()), Grid.steps(sheet.height()));
        Tiling lying = laid(film, Grid.steps(sheet.height()), Grid.steps(sheet.width()));
        return lying.columns * lying.rows < upright.columns * upright.rows ? lying : upright;
    }

    private static Tiling laid(Box film, int width, int height) {
        return new Tiling(film, width, height, count(film.width(), width), count(film.height(), height));
    }

    private static int count(int film, int sheet) {
        int shown = sheet - 2 * MARGIN;
        return film <= shown ? 1 : -Math.floorDiv(OVERLAP - film, shown - OVERLAP);
    }

    /**
     * Whether a film must be cut at all: it need not where a sheet holds it, upright or lying, and what is on it stays clear of
     * what a printer leaves blank if the film's middle comes to lie on the sheet's.
     *
     * @param used of the film, by picture and marks
     */
    static boolean isNeeded(Box film, Box used, Size sheet) {
        int width = Grid.steps(sheet.width());
        int height = Grid.steps(sheet.height());
        return !isHeld(film, used, width, height) && !isHeld(film, used, height, width);
    }

    private static boolean isHeld(Box film, Box used, int width, int height) {
        int across = Math.max(used.right() - film.centreX(), film.centreX() - used.left());
        int along = Math.max(used.bottom() - film.centreY(), film.centreY() - used.top());
        return film.width() <= width
                && film.height() <= height
                && 2 * (across + BLANK) <= width
                && 2 * (along + BLANK) <= height;
    }

    /** Row by row. */
    List<Tile> tiles() {
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int left = left(column);
                int top = top(row);
                int sheetLeft = left - (width - shownWidth()) / 2;
                int sheetTop = top - (height - shownHeight()) / 2;
                tiles.add(new Tile(
                        letters(row) + (column + 1),
                        new Box(sheetLeft, sheetTop, sheetLeft + width, sheetTop + height),
                        new Box(
                                left,
                                top,
                                Math.min(film.right(), left + shownWidth()),
                                Math.min(film.bottom(), top + shownHeight()))));
            }
        }
        return tiles;
    }

    private int left(int column) {
        return film.left() + column * (shownWidth() - OVERLAP);
    }

    private int top(int row) {
        return film.top() + row * (shownHeight() - OVERLAP);
    }

    /** What a tile shows of the film; the last of a row may show a few grid steps less. */
    private int shownWidth() {
        return shared(film.width(), columns);
    }

    private int shownHeight() {
        return shared(film.height(), rows);
    }

    /** The film and all overlaps in equal parts, rounded up. */
    private static int shared(int film, int count) {
        return -Math.floorDiv(-(film + (count - 1) * OVERLAP), count);
    }

    /** Centres of a tile's crosses: in its margins, in the middle of what it shares with neighbours. */
    List<Spot> crosses(Tile tile) {
        List<Spot> spots = new ArrayList<>();
        Box window = tile.window();
        for (int column = 1; column < columns; column++) {
            int x = left(column) + OVERLAP / 2;
            if (x > window.left() && x < window.right()) {
                spots.add(new Spot(x, window.top() - STRIP / 2));
                spots.add(new Spot(x, window.bottom() + STRIP / 2));
            }
        }
        for (int row = 1; row < rows; row++) {
            int y = top(row) + OVERLAP / 2;
            if (y > window.top() && y < window.bottom()) {
                spots.add(new Spot(window.left() - STRIP / 2, y));
                spots.add(new Spot(window.right() + STRIP / 2, y));
            }
        }
        return spots;
    }

    static int arm() {
        return ARM;
    }

    /** How wide bar and words may be that stand in the middle above and below what a tile shows, between its crosses. */
    int betweenCrosses() {
        return shownWidth() - 2 * (OVERLAP / 2 + ARM) - GAP;
    }

    /** A to Z, then AA and so on. */
    private static String letters(int row) {
        String last = String.valueOf((char) ('A' + row % 26));
        return row < 26 ? last : letters(row / 26 - 1) + last;
    }

    private static int mm(int millimetres) {
        return millimetres * Grid.STEPS_PER_MM;
    }
}
