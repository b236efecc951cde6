package inkstrata.planar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Stretches that go on from each other along one side of a strip. */
final class SeamRuns {
    private SeamRuns() {}

    /**
     * The runs of stretches that all close, or that are all too wide for that, each of one kind of strip.
     *
     * <p>At their ends they lose the stretches from which all ways lead to one vertex: there the other side has ended. Where nothing would be
     * left, and there is more than one such vertex, the other side is a row of points: all of the run stays.
     */
    static List<List<SeamStretch>> of(List<SeamStretch> stretches, SeamStacks stacks) {
        int n = stretches.size();
        Map<End, Integer> starts = new HashMap<>();
        for (int i = 0; i < n; i++) {
            starts.put(End.of(stretches.get(i), stretches.get(i).first(), stacks), i);
        }
        int[] next = new int[n];
        boolean[] follows = new boolean[n];
        for (int i = 0; i < n; i++) {
            next[i] = starts.getOrDefault(
                    End.of(stretches.get(i), stretches.get(i).last(), stacks), -1);
            if (next[i] >= 0 && follows[next[i]]) {
                next[i] = -1;
            } else if (next[i] >= 0) {
                follows[next[i]] = true;
            }
        }
        boolean[] done = new boolean[n];
        List<List<SeamStretch>> runs = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (!follows[i]) {
                add(i, stretches, next, done, runs);
            }
        }
        for (int i = 0; i < n; i++) {
            if (!done[i]) {
                add(i, stretches, next, done, runs);
            }
        }
        return runs;
    }

    /** Where a stretch starts or ends, and what its strip becomes. */
    private record End(int strip, int becomes, int x, int y) {
        static End of(SeamStretch stretch, SeamWay way, SeamStacks stacks) {
            return new End(stretch.strip(), stacks.lighter(stretch.one(), stretch.other()), way.x(), way.y());
        }
    }

    private static void add(
            int start, List<SeamStretch> stretches, int[] next, boolean[] done, List<List<SeamStretch>> runs) {
        List<SeamStretch> run = new ArrayList<>();
        int i = start;
        while (i >= 0 && !done[i]) {
            done[i] = true;
            run.add(stretches.get(i));
            i = next[i];
        }
        boolean isClosed = i == start;
        int first = 0;
        int end = run.size();
        while (!isClosed && first < end && run.get(first).isFan()) {
            first++;
        }
        while (!isClosed && end > first && run.get(end - 1).isFan()) {
            end--;
        }
        if (first < end) {
            runs.add(run.subList(first, end));
        } else if (!run.get(0).leadsTo(run.get(run.size() - 1))) {
            runs.add(run);
        }
    }
}
