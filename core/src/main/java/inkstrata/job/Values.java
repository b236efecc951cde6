package inkstrata.job;

import inkstrata.measure.Length;

/** Single values of a job file; each throws an IllegalArgumentException that quotes what it was given and says how to mend it. */
final class Values {
    /** No two pulls are farther apart than this, or they do not belong to one print. */
    private static final double WORST_REGISTER_MM = 10;

    /** The map's limit for strips that count as not drawn. */
    private static final double WIDEST_SEAM_MM = 0.5;

    private Values() {}

    static double positiveLength(String text) {
        double millimetres = Length.parse(text).millimetres();
        if (!(millimetres > 0)) {
            throw new IllegalArgumentException("'" + text + "' must be more than 0.");
        }
        return millimetres;
    }

    static double register(String text) {
        double millimetres = Length.parse(text).millimetres();
        if (!(millimetres >= 0 && millimetres <= WORST_REGISTER_MM)) {
            throw new IllegalArgumentException("'" + text + "' is outside 0 to 10 mm.");
        }
        return millimetres;
    }

    /** Nothing needs no unit. */
    static double seam(String text) {
        double millimetres = text.strip().equals("0") ? 0 : Length.parse(text).millimetres();
        if (!(millimetres >= 0 && millimetres <= WIDEST_SEAM_MM)) {
            throw new IllegalArgumentException(
                    "'" + text + "' is outside 0 to 0.5 mm. What is wider holds on a mesh: let the shapes overlap.");
        }
        return millimetres;
    }

    static double number(String text) {
        try {
            double number = Double.parseDouble(text.trim());
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("'" + text + "' is not a number.", e);
        }
        throw new IllegalArgumentException("'" + text + "' is not a finite number.");
    }

    static double hiding(String text) {
        double hiding = number(text);
        if (!(hiding >= 0 && hiding <= 1)) {
            throw new IllegalArgumentException("'" + text + "' is outside 0 (clear) to 1 (opaque).");
        }
        return hiding;
    }

    static int prints(String text) {
        double prints = number(text);
        if (prints != Math.rint(prints) || prints < 1 || prints > 1_000_000) {
            throw new IllegalArgumentException("'" + text + "' is not a whole number of prints, 1 or more.");
        }
        return (int) prints;
    }

    static double share(String text) {
        String digits = text.trim();
        if (!digits.endsWith("%")) {
            throw new IllegalArgumentException(
                    "'" + text + "' is not a share. Write it with its sign, for example 12 %.");
        }
        double share = number(digits.substring(0, digits.length() - 1)) / 100;
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("'" + text + "' is outside 0 to 100 %.");
        }
        return share;
    }

    static int inks(String text) {
        double inks = number(text);
        if (inks != Math.rint(inks) || inks < 1 || inks > 1_000) {
            throw new IllegalArgumentException("'" + text + "' is not a whole number of inks, 1 or more.");
        }
        return (int) inks;
    }

    /** A difference of colours. */
    static double difference(String text) {
        double difference = number(text);
        if (!(difference >= 0 && difference <= 100)) {
            throw new IllegalArgumentException("'" + text + "' is outside 0 to 100.");
        }
        return difference;
    }
}
