package inkstrata.artwork;

import java.util.Optional;

/**
 * Shapes that are laid over each other first and only then shine through as one (SVG 2, section 3.5, group opacity).
 *
 * <p>The shapes of one group follow one another in paint order and share one instance.
 *
 * @param number unique in the artwork; groups are numbered in the order in which they open
 * @param opacity 0 to 1
 * @param outer the group around this one
 */
public record TranslucentGroup(int number, double opacity, Optional<TranslucentGroup> outer) {
    public TranslucentGroup {
        if (!(opacity >= 0 && opacity <= 1)) {
            throw new IllegalArgumentException("opacity " + opacity + " is outside 0 to 1");
        }
    }
}
