package inkstrata.plan;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.colour.Spectrum;

/**
 * What is seen where one ink prints over another on a white sheet; a guide, as {@link inkstrata.colour.InkFilm} is.
 *
 * @param lower farther from the eye
 * @param upper nearer to it
 */
public record Overlap(Ink lower, Ink upper) {
    /** Smaller differences (CIEDE2000) pass for equal in a print (common practice, no source). */
    public static final double TOLERANCE = 2;

    /** How far what is seen is from the upper ink alone (CIEDE2000). */
    public double fromUpper() {
        return Ciede2000.difference(colour(), Lab.of(upper.swatch()));
    }

    /** How far what is seen is from the lower ink alone (CIEDE2000). */
    public double fromLower() {
        return Ciede2000.difference(colour(), Lab.of(lower.swatch()));
    }

    private Lab colour() {
        return upper.film().over(lower.film().over(Spectrum.WHITE)).lab();
    }
}
