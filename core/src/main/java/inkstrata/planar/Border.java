package inkstrata.planar;

import java.util.List;

/**
 * The edges that two sets of stacks share, joined into chains.
 *
 * @param chains vertices in grid steps, x and y in turn; a closed chain repeats its first vertex
 */
public record Border(List<int[]> chains) {
    public Border {
        chains = List.copyOf(chains);
    }
}
