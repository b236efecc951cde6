package inkstrata.trap;

import java.util.Map;
import java.util.TreeMap;

/**
 * How wide the trap is between two pulls, by their positions, in millimetres.
 *
 * @param usual where nothing else is asked
 * @param ofInk asked for all borders of one pull
 * @param ofPair asked between two pulls, each a list of the lower position and the higher
 */
record TrapWidths(double usual, Map<Integer, Double> ofInk, Map<Pair, Double> ofPair) {
    /**
     * Two pulls.
     *
     * @param lower position
     * @param higher position
     */
    record Pair(int lower, int higher) implements Comparable<Pair> {
        static Pair of(int one, int other) {
            return new Pair(Math.min(one, other), Math.max(one, other));
        }

        @Override
        public int compareTo(Pair other) {
            int first = Integer.compare(lower, other.lower);
            return first != 0 ? first : Integer.compare(higher, other.higher);
        }
    }

    TrapWidths {
        ofInk = Map.copyOf(new TreeMap<>(ofInk));
        ofPair = Map.copyOf(new TreeMap<>(ofPair));
    }

    /** Whether something is asked for the two of them or for one of them. */
    boolean isAsked(int one, int other) {
        return ofPair.containsKey(Pair.of(one, other)) || ofInk.containsKey(one) || ofInk.containsKey(other);
    }

    /** What is asked for the two of them, else for the one that gives way, else for the other. */
    double of(int giving, int receiving) {
        Double pair = ofPair.get(Pair.of(giving, receiving));
        if (pair != null) {
            return pair;
        }
        return ofInk.getOrDefault(giving, ofInk.getOrDefault(receiving, usual));
    }

    /** Whether there is no trap anywhere. */
    boolean isNothing() {
        return usual == 0
                && ofInk.values().stream().allMatch(width -> width == 0)
                && ofPair.values().stream().allMatch(width -> width == 0);
    }
}
