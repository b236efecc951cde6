package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far pulls may be off from each other before sheet shows between inks.
 *
 * <p>Sheet can show at offsets up to r exactly where places of the picture, no two farther apart than r, have no film in common that
 * covers them all. Such places are an {@link Opening}; the limit is the size of the smallest. {@code docs/limit.md} gives the argument.
 *
 * @param asked the offset that films should hold to, in millimetres
 * @param reach up to this size, in millimetres, openings were looked for, and so near to {@link Crossings} none count
 * @param openings smaller than what is asked, by more than the search is exact to: of each small part of the sheet the smallest; in the
 *     order of rows
 * @param smallest the smallest of all, which may be larger than asked; none up to {@link #FARTHEST_MM}
 */
record RegisterLimit(double asked, double reach, List<Opening> openings, Optional<Opening> smallest) {
    /** Larger openings are not looked for: no two pulls of one print are so far off (our own choice). */
    static final double FARTHEST_MM = 2;

    /** Gaps narrower than this, in millimetres, are rounding and no gaps. */
    private static final double THINNEST_GAP_MM = 0.002;

    /** Where nothing is asked, openings are looked for from this size up, in grid steps. */
    private static final double LEAST_REACH = 0.05 * Grid.STEPS_PER_MM;

    /** A trap as wide as the register ends what is looked for at once. */
    private static final double A_LITTLE = 0.01 * Grid.STEPS_PER_MM;

    private static final double WIDER = 1.5;

    /** Cells that are searched side by side, before what was found narrows the search: that many at first, then twice as many each time. */
    private static final int FIRST_LOT = 16;

    private static final int LARGEST_LOT = 1024;

    RegisterLimit {
        openings = List.copyOf(openings);
    }

    /**
     * Finds it.
     *
     * @param films what each film prints
     * @param picture all places that the artwork inks
     * @param frame what lies outside it counts for nothing
     */
    static RegisterLimit of(List<Region> films, Region picture, Frame frame, double askedMm) {
        FilmMap map = FilmMap.of(films, picture, frame);
        List<Opening> openings = gaps(map);
        double asked = askedMm * Grid.STEPS_PER_MM;
        double reach = Math.max(asked + A_LITTLE, LEAST_REACH);
        List<Opening> found = inEachCell(map, reach, asked);
        found.stream()
                .filter(opening -> opening.size() < asked - SmallestOpening.EXACT)
                .forEach(openings::add);
        Optional<Opening> smallest =
                Stream.concat(openings.stream(), found.stream()).reduce(RegisterLimit::smaller);
        double farthest = FARTHEST_MM * Grid.STEPS_PER_MM;
        while (smallest.isEmpty() && reach < farthest) {
            reach = Math.min(farthest, reach * WIDER);
            smallest = inEachCell(map, reach, 0).stream().reduce(RegisterLimit::smaller);
        }
        return new RegisterLimit(askedMm, reach * Grid.STEP_MM, openings, smallest);
    }

    /** In millimetres; {@link #FARTHEST_MM} if it may be more. */
    double limitMm() {
        return smallest.map(Opening::sizeMm).orElse(FARTHEST_MM);
    }

    private static List<Opening> gaps(FilmMap map) {
        List<Opening> gaps = new ArrayList<>();
        Region gapped = map.gaps().shrunk(THINNEST_GAP_MM / 2);
        for (Region.Polygon polygon : gapped.polygons()) {
            Ring shell = polygon.shell();
            gaps.add(new Opening(0, List.of(new Spot(shell.x(0), shell.y(0))), List.of(new BitSet())));
        }
        return gaps;
    }

    /** The smallest of each cell that is smaller than what is asked, or than all before; cells come in lots, so that it is always the same. */
    private static List<Opening> inEachCell(FilmMap map, double reach, double asked) {
        Outlines outlines = Outlines.of(map, reach);
        long[] cells = outlines.exits().cells();
        List<Opening> found = new ArrayList<>();
        double bound = reach;
        int lot = FIRST_LOT;
        for (int first = 0; first < cells.length; ) {
            int end = Math.min(cells.length, first + lot);
            double least = bound;
            List<Opening> more = Arrays.stream(cells, first, end)
                    .parallel()
                    .boxed()
                    .flatMap(cell -> SmallestOpening.of(map, outlines, cell, least).stream())
                    .toList();
            for (Opening opening : more) {
                bound = Math.max(asked, Math.min(bound, opening.size()));
            }
            found.addAll(more);
            first = end;
            lot = Math.min(LARGEST_LOT, 2 * lot);
        }
        return found;
    }

    private static Opening smaller(Opening one, Opening other) {
        return other.size() < one.size() ? other : one;
    }

    /** Where it is. */
    Optional<Place> place() {
        return smallest.map(opening -> opening.middle().place());
    }
}
