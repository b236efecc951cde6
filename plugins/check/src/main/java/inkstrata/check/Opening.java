package inkstrata.check;

import inkstrata.measure.Grid;
import java.util.BitSet;
import java.util.List;

/**
 * Places of the picture that no film covers all of: sheet can show between them once pulls are farther off from each other than the
 * places are apart.
 *
 * @param size the most two of the places are apart, in grid steps
 * @param spots the places
 * @param films for each place the films that cover it, by position; not to be changed
 * @param isLost whether at one of the places a film does not print what it was to print
 * @param isFound false if the search ended before it could tell whether there is an opening here at all: then there is none smaller
 */
record Opening(double size, List<Spot> spots, List<BitSet> films, boolean isLost, boolean isFound) {
    Opening {
        spots = List.copyOf(spots);
        films = List.copyOf(films);
    }

    double sizeMm() {
        return size * Grid.STEP_MM;
    }

    /** The middle of its places. */
    Spot middle() {
        return new Spot(
                spots.stream().mapToDouble(Spot::x).average().orElseThrow(),
                spots.stream().mapToDouble(Spot::y).average().orElseThrow());
    }

    static double size(List<Spot> spots) {
        double size = 0;
        for (int i = 0; i < spots.size(); i++) {
            for (int j = 0; j < i; j++) {
                size = Math.max(size, spots.get(i).distanceTo(spots.get(j)));
            }
        }
        return size;
    }
}
