package inkstrata.artwork.stroke;

import java.util.ArrayList;
import java.util.List;

/** Cuts a subpath into dashes (SVG 2, section 13.5.6); each subpath begins the pattern anew. Not for several threads. */
final class Dashes {
    /** Ends of dashes nearer than this to a corner lie on it, in the path's units of 1 µm. */
    private static final double ON_THE_CORNER = 1e-3;

    private final double[] pattern;
    private final List<Run> runs = new ArrayList<>();
    private final List<Dot> dots = new ArrayList<>();
    private List<Span> open = new ArrayList<>();
    private int index;
    private double left;

    private Dashes(StrokeStyle style) {
        pattern = style.pattern();
        left = style.positiveDashOffset();
        while (left > pattern[index]) {
            left -= pattern[index];
            index = (index + 1) % pattern.length;
        }
        left = pattern[index] - left;
    }

    /**
     * The dashes of a subpath that has a length.
     *
     * @param dots is given those of no length
     */
    static List<Run> of(Subpath subpath, StrokeStyle style, List<Dot> dots) {
        Dashes dashes = new Dashes(style);
        boolean begins = dashes.isOn() && dashes.left > 0;
        for (Leg leg : subpath.legs()) {
            dashes.cut(leg);
        }
        boolean ends = !dashes.open.isEmpty();
        if (ends) {
            dashes.close();
        }
        dots.addAll(dashes.dots);
        List<Run> runs = dashes.runs;
        if (subpath.closed() && begins && ends) {
            joinEnds(runs);
        }
        return runs;
    }

    /** The last dash runs on into the first; if it is the first, nothing was ever cut. */
    private static void joinEnds(List<Run> runs) {
        if (runs.size() == 1) {
            runs.set(0, new Run(runs.get(0).spans(), true));
            return;
        }
        List<Span> joined = new ArrayList<>(runs.remove(runs.size() - 1).spans());
        joined.addAll(runs.get(0).spans());
        runs.set(0, new Run(joined, false));
    }

    private boolean isOn() {
        return index % 2 == 0;
    }

    private void cut(Leg leg) {
        Lengths lengths = new Lengths(leg);
        double total = lengths.total();
        double at = 0;
        double from = 0;
        while (at + left <= total - ON_THE_CORNER) {
            at += left;
            double to = lengths.parameter(at);
            if (isOn()) {
                if (to > from) {
                    open.add(new Span(leg, from, to));
                }
                if (open.isEmpty()) {
                    dots.add(new Dot(Station.at(leg, to, true)));
                } else {
                    close();
                }
            }
            from = to;
            index = (index + 1) % pattern.length;
            left = pattern[index];
        }
        left -= total - at;
        if (left < ON_THE_CORNER) {
            left = 0;
        }
        if (isOn() && from < 1) {
            open.add(new Span(leg, from, 1));
        }
    }

    private void close() {
        runs.add(new Run(open, false));
        open = new ArrayList<>();
    }
}
