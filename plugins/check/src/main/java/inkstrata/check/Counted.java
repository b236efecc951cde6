package inkstrata.check;

import inkstrata.colour.Ciede2000;
import inkstrata.plan.Ink;
import inkstrata.plan.Overlap;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
import inkstrata.plan.Pull;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The pulls that keep paper from showing, and those that are passed over, as if they were not printed.
 *
 * <p>Passed over are a ground where it does not show: where nothing but it shows, the inks above it have parted. Where it shows it counts like
 * any ink, and so far beneath its neighbours as pulls may be off. Drawings of their own: they lie
 * over whatever there is, and fit nothing. Inks that cannot be seen on the sheet, such as a clear coat: paper shows through them. And what
 * covers everything that others print: with it nothing would ever open, however far the others part.
 *
 * @param pulls positions of those that count, in print order
 * @param passedOver positions of the others
 */
record Counted(Separation planned, List<Integer> pulls, List<Integer> passedOver) {
    /** Less of the frame than this share is left bare by a film that covers all of it: rounding. */
    private static final double ROUNDING = 1e-6;

    static Counted of(Separation planned) {
        List<Integer> seen = IntStream.range(0, planned.plan().pulls().size())
                .filter(pull -> !planned.isOnlyGround(pull)
                        && pull(planned, pull).ink().from().isEmpty()
                        && isSeen(pull(planned, pull).ink(), planned))
                .boxed()
                .toList();
        StackSet inked = prints(planned, seen);
        List<Integer> parted = seen.size() < 2
                ? seen
                : seen.stream().filter(pull -> !coversAll(planned, pull, inked)).toList();
        List<Integer> others = IntStream.range(0, planned.plan().pulls().size())
                .filter(pull -> !parted.contains(pull))
                .boxed()
                .toList();
        return new Counted(planned, parted, others);
    }

    private static Pull pull(Separation planned, int pull) {
        return planned.plan().pulls().get(pull);
    }

    /** Whether it changes the sheet's colour by more than passes for equal. */
    private static boolean isSeen(Ink ink, Separation planned) {
        Prediction prediction = new Prediction(planned.table().sheet());
        return Ciede2000.difference(prediction.lab(List.of()), prediction.lab(List.of(ink))) > Overlap.TOLERANCE;
    }

    /** Whether it prints wherever any does, or its film is black all over. */
    private static boolean coversAll(Separation planned, int pull, StackSet inked) {
        double all =
                planned.artwork().frame().width() * planned.artwork().frame().height();
        return inked.minus(counts(planned, pull)).isEmpty()
                || (!pull(planned, pull).ground() && planned.printed().get(pull).areaMm2() >= all * (1 - ROUNDING));
    }

    private static StackSet prints(Separation planned, List<Integer> pulls) {
        return pulls.stream().map(pull -> counts(planned, pull)).reduce(StackSet.NONE, StackSet::or);
    }

    /** Where a pull counts. */
    private static StackSet counts(Separation planned, int number) {
        Pull pull = pull(planned, number);
        return pull.ground()
                ? StackSet.of(planned.table().rows().stream()
                        .filter(row -> row.shows(pull.ink()))
                        .mapToInt(Row::stack))
                : pull.prints();
    }

    /** All places that are to be inked by one that counts. */
    Region picture() {
        return planned.map().dissolve(prints(planned, pulls));
    }

    /**
     * Of one film for each pull those that count.
     *
     * @param registerMm by which pulls may be off
     */
    List<Region> of(List<Region> films, double registerMm) {
        return pulls.stream()
                .map(pull -> pull(planned, pull).ground()
                        ? films.get(pull)
                                .intersection(planned.map()
                                        .dissolve(counts(planned, pull))
                                        .grown(registerMm, Corners.ROUND))
                        : films.get(pull))
                .toList();
    }

    List<String> inks() {
        return names(pulls);
    }

    List<String> namesPassedOver() {
        return names(passedOver);
    }

    private List<String> names(List<Integer> some) {
        List<String> names = new ArrayList<>();
        some.forEach(pull -> names.add(pull(planned, pull).ink().name()));
        return names;
    }
}
