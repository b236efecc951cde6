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
 * @param blurMm outlines may lie that far from where they were meant, since the film is made of pixels; 0 for drawn outlines
 */
public record Film(String file, Frame page, Region picture, Region around, List<Stain> stains, double blurMm) {
    public Film {
        stains = List.copyOf(stains);
    }

    /** One with drawn outlines. */
    public Film(String file, Frame page, Region picture, Region around, List<Stain> stains) {
        this(file, page, picture, around, stains, 0);
    }

    public Film withPicture(Region newPicture) {
        return new Film(file, page, newPicture, around, stains, blurMm);
    }

    public Film withAround(Region newAround) {
        return new Film(file, page, picture, newAround, stains, blurMm);
    }
}
