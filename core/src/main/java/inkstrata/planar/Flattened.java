package inkstrata.planar;

import java.util.ArrayList;
import java.util.List;

/**
 * A drawing's outlines as straight segments on the grid.
 *
 * @param segments in the order of the outlines
 * @param swallowed the contours of which rounding left nothing, in the same order
 */
record Flattened(Segments segments, List<Swallowed> swallowed) {
    static Flattened of(Drawing drawing, double flatnessMm, Box frame, Crew crew) {
        List<Flattened> parts = crew.share(drawing.areas().size(), (first, end) -> {
            Segments segments = new Segments();
            Flattener flattener = new Flattener(segments, flatnessMm, frame);
            for (int o = first; o < end; o++) {
                flattener.add(drawing.areas().get(o).outline(), o);
            }
            return new Flattened(segments, flattener.swallowed(drawing));
        });
        List<Swallowed> swallowed = new ArrayList<>();
        parts.forEach(part -> swallowed.addAll(part.swallowed));
        return new Flattened(
                Segments.joined(parts.stream().map(Flattened::segments).toList(), crew), swallowed);
    }
}
