package inkstrata.check;

import inkstrata.check.FilmMap.Edge;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
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
    /** An exit of one set of films. */
    private record Exit(int cover, Stretch stretch) {}

    /**
     * Sorts them.
     *
     * @param reach openings up to this size are looked for, and none so near to {@link Crossings}; in grid steps
     */
    static Outlines of(FilmMap map, double reach) {
        Shore shore = new Shore(reach);
        Crossings.of(map).forEach(shore::addCrossing);
        map.edges().stream().filter(Edge::isShore).forEach(edge -> shore.add(edge.way()));
        List<Exit> found = map.edges().parallelStream()
                .filter(edge -> !edge.isShore())
                .flatMap(edge -> exits(edge, map, shore, reach).stream())
                .toList();
        Cells<Exit> exits = new Cells<>(1.5 * reach);
        for (Exit exit : found) {
            Spot middle = exit.stretch().middle();
            exits.add(middle.x(), middle.y(), exit);
        }
        return new Outlines(bunched(exits), shore);
    }

    /** Both sides of an edge may be one; none of its parts is one if it lies where nothing counts. */
    private static List<Exit> exits(Edge edge, FilmMap map, Shore shore, double reach) {
        boolean isLeft = isExit(map.films(edge.left()), map.films(edge.right()));
        boolean isRight = isExit(map.films(edge.right()), map.films(edge.left()));
        List<Exit> found = new ArrayList<>(2);
        if (isLeft || isRight) {
            chop(
                    edge.way(),
                    reach / 2,
                    whole -> shore.cut(whole, part -> {
                        if (isLeft) {
                            found.add(new Exit(edge.left(), part));
                        }
                        if (isRight) {
                            found.add(new Exit(edge.right(), part));
                        }
                    }));
        }
        return found;
    }

    private static Cells<Bunch> bunched(Cells<Exit> exits) {
        long[] cells = exits.cells();
        List<List<Bunch>> bunches = Arrays.stream(cells)
                .parallel()
                .mapToObj(cell -> bunched(exits.in(cell)))
                .toList();
        Cells<Bunch> all = new Cells<>(exits.size());
        for (int cell = 0; cell < cells.length; cell++) {
            for (Bunch bunch : bunches.get(cell)) {
                all.add(cells[cell], bunch);
            }
        }
        return all;
    }

    private static List<Bunch> bunched(List<Exit> exits) {
        NavigableMap<Integer, List<Stretch>> byCover = new TreeMap<>();
        for (Exit exit : exits) {
            byCover.computeIfAbsent(exit.cover(), cover -> new ArrayList<>()).add(exit.stretch());
        }
        return byCover.entrySet().stream()
                .map(set -> Bunch.of(set.getKey(), set.getValue()))
                .toList();
    }

    private static boolean isExit(BitSet films, BitSet beyond) {
        return !films.isEmpty() && filmBegins(films, beyond);
    }

    /** Where nothing covers the other side, that may be a splinter of rounding with more behind it. */
    private static boolean filmBegins(BitSet films, BitSet beyond) {
        BitSet more = (BitSet) beyond.clone();
        more.andNot(films);
        return !more.isEmpty() || beyond.isEmpty();
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
