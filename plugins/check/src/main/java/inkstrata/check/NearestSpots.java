package inkstrata.check;

import java.util.ArrayList;
import java.util.List;

/** One spot on each of several stretches, so that they lie close together. */
final class NearestSpots {
    private static final int ROUNDS = 12;

    private NearestSpots() {}

    /** The closest of all if there are two stretches; close, if there are more. */
    static List<Spot> on(List<Stretch> stretches) {
        if (stretches.size() == 2) {
            Stretch way = stretches.get(0).wayTo(stretches.get(1));
            return List.of(way.start(), way.end());
        }
        List<Spot> spots =
                new ArrayList<>(stretches.stream().map(Stretch::middle).toList());
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < spots.size(); i++) {
                spots.set(i, stretches.get(i).nearest(middleOfOthers(spots, i)));
            }
        }
        return spots;
    }

    private static Spot middleOfOthers(List<Spot> spots, int one) {
        double x = 0;
        double y = 0;
        for (int i = 0; i < spots.size(); i++) {
            if (i != one) {
                x += spots.get(i).x();
                y += spots.get(i).y();
            }
        }
        return new Spot(x / (spots.size() - 1), y / (spots.size() - 1));
    }
}
