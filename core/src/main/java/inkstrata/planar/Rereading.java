package inkstrata.planar;

import inkstrata.measure.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** What drawn chains become when they are mapped again: chords between points of the grid. */
final class Rereading {
    private final Segments segments = new Segments();
    private final Flattener flattener;

    private Rereading(Box frame) {
        this.flattener = new Flattener(segments, Tolerance.FLATNESS_MM, frame);
    }

    /** Each chain, given its pieces. */
    static List<GridChain> of(List<List<Bezier>> chains, Box frame) {
        Rereading rereading = new Rereading(frame);
        List<GridChain> read = new ArrayList<>(chains.size());
        for (List<Bezier> pieces : chains) {
            read.add(rereading.read(pieces, read.size()));
        }
        return read;
    }

    private GridChain read(List<Bezier> pieces, int number) {
        PiecePen pen = new PiecePen();
        pen.moveTo(pieces.get(0).x(0), pieces.get(0).y(0));
        pen.draw(pieces, true);
        int first = segments.size();
        flattener.add(pen.outline(), number);
        int end = first;
        // The line that closes an outline is no part of the chain.
        while (end < segments.size() && segments.command(end) <= pen.drawn()) {
            end++;
        }
        int points = first == end ? 0 : end - first + 1;
        GridChain read = new GridChain(new int[points], new int[points]);
        for (int s = first; s < end; s++) {
            read.x()[s - first] = segments.x0(s);
            read.y()[s - first] = segments.y0(s);
            read.x()[s - first + 1] = segments.x1(s);
            read.y()[s - first + 1] = segments.y1(s);
        }
        return read;
    }
}
