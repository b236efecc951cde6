package inkstrata.check;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.colour.Rgb;
import inkstrata.colour.Xyz;
import inkstrata.plan.Ink;

/** How an ink changes the colour of another that prints over it. */
final class Beneath {
    /** Smaller differences (CIEDE2000) pass for equal in a print (common practice, no source). */
    static final double TOLERANCE = 2;

    private Beneath() {}

    /** A rough guide: so far as the upper ink is clear it filters the light of the lower one (our own choice). */
    static double difference(Ink lower, Ink upper) {
        Xyz alone = Xyz.of(upper.swatch());
        Xyz under = Xyz.of(lower.swatch());
        Xyz white = Xyz.of(Rgb.WHITE);
        double hiding = upper.hiding();
        Xyz both = new Xyz(
                alone.x() * (hiding + (1 - hiding) * under.x() / white.x()),
                alone.y() * (hiding + (1 - hiding) * under.y() / white.y()),
                alone.z() * (hiding + (1 - hiding) * under.z() / white.z()));
        return Ciede2000.difference(Lab.of(alone), Lab.of(both));
    }
}
