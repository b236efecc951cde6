package inkstrata.film;

import inkstrata.measure.Frame;
import inkstrata.planar.Region;
import java.util.List;

/**
 * One film as it was read, in place on the sheet; the film of a sheet's back is turned over, so that it reads as the print does from
 * the front.
 *
 * @param file name, for messages
 * @param page what the file holds
 * @param picture what is opaque in the picture
 * @param around what is opaque outside of it: marks, label
 * @param stains paint that is neither opaque nor clear; counted as opaque where it is darker than middle grey
 */
public record Film(String file, Frame page, Region picture, Region around, List<Stain> stains) {
    public Film {
        stains = List.copyOf(stains);
    }

    public Film withPicture(Region newPicture) {
        return new Film(file, page, newPicture, around, stains);
    }

    public Film withAround(Region newAround) {
        return new Film(file, page, picture, newAround, stains);
    }
}
