package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.Arrays;
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
 * @param gaps places that are to be inked and that no film covers, wider than {@link #SEEN_MM}; elsewhere they count for nothing
 * @param openings in which paper shows before pulls are off by what is asked: of each small part of the sheet the smallest; in the
 *     order of rows. Also the smallest that has a place where a film does not print what it was to print
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
        Region bare = map.gaps();
        Region gaps = bare.shrunk(SEEN_MM / 2);
        return of(gaps.isEmpty() ? map : FilmMap.of(films, picture.minus(bare), frame), gaps, askedMm);
    }

    /**
     * Finds it for films of which it is known what they were to print: of small parts of the sheet also the smallest opening that has a
     * place where a film lacks some of that.
     *
     * @param planned for each film what it was to print
     */
    static RegisterLimit of(List<Region> films, List<Region> planned, Region picture, Frame frame, double askedMm) {
        if (films.equals(planned)) {
            return of(films, picture, frame, askedMm);
        }
        FilmMap map = FilmMap.of(films, planned, picture, frame);
        Region bare = map.gaps();
        Region gaps = bare.shrunk(SEEN_MM / 2);
        return of(gaps.isEmpty() ? map : FilmMap.of(films, planned, picture.minus(bare), frame), gaps, askedMm);
    }

    private static RegisterLimit of(FilmMap map, Region gaps, double askedMm) {
        double asked = askedMm * Grid.STEPS_PER_MM;
        double reach = reach(askedMm);
        Outlines outlines = Outlines.of(map, reach);
        List<Opening> found =
                inEachCell(outlines, reach, asked, (cell, bound) -> SmallestOpening.of(map, outlines, cell, bound));
        List<Opening> lost = !map.hasLost()
                ? List.of()
                : inEachCell(
                        outlines, reach, asked, (cell, bound) -> SmallestOpening.ofLost(map, outlines, cell, bound));
        List<Opening> openings = Stream.concat(found.stream().filter(opening -> !opening.isLost()), lost.stream())
                .filter(opening -> heldMm(opening) < askedMm)
                .toList();
        Optional<Opening> smallest = found.stream().reduce(RegisterLimit::smaller);
        double farthest = FARTHEST_MM * Grid.STEPS_PER_MM;
        // Ends: the reach grows by half each time.
        while (smallest.isEmpty() && reach < farthest) {
            reach = Math.min(farthest, reach * WIDER);
            Outlines wider = Outlines.of(map, reach);
            smallest =
                    inEachCell(wider, reach, 0, (cell, bound) -> SmallestOpening.of(map, wider, cell, bound)).stream()
                            .reduce(RegisterLimit::smaller);
        }
        return new RegisterLimit(
                askedMm,
                reach * Grid.STEP_MM,
                gaps.polygons().stream().map(Region::of).toList(),
                openings,
                smallest);
    }

    /** So far openings are looked for at first, in grid steps. */
    static double reach(double askedMm) {
        return Math.max(askedMm * Grid.STEPS_PER_MM + A_LITTLE, LEAST_REACH);
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

    /** Looks for the smallest opening of one cell that is smaller than a bound. */
    private interface Search {
        Optional<Opening> in(long cell, double bound);
    }

    /** The smallest of each cell that is smaller than what is asked, or than all before; cells come in lots, so that it is always the same. */
    private static List<Opening> inEachCell(Outlines outlines, double reach, double asked, Search search) {
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
                    .flatMap(cell -> search.in(cell, least).stream())
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
