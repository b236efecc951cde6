package inkstrata.check;

import inkstrata.check.FilmMap.Edge;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * The outlines that matter to an opening: exits, where a set of films ends and beyond them another film begins; and the shore, where the
 * picture ends.
 *
 * @param exits in each cell a bunch for each set of films that ends there, by rising number; of stretches at most half as long as openings
 *     are looked for
 * @param shore the picture's outline
 */
record Outlines(Cells<Bunch> exits, Shore shore) {
    /**
     * A stretch across which a set of films ends, or two.
     *
     * @param left number of the set on that side if it ends there, else {@link FilmMap#SHEET}
     * @param right likewise
     */
    private record Exit(Stretch stretch, int left, int right) {}

    /**
     * Sorts them.
     *
     * @param reach openings up to this size are looked for, and none so near to {@link Crossings}; in grid steps
     */
    static Outlines of(FilmMap map, double reach) {
        Shore shore = new Shore(reach);
        Crossings.of(map).forEach(shore::addCrossing);
        // Places within reach of each other lie in cells side by side: no place is farther than a quarter of it from
        // the middle of its stretch. Half the size would do.
        Cells<Exit> exits = new Cells<>(3 * reach);
        for (Edge edge : map.edges()) {
            if (edge.isShore()) {
                shore.add(edge.way());
            } else {
                addExits(edge, map, reach / 2, exits);
            }
        }
        return new Outlines(bunched(exits, shore), shore);
    }

    private static void addExits(Edge edge, FilmMap map, double longest, Cells<Exit> exits) {
        int left = isExit(map.films(edge.left()), map.films(edge.right())) ? edge.left() : FilmMap.SHEET;
        int right = isExit(map.films(edge.right()), map.films(edge.left())) ? edge.right() : FilmMap.SHEET;
        if (left == FilmMap.SHEET && right == FilmMap.SHEET) {
            return;
        }
        chop(edge.way(), longest, part -> {
            double x = (part.ax() + part.bx()) / 2;
            double y = (part.ay() + part.by()) / 2;
            exits.add(x, y, new Exit(part, left, right));
        });
    }

    private static Cells<Bunch> bunched(Cells<Exit> exits, Shore shore) {
        long[] cells = exits.cells();
        List<List<Bunch>> bunches = Arrays.stream(cells)
                .parallel()
                .mapToObj(cell -> bunched(exits.in(cell), shore))
                .toList();
        Cells<Bunch> all = new Cells<>(exits.size());
        for (int cell = 0; cell < cells.length; cell++) {
            for (Bunch bunch : bunches.get(cell)) {
                all.add(cells[cell], bunch);
            }
        }
        return all;
    }

    /** None of their parts counts that lies where nothing does. */
    private static List<Bunch> bunched(List<Exit> exits, Shore shore) {
        NavigableMap<Integer, List<Stretch>> byCover = new TreeMap<>();
        Box box = Box.EMPTY;
        for (Exit exit : exits) {
            box = box.with(Box.around(exit.stretch()));
        }
        Shore.Near near = shore.near(box);
        for (Exit exit : exits) {
            near.cut(exit.stretch(), part -> {
                add(exit.left(), part, byCover);
                add(exit.right(), part, byCover);
            });
        }
        return byCover.entrySet().stream()
                .map(set -> new Bunch(set.getKey(), set.getValue()))
                .toList();
    }

    private static void add(int cover, Stretch part, Map<Integer, List<Stretch>> byCover) {
        if (cover != FilmMap.SHEET) {
            byCover.computeIfAbsent(cover, number -> new ArrayList<>()).add(part);
        }
    }

    private static boolean isExit(BitSet films, BitSet beyond) {
        return !films.isEmpty() && filmBegins(films, beyond);
    }

    /** Where nothing covers the other side, that may be a splinter of rounding with more behind it. */
    private static boolean filmBegins(BitSet films, BitSet beyond) {
        for (int film = beyond.nextSetBit(0); film >= 0; film = beyond.nextSetBit(film + 1)) {
            if (!films.get(film)) {
                return true;
            }
        }
        return beyond.isEmpty();
    }

    static void chop(Stretch edge, double longest, Consumer<Stretch> taker) {
        int parts = (int) Math.max(1, Math.ceil(edge.length() / longest));
        double dx = (edge.bx() - edge.ax()) / parts;
        double dy = (edge.by() - edge.ay()) / parts;
        for (int k = 0; k < parts; k++) {
            double x = edge.ax() + k * dx;
            double y = edge.ay() + k * dy;
            boolean last = k == parts - 1;
            taker.accept(new Stretch(x, y, last ? edge.bx() : x + dx, last ? edge.by() : y + dy));
        }
    }
}
