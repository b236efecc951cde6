package inkstrata.plan;

import inkstrata.planar.StackSet;

/**
 * One ink through one screen onto the sheet.
 *
 * @param ink what is printed
 * @param prints the stacks on which it prints
 * @param ground whether it lies beneath other inks so that they keep their colours, and is not to be seen there
 */
public record Pull(Ink ink, StackSet prints, boolean ground) {
    /** One that is no ground. */
    public Pull(Ink ink, StackSet prints) {
        this(ink, prints, false);
    }

    public Pull withPrints(StackSet newPrints) {
        return new Pull(ink, newPrints, ground);
    }

    /** The same as a ground for more stacks. */
    public Pull asGround(StackSet more) {
        return new Pull(ink, prints.or(more), true);
    }
}
