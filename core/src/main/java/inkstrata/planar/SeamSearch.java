package inkstrata.planar;

import inkstrata.planar.PlanarMapper.Noded;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds the strips of a map that nobody drew: from each edge it looks across ({@link SeamSight}), and drops what is short for its width. */
final class SeamSearch {
    /** A strip shorter than so many times its width is a point at which shapes touch. */
    private static final double LONG = 2;

    /** A wedge that is shorter, up to where it is as wide as a seam, is no strip. */
    private static final double SLENDER = 10;

    private SeamSearch() {}

    /**
     * All stretches of edges along strips, in the order of the edges.
     *
     * @param seam widest strips that are closed, in grid steps
     * @param reach widest strips that are found, likewise; {@code seam} or more
     * @param depth at which stacks are cut off
     */
    static List<SeamStretch> find(Drawing drawing, Noded map, double seam, double reach, int depth, Crew crew) {
        SeamContours contours = SeamContours.of(drawing, map.segments());
        SeamStacks stacks = new SeamStacks(map.stacks(), depth);
        SeamEdges sides = new SeamEdges(drawing, map, contours, stacks);
        EdgeTable edges = map.edges();
        EdgeCells cells = new EdgeCells(edges, sides, Box.of(map.frame()), (int) Math.ceil(reach) + 2);
        List<SeamStretch> found = new ArrayList<>();
        crew.share(edges.from().length, (first, end) -> {
                    SeamSight sight = new SeamSight(edges, sides, cells.new Asking(), seam, reach);
                    List<SeamStretch> part = new ArrayList<>();
                    for (int e = first; e < end; e++) {
                        sight.look(e, part);
                    }
                    return part;
                })
                .forEach(found::addAll);
        return longOnes(found, seam, reach);
    }

    /** Those that belong to runs of stretches that are long for their width. */
    private static List<SeamStretch> longOnes(List<SeamStretch> all, double seam, double reach) {
        int[] run = new int[all.size()];
        Map<Start, Integer> latest = new HashMap<>();
        for (int i = 0; i < run.length; i++) {
            run[i] = i;
            SeamStretch stretch = all.get(i);
            for (SeamWay way : List.of(stretch.first(), stretch.last())) {
                Integer before = latest.put(new Start(stretch.closes(), stretch.strip(), way.x(), way.y()), i);
                if (before != null) {
                    run[root(run, i)] = root(run, before);
                }
            }
        }
        double[] lengths = new double[run.length];
        double[] widths = new double[run.length];
        double[] fans = new double[run.length];
        for (int i = 0; i < run.length; i++) {
            int root = root(run, i);
            lengths[root] += all.get(i).length();
            double[] widest = all.get(i).isFan() ? fans : widths;
            widest[root] = Math.max(widest[root], all.get(i).widest());
        }
        List<SeamStretch> kept = new ArrayList<>();
        for (int i = 0; i < run.length; i++) {
            int root = root(run, i);
            // Ways beyond the end of the other side are slanted, and say how wide the strip is only where there are no
            // others.
            double width = widths[root] > 0 ? widths[root] : fans[root];
            if (isSeam(all.get(i).closes(), lengths[root], width, seam, reach)) {
                kept.add(all.get(i));
            }
        }
        return kept;
    }

    /**
     * What opens wider than is closed is a wedge, and has to be slender: outlines that cross at more than 6 degrees were drawn to cross.
     * What opens wider than is asked about is the narrow part of a gap.
     */
    private static boolean isSeam(boolean closes, double length, double width, double seam, double reach) {
        if (!closes) {
            return length >= LONG * width && width < reach - 1;
        }
        return length >= (width < seam - 1 ? LONG : SLENDER) * width;
    }

    private record Start(boolean closes, int strip, int x, int y) {}

    private static int root(int[] run, int i) {
        int at = i;
        while (run[at] != at) {
            run[at] = run[run[at]];
            at = run[at];
        }
        return at;
    }
}
