package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Finds the edges along which things spread, all spreads in one pass, and joins them to chains along the outlines of what is
 * spread into.
 *
 * <p>An outline goes around all kinds that are spread into together: where a line between two of them meets it, the walk goes
 * on beyond that line. So a chain stays at one interior and ends where something else lies at either side.
 */
final class SpreadBorders {
    private static final int NOTHING = -1;
    private static final int NOT_ASKED = -2;

    private final Borderlines lines;
    private final StackKinds kinds;
    private final List<StackSet> areas;
    private final List<Spread> spreads;
    private final int[] previous;
    /** For each kind, and each that may lie beside it, what spreads into it from there, as far as that was asked for. */
    private final int[][] between;
    /** For each half-edge what spreads across it to its left. */
    private final int[] spreadOf;

    SpreadBorders(Borderlines lines, StackKinds kinds, List<StackSet> areas, List<Spread> spreads, Crew crew) {
        this.lines = lines;
        this.kinds = kinds;
        this.areas = areas;
        this.spreads = spreads;
        this.previous = new int[lines.size()];
        for (int h = 0; h < previous.length; h++) {
            previous[lines.next(h)] = h;
        }
        this.between = new int[kinds.count()][];
        this.spreadOf = spreadOf(crew);
    }

    /** All chains of all spreads. */
    List<BorderChain> chains() {
        List<BorderChain> chains = new ArrayList<>();
        boolean[] done = new boolean[lines.size()];
        for (int h = 0; h < done.length; h++) {
            if (spreadOf[h] != NOTHING && !done[h]) {
                chains.add(chain(h, done));
            }
        }
        return limited(chains);
    }

    private List<BorderChain> limited(List<BorderChain> chains) {
        if (spreads.stream().noneMatch(Spread::leavesHalf)) {
            return chains;
        }
        HalfLeft halfLeft = new HalfLeft(lines, kinds, spreads, spreadOf);
        return chains.stream()
                .flatMap(chain ->
                        spreads.get(chain.spread()).leavesHalf() ? halfLeft.limited(chain).stream() : Stream.of(chain))
                .toList();
    }

    private int[] spreadOf(Crew crew) {
        int[] found = new int[lines.size()];
        for (int h = 0; h < found.length; h++) {
            int into = lines.kind(h);
            int from = lines.kind(h ^ 1);
            found[h] = into == Borderlines.NONE || from == Borderlines.NONE ? NOTHING : between(from, into);
        }
        Endings endings = new Endings(lines, kinds, areas, spreads);
        crew.share(found.length, (first, end) -> leaveOutWhatGoesOn(found, endings, first, end));
        return found;
    }

    /** Where the area itself goes on beyond an edge for more than the width, it gains nothing. */
    private int leaveOutWhatGoesOn(int[] found, Endings endings, int first, int end) {
        int left = 0;
        for (int h = first; h < end; h++) {
            if (found[h] != NOTHING && isOwn(h, found[h]) && !endings.isNear(h, found[h])) {
                found[h] = NOTHING;
                left++;
            }
        }
        return left;
    }

    /** Whether the area that spreads lies to the left of a half-edge already. */
    private boolean isOwn(int half, int spread) {
        return kinds.isIn(areas.get(spreads.get(spread).area()), lines.kind(half));
    }

    /**
     * The points in which things meet that spread into each other but share no edge there. None where something lies that is
     * of no kind: what opens there is part of that.
     */
    List<Contact> contacts() {
        List<Contact> contacts = new ArrayList<>();
        Ints around = new Ints(8);
        for (int vertex = 0; vertex < lines.vertexCount(); vertex++) {
            around.clear();
            int first = lines.anyFrom(vertex);
            int half = first;
            do {
                around.add(lines.kind(half));
                half = lines.nextAround(half);
            } while (half != first);
            if (around.size() >= 4) {
                addContacts(around.toArray(), lines.x(vertex), lines.y(vertex), contacts);
            }
        }
        return contacts;
    }

    private void addContacts(int[] around, int x, int y, List<Contact> contacts) {
        if (Arrays.stream(around).anyMatch(kind -> kind == Borderlines.NONE)) {
            return;
        }
        int n = around.length;
        Set<Integer> found = new TreeSet<>();
        Set<Integer> besideEachOther = new TreeSet<>();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                int spread = around[i] == around[j] ? NOTHING : between(around[i], around[j]);
                if (spread != NOTHING
                        && !kinds.isIn(areas.get(spreads.get(spread).area()), around[j])) {
                    boolean besides = j == (i + 1) % n || i == (j + 1) % n;
                    (besides ? besideEachOther : found).add(spread);
                }
            }
        }
        found.removeAll(besideEachOther);
        found.forEach(spread -> contacts.add(new Contact(spread, x, y)));
    }

    private int between(int from, int into) {
        if (between[into] == null) {
            between[into] = new int[kinds.count()];
            Arrays.fill(between[into], NOT_ASKED);
        }
        if (between[into][from] == NOT_ASKED) {
            between[into][from] = find(from, into);
        }
        return between[into][from];
    }

    private int find(int from, int into) {
        for (int s = 0; s < spreads.size(); s++) {
            if (kinds.isIn(spreads.get(s).into(), into)
                    && kinds.isIn(spreads.get(s).from(), from)) {
                return s;
            }
        }
        return NOTHING;
    }

    private BorderChain chain(int half, boolean[] done) {
        int spread = spreadOf[half];
        int first = half;
        int before = before(first, spread);
        while (before != half && spreadOf[before] == spread) {
            first = before;
            before = before(first, spread);
        }
        boolean isClosed = before == half && spreadOf[before] == spread;
        first = isClosed ? half : first;
        Ints xy = new Ints(32);
        addVertex(lines.origin(first), xy);
        int at = first;
        int last = first;
        double own = 0;
        do {
            done[at] = true;
            own += isOwn(at, spread) ? length(at) : 0;
            addVertex(lines.origin(at ^ 1), xy);
            last = at;
            at = after(at, spread);
        } while (at != first && spreadOf[at] == spread);
        EndSweep sweep = new EndSweep(lines, previous, kinds, spreads.get(spread));
        return new BorderChain(
                spread,
                xy.toArray(),
                isClosed,
                spreads.get(spread).widthMm() * Grid.STEPS_PER_MM,
                isClosed ? 0 : sweep.before(first),
                isClosed ? 0 : sweep.after(last),
                own * Grid.STEP_MM);
    }

    private double length(int half) {
        int from = lines.origin(half);
        int to = lines.origin(half ^ 1);
        return Math.hypot((double) lines.x(to) - lines.x(from), (double) lines.y(to) - lines.y(from));
    }

    private boolean isWithin(int half, int spread) {
        return kinds.isIn(spreads.get(spread).into(), lines.kind(half));
    }

    /**
     * The next half-edge of the outline of what is spread into, which lies to the left of a half-edge and not to its right.
     *
     * <p>Ends: it turns around the vertex, and what lies to the right of the half-edge has an edge there that stops it. For the same reason
     * each such half-edge comes after just one other: walks along an outline come back to where they began.
     */
    private int after(int half, int spread) {
        int next = lines.next(half);
        while (isWithin(next ^ 1, spread)) {
            next = lines.next(next ^ 1);
        }
        return next;
    }

    private int before(int half, int spread) {
        int last = previous[half];
        while (isWithin(last ^ 1, spread)) {
            last = previous[last ^ 1];
        }
        return last;
    }

    private void addVertex(int vertex, Ints xy) {
        xy.add(lines.x(vertex));
        xy.add(lines.y(vertex));
    }
}
