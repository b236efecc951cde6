package inkstrata.check;

import java.util.BitSet;
import java.util.function.Consumer;

/**
 * The outlines that matter to an opening: where films begin, and the shore, where the picture ends.
 *
 * @param exits stretches with a set of films on one side and, beyond them, one that holds a film more
 * @param shore the picture's outline
 */
record Outlines(Cells<Exit> exits, Shore shore) {
    /**
     * A stretch at which a set of films ends and another film begins.
     *
     * @param stretch at most half as long as openings are looked for
     * @param cover number of the set that ends there
     */
    record Exit(Stretch stretch, int cover) {}

    /**
     * Sorts them.
     *
     * @param reach openings up to this size are looked for, and none so near to {@link Crossings}; in grid steps
     */
    static Outlines of(FilmMap map, double reach) {
        Cells<Exit> exits = new Cells<>(1.5 * reach);
        Shore shore = new Shore(reach);
        Crossings.of(map).forEach(shore::addCrossing);
        map.sendEdgesTo((x0, y0, x1, y1, left, right) -> {
            if (left == FilmMap.SHEET || right == FilmMap.SHEET) {
                shore.add(new Stretch(x0, y0, x1, y1));
            }
        });
        map.sendEdgesTo((x0, y0, x1, y1, left, right) -> {
            if (left != FilmMap.SHEET && right != FilmMap.SHEET) {
                shore.cut(new Stretch(x0, y0, x1, y1), part -> {
                    addExit(part, left, right, map, reach, exits);
                    addExit(part, right, left, map, reach, exits);
                });
            }
        });
        return new Outlines(exits, shore);
    }

    private static void addExit(Stretch edge, int cover, int beyond, FilmMap map, double reach, Cells<Exit> exits) {
        if (!map.films(cover).isEmpty() && filmBegins(map.films(cover), map.films(beyond))) {
            chop(
                    edge,
                    reach / 2,
                    part -> exits.add(part.middle().x(), part.middle().y(), new Exit(part, cover)));
        }
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
