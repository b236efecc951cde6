package inkstrata.check;

import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Subject;
import java.util.Locale;

/**
 * A part of a film that lies elsewhere than the rest of it.
 *
 * @param words what it is, as the subject of a sentence with a place for the film's name: parts of the plan, or all on one side of a line
 * @param isOne whether the verb is in the singular
 * @param part where it was planned to lie
 * @param dx how far it has moved, in grid steps
 * @param dy likewise
 */
record MovedPart(String words, boolean isOne, Region part, int dx, int dy) {
    static final String RULE = "moved part";

    Region moved() {
        return part.movedBy(dx, dy);
    }

    double distanceMm() {
        return Math.hypot(dx, dy) * Grid.STEP_MM;
    }

    /** @param file what the film is called */
    Finding finding(String file, Subject subject) {
        return new Finding(
                        Severity.ERROR,
                        RULE,
                        part.somewhere(),
                        String.format(
                                Locale.ROOT,
                                "%s (%.2f mm²) %s %s than the rest",
                                words.replace("%s", file),
                                part.areaMm2(),
                                isOne ? "lies" : "lie",
                                Direction.farther(dx * Grid.STEP_MM, dy * Grid.STEP_MM)),
                        "where the drawing has it",
                        "Move it back to the rest of the film.")
                .about(subject)
                .withQuantity(Quantity.of(distanceMm(), 0, Unit.MILLIMETRES))
                .withArea(part);
    }
}
