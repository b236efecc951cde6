package inkstrata.check;

import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Inspector;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Quantity;
import inkstrata.separation.Separation;
import inkstrata.separation.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says before a screen is made what is not worth one, or what none can hold. */
public final class Printable implements Inspector {
    /** An ink of less is dust, or a colour somebody drew by mistake (our own choice). */
    private static final double LEAST_MM2 = 1;

    /** About the finest line of the finest cloth that is usual by hand, 140-31: an opening and two threads (common practice, no source). */
    private static final double FINEST_MM = 0.1;

    @Override
    public String id() {
        return "printable";
    }

    @Override
    public String description() {
        return "what is not worth a screen, or too fine for one: nothing at all, less than 1 mm² of an ink, lines finer than any mesh";
    }

    @Override
    public Inspection inspect(Separation separation, Job job) {
        List<Region> printed = separation.printed();
        if (printed.stream().allMatch(Region::isEmpty)) {
            return Inspection.of(List.of(nothing(separation)));
        }
        List<Finding> findings = new ArrayList<>();
        for (int pull = 0; pull < printed.size(); pull++) {
            Ink ink = separation.plan().pulls().get(pull).ink();
            Subject subject = Subject.ink(ink.name()).withPull(pull);
            Region film = printed.get(pull);
            double area = film.areaMm2();
            if (area < LEAST_MM2) {
                Place place = film.isEmpty() ? middle(separation) : film.somewhere();
                findings.add(new Finding(
                                Severity.WARNING,
                                "little ink",
                                place,
                                String.format(Locale.ROOT, "%s prints %.2f mm² in all", ink.name(), area),
                                "1 mm²",
                                "Draw it in another ink's colour (also), ask for fewer inks, or leave it out of the drawing.")
                        .about(subject)
                        .withQuantity(Quantity.of(area, LEAST_MM2, Quantity.Unit.SQUARE_MILLIMETRES)));
            } else {
                ThinParts.finer(film, shown(separation, ink), ink.name(), FINEST_MM)
                        .map(finding -> finding.about(subject))
                        .ifPresent(findings::add);
            }
        }
        return Inspection.of(findings);
    }

    /** Where an ink is to be seen. */
    private static Region shown(Separation separation, Ink ink) {
        return separation
                .map()
                .dissolve(StackSet.of(separation.table().rows().stream()
                        .filter(row -> row.shows(ink))
                        .mapToInt(PlanningTable.Row::stack)));
    }

    private static Finding nothing(Separation separation) {
        return new Finding(
                Severity.ERROR,
                "nothing prints",
                middle(separation),
                separation.artwork().shapes().isEmpty()
                        ? "the drawing has no shapes"
                        : "every colour that shows is the sheet's, "
                                + separation.table().sheet().colour(),
                "some ink",
                "Draw in another colour, or say in the job file which colour the sheet has (sheet: {colour: ...}).");
    }

    private static Place middle(Separation separation) {
        Frame frame = separation.artwork().frame();
        return new Place(frame.x() + frame.width() / 2, frame.y() + frame.height() / 2);
    }
}
