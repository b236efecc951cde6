package inkstrata.plan;

import inkstrata.planar.StackSet;

/**
 * One ink through one screen onto the sheet.
 *
 * @param ink what is printed
 * @param prints the stacks on which it prints
 */
public record Pull(Ink ink, StackSet prints) {
    public Pull withPrints(StackSet newPrints) {
        return new Pull(ink, newPrints);
    }
}
