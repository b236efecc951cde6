package inkstrata.check;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says how far something lies from where it should. */
final class Direction {
    private Direction() {}

    /** As in "0.500 mm too far right and 0.100 mm too far up". */
    static String tooFar(double rightMm, double downMm) {
        return both(" mm too far ", rightMm, downMm);
    }

    /** As in "0.500 mm farther right and 0.100 mm farther up". */
    static String farther(double rightMm, double downMm) {
        return both(" mm farther ", rightMm, downMm);
    }

    private static String both(String words, double rightMm, double downMm) {
        return Stream.of(one(words, rightMm, "right", "left"), one(words, downMm, "down", "up"))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" and "));
    }

    private static Optional<String> one(String words, double distance, String where, String whereIfNegative) {
        String length = String.format(Locale.ROOT, "%.3f", Math.abs(distance));
        return length.equals("0.000")
                ? Optional.empty()
                : Optional.of(length + words + (distance > 0 ? where : whereIfNegative));
    }
}
