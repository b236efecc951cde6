package inkstrata.planar;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Chains that would be drawn over each other, or as nothing at all, since what lies between is thinner than curves may be
 * off.
 */
final class Clashes {
    private Clashes() {}

    /**
     * The numbers of such chains.
     *
     * @param pieces those of each chain
     * @param units that numbers are drawn in, to one
     */
    static BitSet of(List<List<Bezier>> pieces, int units) {
        BitSet clashing = new BitSet();
        Map<Long, Integer> chainOf = new HashMap<>();
        for (int chain = 0; chain < pieces.size(); chain++) {
            boolean isNothing = true;
            for (Bezier piece : pieces.get(chain)) {
                if (piece.isNothing(units)) {
                    continue;
                }
                isNothing = false;
                Integer other = chainOf.putIfAbsent(piece.fingerprint(units), chain);
                if (other != null) {
                    clashing.set(chain);
                    clashing.set(other);
                }
            }
            if (isNothing) {
                clashing.set(chain);
            }
        }
        return clashing;
    }
}
