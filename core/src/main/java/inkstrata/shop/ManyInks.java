package inkstrata.shop;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A drawing has more colours than anybody prints, and nobody has said that each of them is to be an ink.
 *
 * @param inks how many there are
 * @param choices what fewer would lose, fewest first
 */
public record ManyInks(int inks, List<FewerInks> choices) {
    /** More are hardly ever meant: the drawing was traced, or has soft edges (our own choice). */
    public static final int MOST = 20;

    /** A hand's four, and about twice as many each time: what presses and patience allow (our own choice). */
    private static final List<Integer> ASKED = List.of(4, 8, 12, 17);

    public ManyInks {
        choices = List.copyOf(choices);
    }

    /** Empty where no more than {@value #MOST} inks were mixed that the job does not list, or the job says how many there may be. */
    static Optional<ManyInks> of(Palette palette, Map<Rgb, Double> visible, SharedEdges edges, Job job) {
        long unlisted =
                palette.inks().stream().filter(ink -> !job.inks().contains(ink)).count();
        if (unlisted <= MOST || job.merge().inks().isPresent()) {
            return Optional.empty();
        }
        return Optional.of(new ManyInks(
                palette.inks().size(),
                ASKED.stream()
                        .filter(most -> most >= palette.inks().size() - unlisted)
                        .map(most -> fewer(
                                Palette.mix(
                                        visible,
                                        edges,
                                        job.withMerge(job.merge().withInks(most))),
                                visible,
                                job))
                        .toList()));
    }

    private static FewerInks fewer(Palette palette, Map<Rgb, Double> visible, Job job) {
        int joined = 0;
        double largest = 0;
        double sum = 0;
        double area = 0;
        for (Map.Entry<Rgb, Optional<Ink>> entry : palette.inkOf().entrySet()) {
            Rgb printed = entry.getValue().map(Ink::swatch).orElse(job.sheetColour());
            double apart = Ciede2000.difference(entry.getKey(), printed);
            joined += entry.getKey().equals(printed) ? 0 : 1;
            largest = Math.max(largest, apart);
            sum += apart * visible.get(entry.getKey());
            area += visible.get(entry.getKey());
        }
        return new FewerInks(palette.inks().size(), joined, largest, area == 0 ? 0 : sum / area);
    }
}
