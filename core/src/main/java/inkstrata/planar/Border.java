package inkstrata.planar;

import inkstrata.measure.Grid;
import java.util.List;

/**
 * The edges that two sets of stacks share, joined into chains.
 *
 * @param chains vertices in grid steps, x and y in turn; a closed chain repeats its first vertex. The first set lies on the
 *     side of positive cross products: to the right of the way as seen on the sheet
 */
public record Border(List<int[]> chains) {
    public Border {
        chains = List.copyOf(chains);
    }

    public boolean isEmpty() {
        return chains.isEmpty();
    }

    public double lengthMm() {
        double steps = 0;
        for (int[] chain : chains) {
            for (int i = 2; i < chain.length; i += 2) {
                steps += Math.hypot(chain[i] - chain[i - 2], chain[i + 1] - chain[i - 1]);
            }
        }
        return steps * Grid.STEP_MM;
    }
}
