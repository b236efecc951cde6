package inkstrata.planar;

import inkstrata.measure.Grid;
import inkstrata.planar.PlanarMapper.FlatDrawing;
import inkstrata.planar.PlanarMapper.Noded;
import inkstrata.planar.PlanarMapper.Tiles;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Closes the strips of a drawing that nobody drew: shapes that were meant to meet, and that rounded coordinates or a tracer left a little
 * apart.
 *
 * <p>The drawing is mapped, and {@link SeamSearch} looks for strips. If there are none, that map is the result. Else those tiles that hold
 * strips are mapped once more beneath {@link SeamMarks}, which say where a strip belongs to a neighbour, the lighter one. Pages: {@code core/docs/seams.md}.
 */
final class SeamClosing {
    /** Strips up to so many seams wide are not closed, but asked about. */
    private static final double ASKED = 3;

    /**
     * After so many maps the search ends, whatever is left. It also ends when a map left more than half of what there was before: that
     * is what no mark can close.
     */
    private static final int MOST_ROUNDS = 4;

    private SeamClosing() {}

    /**
     * A map, and what was closed in it.
     *
     * @param noded its sources name segments of the drawing alone
     */
    record Closed(Noded noded, List<Seam> seams) {}

    static Closed close(FlatDrawing flat, MapSettings settings, Crew crew) {
        Tiles tiles = PlanarMapper.tiles(flat, settings, UnaryOperator.identity(), Optional.empty(), crew);
        Noded plain = PlanarMapper.glued(flat, tiles, crew);
        double seam = settings.seamMm() * Grid.STEPS_PER_MM;
        if (seam < 1) {
            return new Closed(plain, List.of());
        }
        Noded map = plain;
        MapSettings deep = settings;
        List<SeamStretch> found = SeamSearch.find(flat.drawing(), map, seam, ASKED * seam, settings.depth(), crew);
        if (found.stream().anyMatch(stretch -> !stretch.known())) {
            deep = settings.withDepth(MapSettings.ALL);
            tiles = PlanarMapper.tiles(flat, deep, UnaryOperator.identity(), Optional.empty(), crew);
            map = PlanarMapper.glued(flat, tiles, crew);
            found = SeamSearch.find(flat.drawing(), map, seam, ASKED * seam, deep.depth(), crew);
        }
        SeamStacks stacks = new SeamStacks(map.stacks(), deep.depth());
        SeamReport report = new SeamReport();
        report.add(SeamRuns.of(kept(found), stacks), stacks);
        if (closing(found).isEmpty()) {
            return new Closed(plain, report.seams());
        }
        Paints paints = new Paints(flat.drawing());
        SeamMarks marks = new SeamMarks();
        SeamPlaces places = new SeamPlaces();
        double left = length(closing(found));
        double before = Double.POSITIVE_INFINITY;
        for (int round = 0; round < MOST_ROUNDS && left > 0 && left <= before / 2; round++) {
            stacks = new SeamStacks(map.stacks(), deep.depth());
            List<List<SeamStretch>> runs = SeamRuns.of(closing(found), stacks);
            report.add(places.notBefore(runs, stacks), stacks);
            marks.add(runs, map.edges(), stacks, paints);
            FlatDrawing marked = marks.over(flat, crew);
            tiles = PlanarMapper.tiles(marked, deep, marks.meaning(), Optional.of(tiles), crew);
            map = PlanarMapper.glued(marked, tiles, crew);
            map = SeamCrumbs.without(map, deep.depth(), flat.segments().size(), seam);
            if (round + 1 < MOST_ROUNDS) {
                found = SeamSearch.find(marked.drawing(), map, seam, seam, deep.depth(), crew);
                before = left;
                left = length(closing(found));
            }
        }
        return new Closed(
                withoutMarks(Relabelling.cut(map, settings.depth(), paints), flat.segments()), report.seams());
    }

    private static List<SeamStretch> closing(List<SeamStretch> found) {
        return found.stream().filter(SeamStretch::closes).toList();
    }

    private static List<SeamStretch> kept(List<SeamStretch> found) {
        return found.stream().filter(stretch -> !stretch.closes()).toList();
    }

    /** In grid steps. */
    private static double length(List<SeamStretch> stretches) {
        return stretches.stream().mapToDouble(SeamStretch::length).sum();
    }

    /** Ends of marks across strips follow nothing that was drawn. */
    private static Noded withoutMarks(Noded map, Segments drawn) {
        EdgeTable edges = map.edges();
        int[] source = edges.source().clone();
        for (int e = 0; e < source.length; e++) {
            source[e] = source[e] < drawn.size() ? source[e] : -1;
        }
        EdgeTable own =
                new EdgeTable(edges.x(), edges.y(), edges.from(), edges.to(), edges.left(), edges.right(), source);
        return new Noded(own, drawn, map.frame(), map.stacks());
    }
}
