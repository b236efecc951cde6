package inkstrata.overprint;

import inkstrata.plan.Ink;
import java.util.List;

/**
 * Inks that make a colour of the artwork by lying over each other.
 *
 * @param inks farthest from the eye first
 * @param difference how far what they make is from the colour (CIEDE2000)
 */
record Recipe(List<Ink> inks, double difference) {
    Recipe {
        inks = List.copyOf(inks);
    }
}
