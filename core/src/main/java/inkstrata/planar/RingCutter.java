package inkstrata.planar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts walks into simple rings. */
final class RingCutter {
    private final Borderlines lines;
    /** For each vertex its place on the way not cut off yet, or -1. */
    private final int[] placeOf;

    private final Ints way = new Ints(256);

    RingCutter(Borderlines lines) {
        this.lines = lines;
        this.placeOf = new int[lines.vertexCount()];
        Arrays.fill(placeOf, -1);
    }

    /**
     * The rings of the walk that a half-edge belongs to. Where the walk meets a vertex again, what lies between is a ring of its
     * own. Which rings come out does not depend on where the walk starts: around one interior no two vertices are met in turn.
     */
    List<Ring> cut(int start) {
        List<Ring> rings = new ArrayList<>(1);
        int h = start;
        do {
            int vertex = lines.origin(h);
            if (placeOf[vertex] >= 0) {
                rings.add(cutOff(placeOf[vertex]));
            }
            placeOf[vertex] = way.size();
            way.add(vertex);
            h = lines.next(h);
        } while (h != start);
        rings.add(cutOff(0));
        return rings;
    }

    private Ring cutOff(int place) {
        int[] xy = new int[2 * (way.size() - place)];
        for (int i = place; i < way.size(); i++) {
            int vertex = way.get(i);
            placeOf[vertex] = -1;
            xy[2 * (i - place)] = lines.x(vertex);
            xy[2 * (i - place) + 1] = lines.y(vertex);
        }
        while (way.size() > place) {
            way.dropLast();
        }
        return new Ring(xy);
    }
}
