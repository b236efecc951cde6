package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.separation.Separation;
import java.util.List;

/**
 * What films are held against.
 *
 * @param planned what each pull is to print, with its traps
 * @param drawn the same without: another program's films may have others
 * @param inked all places that some pull is to ink
 * @param frame where the picture lies on the sheet
 * @param inks name of each pull's ink
 */
record Intent(List<Region> planned, List<Region> drawn, Region inked, Frame frame, List<String> inks) {
    Intent {
        planned = List.copyOf(planned);
        drawn = List.copyOf(drawn);
        inks = List.copyOf(inks);
    }

    static Intent of(Separation separation) {
        return new Intent(
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

    /** The middle of what a pull is to print; of the picture if that is nothing. */
    Place middle(int pull) {
        Frame bounds = planned.get(pull).bounds().orElse(frame);
        return new Place(bounds.x() + bounds.width() / 2, bounds.y() + bounds.height() / 2);
    }
}
