package inkstrata.planar;

/**
 * The vertices of one tile, numbered in the order in which they are found.
 *
 * <p>They are found cell by cell, and a pixel lies in one cell alone, so each is looked for among those of its own cell only:
 * one by one where they are few, in a table where they are many.
 */
final class HotPixels {
    private static final int FEW = 16;

    private final Points points;
    private int firstOfCell;
    /** Those of a cell that has many, numbered from 0. */
    private PointTable many = new PointTable(0);

    HotPixels(int expected) {
        points = new Points(expected);
    }

    /** Pixels of another cell come next. */
    void beginCell() {
        firstOfCell = points.size();
    }

    /** The number of a pixel of the cell; a new one is appended, so it is new if {@link #size()} grew. */
    int number(int x, int y) {
        if (points.size() - firstOfCell > FEW) {
            return numberAmongMany(x, y);
        }
        for (int at = firstOfCell; at < points.size(); at++) {
            if (points.isAt(at, x, y)) {
                return at;
            }
        }
        return append(x, y);
    }

    private int numberAmongMany(int x, int y) {
        if (points.size() - firstOfCell == FEW + 1) {
            many = new PointTable(4 * FEW);
            for (int at = firstOfCell; at < points.size(); at++) {
                many.number(points.x(at), points.y(at));
            }
        }
        int number = firstOfCell + many.number(x, y);
        return number < points.size() ? number : append(x, y);
    }

    /** A new number for a pixel that has none yet. */
    int append(int x, int y) {
        return points.append(x, y);
    }

    int x(int number) {
        return points.x(number);
    }

    int y(int number) {
        return points.y(number);
    }

    int size() {
        return points.size();
    }

    int[] xs() {
        return points.xs();
    }

    int[] ys() {
        return points.ys();
    }
}
