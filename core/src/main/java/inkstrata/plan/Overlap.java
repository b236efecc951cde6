package inkstrata.plan;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.colour.Rgb;
import inkstrata.colour.Xyz;

/**
 * What is seen where one ink prints over another: a rough guide, in which the upper ink filters the light of the lower one so far
 * as it is clear (our own choice).
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
        Xyz alone = Xyz.of(upper.swatch());
        Xyz under = Xyz.of(lower.swatch());
        Xyz white = Xyz.of(Rgb.WHITE);
        double hiding = upper.hiding();
        return Lab.of(new Xyz(
                alone.x() * (hiding + (1 - hiding) * under.x() / white.x()),
                alone.y() * (hiding + (1 - hiding) * under.y() / white.y()),
                alone.z() * (hiding + (1 - hiding) * under.z() / white.z())));
    }
}
