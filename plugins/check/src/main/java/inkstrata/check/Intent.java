package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What films are held against.
 *
 * @param set the plan
 * @param planned what each pull is to print, with its traps
 * @param drawn the same without: another program's films may have others
 * @param inked all places that some pull is to ink
 * @param frame where the picture lies on the sheet
 * @param inks name of each pull's ink
 */
record Intent(Separation set, List<Region> planned, List<Region> drawn, Region inked, Frame frame, List<String> inks) {
    Intent {
        planned = List.copyOf(planned);
        drawn = List.copyOf(drawn);
        inks = List.copyOf(inks);
    }

    static Intent of(Separation separation) {
        return new Intent(
                separation,
                separation.printed(),
                separation.plan().pulls().stream()
                        .map(pull -> separation.map().dissolve(pull.prints()))
                        .toList(),
                Check.picture(separation),
                separation.artwork().frame(),
                separation.plan().pulls().stream()
                        .map(pull -> pull.ink().name())
                        .toList());
    }

    /** Whatever lies nearer to the eye than a pull does, by the drawing. */
    Region nearer(int pull) {
        return set.map()
                .dissolve(IntStream.range(0, inks.size())
                        .filter(other -> other != pull && set.isNearer(other, pull))
                        .mapToObj(other -> set.plan().pulls().get(other).prints())
                        .reduce(StackSet.NONE, StackSet::or));
    }

    /** The middle of what a pull is to print; of the picture if that is nothing. */
    Place middle(int pull) {
        Frame bounds = planned.get(pull).bounds().orElse(frame);
        return new Place(bounds.x() + bounds.width() / 2, bounds.y() + bounds.height() / 2);
    }
}
