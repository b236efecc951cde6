package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How far pulls may be off from each other before sheet shows between inks.
 *
 * <p>Sheet can show at offsets up to r exactly where places of the picture, no two farther apart than r, have no film in common that
 * covers them all. Such places are an {@link Opening}; the limit is the size of the smallest. {@code docs/limit.md} gives the argument.
 *
 * @param asked the offset that films should hold to, in millimetres
 * @param reach up to this size, in millimetres, openings were looked for, and so near to {@link Crossings} none count
 * @param gaps places that are to be inked and that no film covers, wider than {@link #SEEN_MM}; elsewhere they count for nothing
 * @param openings in which paper shows before pulls are off by what is asked: of each small part of the sheet the smallest; in the
 *     order of rows
 * @param smallest the smallest of all, which may be larger than asked; none up to {@code reach}
 */
record RegisterLimit(
        double asked, double reach, List<Region> gaps, List<Opening> openings, Optional<Opening> smallest) {
    /** So far is looked even if less is asked: by hand no two pulls of one print are farther off (our own choice). */
    static final double FARTHEST_MM = 2;

    /**
     * A strip of paper that is no wider than this, in millimetres, does not show: half a dot at 2540 dots to the inch, and as far as
     * curves are followed.
     */
    static final double SEEN_MM = 0.005;

    /**
     * Pulls may be off by so much more than the size that was found for an opening, in millimetres, before paper shows in it: a strip as
     * wide as {@link #SEEN_MM} needs at least half the square root of three of it, and the smallest opening may be smaller than the one
     * found by what the search leaves open. {@code docs/limit.md} has the argument.
     */
    static final double FORGIVEN_MM = SEEN_MM * Math.sqrt(3) / 2 - SmallestOpening.EXACT * Grid.STEP_MM;

    /** Where nothing is asked, openings are looked for from this size up, in grid steps. */
    private static final double LEAST_REACH = 0.05 * Grid.STEPS_PER_MM;

    /** A trap as wide as the register ends what is looked for at once. */
    private static final double A_LITTLE = 0.01 * Grid.STEPS_PER_MM;

    private static final double WIDER = 1.5;

    /** Cells that are searched side by side, before what was found narrows the search: that many at first, then twice as many each time. */
    private static final int FIRST_LOT = 16;

    private static final int LARGEST_LOT = 1024;

    RegisterLimit {
        gaps = List.copyOf(gaps);
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
        Region gaps = map.gaps().shrunk(SEEN_MM / 2);
        if (!gaps.isEmpty()) {
            map = FilmMap.of(films, picture.minus(map.gaps()), frame);
        }
        double asked = askedMm * Grid.STEPS_PER_MM;
        double reach = Math.max(asked + A_LITTLE, LEAST_REACH);
        List<Opening> found = inEachCell(map, reach, asked);
        List<Opening> openings =
                found.stream().filter(opening -> heldMm(opening) < askedMm).toList();
        Optional<Opening> smallest = found.stream().reduce(RegisterLimit::smaller);
        double farthest = FARTHEST_MM * Grid.STEPS_PER_MM;
        while (smallest.isEmpty() && reach < farthest) {
            reach = Math.min(farthest, reach * WIDER);
            smallest = inEachCell(map, reach, 0).stream().reduce(RegisterLimit::smaller);
        }
        return new RegisterLimit(
                askedMm,
                reach * Grid.STEP_MM,
                gaps.polygons().stream().map(Region::of).toList(),
                openings,
                smallest);
    }

    /** Size of the smallest opening, in millimetres; up to where openings were looked for if there is none. */
    double limitMm() {
        return smallest.map(Opening::sizeMm).orElse(reach);
    }

    /** So far pulls may be off, in millimetres, before paper shows. */
    double heldMm() {
        return smallest.map(RegisterLimit::heldMm).orElse(reach);
    }

    /** The same for one opening alone. */
    static double heldMm(Opening opening) {
        return opening.sizeMm() + FORGIVEN_MM;
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
