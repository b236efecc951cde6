package inkstrata.reduction;

import inkstrata.job.Job;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Pull;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Inspector;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Separation;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds places where more dry ink lies than the job wants: it dries slowly, cracks, and sticks to the next sheet. */
public final class InkHeight implements Inspector {
    @Override
    public String id() {
        return "ink-height";
    }

    @Override
    public String description() {
        return "places where films over each other are too thick (reduction.film, reduction.highest)";
    }

    /** One warning, where it is most; with how much of the picture is too high. */
    @Override
    public Inspection inspect(Separation separation, Job job) {
        List<Pull> pulls = separation.plan().pulls();
        double highest = Reduction.highestMicrometres(job);
        List<Row> tooHigh = separation.table().rows().stream()
                .filter(row -> row.areaMm2() > 0)
                .filter(row -> micrometres(row.stack(), pulls, job) > highest)
                .toList();
        if (tooHigh.isEmpty()) {
            return Inspection.NOTHING;
        }
        Row most = tooHigh.stream()
                .max(Comparator.comparingDouble((Row row) -> micrometres(row.stack(), pulls, job))
                        .thenComparing(Row::areaMm2))
                .orElseThrow();
        double micrometres = micrometres(most.stack(), pulls, job);
        return Inspection.of(List.of(new Finding(
                        Severity.WARNING,
                        "ink height",
                        separation.map().dissolve(StackSet.of(most.stack())).somewhere(),
                        String.format(
                                Locale.ROOT,
                                "about %.0f µm of dry ink, %.1f cm² in all are too high",
                                micrometres,
                                tooHigh.stream().mapToDouble(Row::areaMm2).sum() / 100),
                        String.format(Locale.ROOT, "%.0f µm", highest),
                        "Take finer cloth or fewer steps, keep the place free of earlier ones, or raise reduction.highest.")
                .withQuantity(Quantity.of(micrometres, highest, Unit.MICROMETRES))
                .withArea(separation.map().dissolve(StackSet.of(tooHigh.stream().mapToInt(Row::stack))))));
    }

    /** The dry ink that a stack gets from all its pulls: by their meshes, else by the film that the job assumes. */
    static double micrometres(int stack, List<Pull> pulls, Job job) {
        return pulls.stream()
                .filter(pull -> pull.prints().contains(stack))
                .mapToDouble(pull -> pull.ink()
                        .mesh()
                        .map(mesh -> mesh.dryFilmMicrometres())
                        .orElseGet(() -> Reduction.filmMicrometres(job)))
                .sum();
    }
}
