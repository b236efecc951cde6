package inkstrata.measure;

import java.util.Locale;
import java.util.Optional;

/** The absolute length units of CSS (CSS Values and Units 4, section 6.2): 1 in = 2.54 cm = 96 px = 72 pt = 6 pc. */
public enum LengthUnit {
    MM(1.0),
    CM(10.0),
    IN(25.4),
    Q(0.25),
    PX(25.4 / 96),
    PT(25.4 / 72),
    PC(25.4 / 6);

    private final double millimetres;

    LengthUnit(double millimetres) {
        this.millimetres = millimetres;
    }

    /** One of this unit in millimetres. */
    public double millimetres() {
        return millimetres;
    }

    /** The unit of that CSS name, in any case. */
    public static Optional<LengthUnit> named(String name) {
        for (LengthUnit unit : values()) {
            if (unit.name().equals(name.toUpperCase(Locale.ROOT))) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
