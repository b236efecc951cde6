package inkstrata.check;

import inkstrata.check.FilmMap.Edge;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Corners of the sheet at which inks meet that share no edge there, such as those of two overprinted shapes whose outlines cross, or an
 * ink and the end of another's rim. Vertices within the seam count as one: rims end there but for rounding.
 *
 * <p>However films lie, sheet's corner moves along with them by a little: near it no opening is counted.
 */
final class Crossings {
    private final FilmMap map;
    private final Map<Spot, List<Edge>> sidesAt = new LinkedHashMap<>();
    private final Cells<Spot> corners = new Cells<>(2 * Shore.SEAM);

    private Crossings(FilmMap map) {
        this.map = map;
    }

    /** Always in the same order. */
    static List<Spot> of(FilmMap map) {
        Crossings crossings = new Crossings(map);
        for (Edge edge : map.edges()) {
            if (edge.isShore()) {
                crossings.addCorner(edge.way().start());
                crossings.addCorner(edge.way().end());
            }
        }
        for (Edge edge : map.edges()) {
            crossings.addSides(edge.way().start(), edge);
            crossings.addSides(edge.way().end(), edge);
        }
        return crossings.sidesAt.keySet().stream().filter(crossings::isCrossing).toList();
    }

    private void addCorner(Spot vertex) {
        if (sidesAt.putIfAbsent(vertex, new ArrayList<>()) == null) {
            corners.add(vertex.x(), vertex.y(), vertex);
        }
    }

    private void addSides(Spot vertex, Edge edge) {
        corners.near(Box.around(vertex).wider(Shore.SEAM), corner -> {
            if (corner.distanceTo(vertex) <= Shore.SEAM) {
                sidesAt.get(corner).add(edge);
            }
        });
    }

    /** Whether two films are there, each without the other, and nowhere meet along an edge. */
    private boolean isCrossing(Spot vertex) {
        BitSet films = new BitSet();
        for (Edge edge : sidesAt.get(vertex)) {
            films.or(films(edge.left()));
            films.or(films(edge.right()));
        }
        int[] all = films.stream().toArray();
        for (int one : all) {
            for (int other : all) {
                if (one < other && cross(one, other, sidesAt.get(vertex))) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean cross(int one, int other, List<Edge> edges) {
        boolean isOneAlone = false;
        boolean isOtherAlone = false;
        for (Edge edge : edges) {
            int left = alone(one, other, films(edge.left()));
            int right = alone(one, other, films(edge.right()));
            if (left * right < 0) {
                return false;
            }
            isOneAlone |= left > 0 || right > 0;
            isOtherAlone |= left < 0 || right < 0;
        }
        return isOneAlone && isOtherAlone;
    }

    /** 1 where only the one of two films is, -1 where only the other is. */
    private static int alone(int one, int other, BitSet films) {
        return (films.get(one) ? 1 : 0) - (films.get(other) ? 1 : 0);
    }

    private BitSet films(int number) {
        return number == FilmMap.SHEET ? new BitSet() : map.films(number);
    }
}
