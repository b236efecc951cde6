package inkstrata.planar;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All edges of some regions' outlines, each once, as chains between the vertices at which more than two of them meet.
 *
 * <p>Where just two edges meet, every ring that comes along one goes on along the other. So chains are what neighbours
 * share whole: each ring is a sequence of them. Vertices are numbered from left to right, those above each other from the
 * lowest y.
 */
final class BorderNet {
    private final long[] points;
    /** The two ends of each edge, the lesser first, packed. */
    private final long[] edges;

    /** Edges at each vertex, as a table. */
    private final int[] firstOf;

    private final int[] edgesAt;

    private final int[] chainOfEdge;
    private final int[] placeInChain;
    private int[][] chains = new int[16][];
    private int chainCount;

    private BorderNet(long[] points, long[] edges) {
        this.points = points;
        this.edges = edges;
        this.chainOfEdge = new int[edges.length];
        this.placeInChain = new int[edges.length];
        this.firstOf = new int[points.length + 1];
        this.edgesAt = new int[2 * edges.length];
    }

    static BorderNet of(List<Region> regions) {
        List<Ring> rings =
                regions.stream().flatMap(region -> region.rings().stream()).toList();
        int size = rings.stream().mapToInt(Ring::size).sum();
        long[] points = new long[size];
        int at = 0;
        for (Ring ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                points[at++] = packed(ring.x(i), ring.y(i));
            }
        }
        points = sortedOnce(points);
        long[] edges = new long[size];
        at = 0;
        for (Ring ring : rings) {
            int last = Arrays.binarySearch(points, packed(ring.x(ring.size() - 1), ring.y(ring.size() - 1)));
            for (int i = 0; i < ring.size(); i++) {
                int next = Arrays.binarySearch(points, packed(ring.x(i), ring.y(i)));
                edges[at++] = ends(last, next);
                last = next;
            }
        }
        BorderNet net = new BorderNet(points, sortedOnce(edges));
        net.link();
        return net;
    }

    /** The vertex there, or less than 0. */
    int vertex(int x, int y) {
        return Arrays.binarySearch(points, packed(x, y));
    }

    int x(int vertex) {
        return (int) (points[vertex] >> Integer.SIZE);
    }

    int y(int vertex) {
        return (int) (points[vertex] - Integer.MIN_VALUE);
    }

    /** The edge between two vertices in either direction, or less than 0. */
    int edge(int one, int other) {
        return Arrays.binarySearch(edges, ends(one, other));
    }

    int vertexCount() {
        return points.length;
    }

    int edgeCount() {
        return edges.length;
    }

    int chainCount() {
        return chainCount;
    }

    /** The vertices along it; of a closed one the first is also the last. */
    int[] chain(int chain) {
        return chains[chain];
    }

    /** The edges along it. */
    IntStream edgesOf(int chain) {
        int[] vertices = chains[chain];
        return IntStream.range(1, vertices.length).map(i -> edge(vertices[i - 1], vertices[i]));
    }

    /** Both ends of an edge. */
    IntStream endsOf(int edge) {
        return IntStream.of(low(edges[edge]), high(edges[edge]));
    }

    int chainOf(int edge) {
        return chainOfEdge[edge];
    }

    /** How many edges of its chain come before it. */
    int placeInChain(int edge) {
        return placeInChain[edge];
    }

    /** How many edges meet there. */
    int degree(int vertex) {
        return firstOf[vertex + 1] - firstOf[vertex];
    }

    /** The other end of one of the edges there. */
    int neighbour(int vertex, int number) {
        long edge = edges[edgesAt[firstOf[vertex] + number]];
        return low(edge) == vertex ? high(edge) : low(edge);
    }

    boolean isClosed(int chain) {
        return chains[chain][0] == chains[chain][chains[chain].length - 1];
    }

    /** Lets a closed chain begin at another of its vertices. */
    void turn(int chain, int place) {
        int[] old = chains[chain];
        int[] turned = new int[old.length];
        for (int i = 0; i < old.length; i++) {
            turned[i] = old[(place + i) % (old.length - 1)];
        }
        put(chain, turned);
    }

    private void link() {
        for (long edge : edges) {
            firstOf[low(edge) + 1]++;
            firstOf[high(edge) + 1]++;
        }
        for (int v = 0; v < points.length; v++) {
            firstOf[v + 1] += firstOf[v];
        }
        int[] fill = firstOf.clone();
        for (int e = 0; e < edges.length; e++) {
            edgesAt[fill[low(edges[e])]++] = e;
            edgesAt[fill[high(edges[e])]++] = e;
        }
        Arrays.fill(chainOfEdge, -1);
        Walk walk = new Walk();
        for (int v = 0; v < points.length; v++) {
            if (!walk.goesOn(v)) {
                for (int i = firstOf[v]; i < firstOf[v + 1]; i++) {
                    walk.from(v, edgesAt[i]);
                }
            }
        }
        for (int v = 0; v < points.length; v++) {
            walk.from(v, edgesAt[firstOf[v]]);
        }
    }

    private final class Walk {
        private final Ints vertices = new Ints(64);

        boolean goesOn(int vertex) {
            return degree(vertex) == 2;
        }

        /** Follows edges from a vertex to the next at which others meet them, or round to itself. */
        void from(int start, int firstEdge) {
            if (chainOfEdge[firstEdge] >= 0) {
                return;
            }
            vertices.clear();
            vertices.add(start);
            int at = start;
            int edge = firstEdge;
            while (true) {
                chainOfEdge[edge] = chainCount;
                at = low(edges[edge]) == at ? high(edges[edge]) : low(edges[edge]);
                vertices.add(at);
                if (at == start || !goesOn(at)) {
                    break;
                }
                edge = edgesAt[firstOf[at]] == edge ? edgesAt[firstOf[at] + 1] : edgesAt[firstOf[at]];
            }
            if (chainCount == chains.length) {
                chains = Arrays.copyOf(chains, 2 * chainCount);
            }
            put(chainCount++, vertices.toArray());
        }
    }

    private void put(int chain, int[] vertices) {
        chains[chain] = vertices;
        for (int i = 0; i + 1 < vertices.length; i++) {
            int edge = edge(vertices[i], vertices[i + 1]);
            chainOfEdge[edge] = chain;
            placeInChain[edge] = i;
        }
    }

    private static long packed(int x, int y) {
        return ((long) x << Integer.SIZE) + y - Integer.MIN_VALUE;
    }

    private static long ends(int one, int other) {
        return (long) Math.min(one, other) << Integer.SIZE | Math.max(one, other);
    }

    private static int low(long edge) {
        return (int) (edge >> Integer.SIZE);
    }

    private static int high(long edge) {
        return (int) edge;
    }

    private static long[] sortedOnce(long[] values) {
        Arrays.parallelSort(values);
        int kept = 0;
        for (int i = 0; i < values.length; i++) {
            if (i == 0 || values[i] != values[i - 1]) {
                values[kept++] = values[i];
            }
        }
        return Arrays.copyOf(values, kept);
    }
}
