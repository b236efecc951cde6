package inkstrata.planar;

import java.util.ArrayList;
import java.util.List;

/**
 * Which source segments run along a tile line: those bent onto it from a tile at either side, and those that lie on it and
 * so were dropped from both. Asked from end to end of the line.
 */
final class TileBorderSources {
    /** Receives a part of an edge and the segment along it, or -1. */
    interface Sink {
        void part(int from, int to, int segment);
    }

    private final List<Range> ranges = new ArrayList<>();
    private final List<Range> open = new ArrayList<>();
    private int next = -1;

    /** Segments are numbered from the topmost outline on. */
    private record Range(int from, int to, int segment) implements Comparable<Range> {
        @Override
        public int compareTo(Range other) {
            return from != other.from ? Integer.compare(from, other.from) : Integer.compare(segment, other.segment);
        }

        boolean covers(int start, int end) {
            return from <= start && to >= end;
        }
    }

    void add(int from, int to, int segment) {
        ranges.add(new Range(from, to, segment));
    }

    /**
     * Hands over an edge whole with the segment of the topmost outline along all of it, or else in as few parts as there
     * must be.
     *
     * @param from not before the end of the edge asked for last
     */
    void split(int from, int to, Sink sink) {
        open(from, to);
        int whole = Integer.MAX_VALUE;
        for (Range range : open) {
            if (range.covers(from, to)) {
                whole = Math.min(whole, range.segment);
            }
        }
        if (whole != Integer.MAX_VALUE) {
            sink.part(from, to, whole);
            return;
        }
        for (int at = from; at < to; ) {
            Range farthest = null;
            int gapEnd = to;
            for (Range range : open) {
                if (range.covers(at, at + 1)) {
                    if (farthest == null
                            || range.to > farthest.to
                            || (range.to == farthest.to && range.segment < farthest.segment)) {
                        farthest = range;
                    }
                } else if (range.from > at) {
                    gapEnd = Math.min(gapEnd, range.from);
                }
            }
            int end = farthest == null ? gapEnd : Math.min(to, farthest.to);
            sink.part(at, end, farthest == null ? -1 : farthest.segment);
            at = end;
        }
    }

    private void open(int from, int to) {
        if (next < 0) {
            ranges.sort(null);
            next = 0;
        }
        open.removeIf(range -> range.to <= from);
        while (next < ranges.size() && ranges.get(next).from < to) {
            open.add(ranges.get(next++));
        }
    }
}
