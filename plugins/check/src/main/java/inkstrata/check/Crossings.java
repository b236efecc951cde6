package inkstrata.check;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Corners of the sheet at which inks meet that share no edge there, such as those of two overprinted shapes whose outlines cross, or an
 * ink and the end of another's rim. Vertices within the seam count as one: rims end there but for rounding.
 *
 * <p>However films lie, sheet's corner moves along with them by a little: near it no opening is counted.
 */
final class Crossings {
    private final FilmMap map;
    private final Map<Spot, List<int[]>> sidesAt = new LinkedHashMap<>();
    private final Cells<Spot> corners = new Cells<>(2 * Shore.SEAM);

    private Crossings(FilmMap map) {
        this.map = map;
    }

    /** Always in the same order. */
    static List<Spot> of(FilmMap map) {
        Crossings crossings = new Crossings(map);
        map.sendEdgesTo((x0, y0, x1, y1, left, right) -> {
            if (left == FilmMap.SHEET || right == FilmMap.SHEET) {
                crossings.addCorner(new Spot(x0, y0));
                crossings.addCorner(new Spot(x1, y1));
            }
        });
        map.sendEdgesTo((x0, y0, x1, y1, left, right) -> {
            crossings.addSides(new Spot(x0, y0), left, right);
            crossings.addSides(new Spot(x1, y1), left, right);
        });
        return crossings.sidesAt.keySet().stream().filter(crossings::isCrossing).toList();
    }

    private void addCorner(Spot vertex) {
        if (sidesAt.putIfAbsent(vertex, new ArrayList<>()) == null) {
            corners.add(vertex.x(), vertex.y(), vertex);
        }
    }

    private void addSides(Spot vertex, int left, int right) {
        double seam = Shore.SEAM;
        corners.near(vertex.x() - seam, vertex.y() - seam, vertex.x() + seam, vertex.y() + seam, corner -> {
            if (corner.distanceTo(vertex) <= seam) {
                sidesAt.get(corner).add(new int[] {left, right});
            }
        });
    }

    private boolean isCrossing(Spot vertex) {
        TreeMap<Integer, BitSet> beside = new TreeMap<>();
        for (int[] sides : sidesAt.get(vertex)) {
            note(sides[0], sides[1], beside);
            note(sides[1], sides[0], beside);
        }
        for (int one : beside.keySet()) {
            for (int other : beside.tailMap(one, false).keySet()) {
                if (!map.films(one).intersects(map.films(other))
                        && !beside.get(one).get(other)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void note(int cover, int other, Map<Integer, BitSet> beside) {
        if (cover != FilmMap.SHEET) {
            BitSet known = beside.computeIfAbsent(cover, c -> new BitSet());
            if (other != FilmMap.SHEET) {
                known.set(other);
            }
        }
    }
}
