package inkstrata.underbase;

import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.Mesh;
import inkstrata.plan.Overlap;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Side;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Option;
import inkstrata.plugin.Options;
import inkstrata.plugin.Planner;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * An opaque ground beneath everything that prints, on dark or coloured sheets; inks that hide the sheet by themselves do without.
 *
 * <p>Opaque white first, choked by 0.2 to 0.5 mm: common practice, no source; that it is choked by the register error is geometry: by as
 * much may it come out from beneath the edge of what lies over it.
 */
public final class Underbase implements Planner {
    /** White that nobody listed. */
    private static final String NAME = "underbase";

    /** Hiding of an opaque white (common practice, no source). */
    private static final double HIDING = 0.95;

    /** Coarse cloth for opaque white (common practice, no source). */
    private static final Mesh MESH = new Mesh(43, 80);

    static final double LEAST_MM = 0;
    static final double MOST_MM = 5;

    @Override
    public String id() {
        return "underbase";
    }

    @Override
    public String description() {
        return "an opaque ground beneath inks that would change their colour on the sheet";
    }

    @Override
    public List<Option> options() {
        return List.of(
                Option.flag("enabled", false, "print a ground first").formerly("on"),
                Option.text(
                        "ink",
                        "white",
                        "the ink of the job that it is printed with; left out, the white of the drawing, else one that hides 0.95"),
                Option.length(
                        "choke",
                        "as register",
                        new Option.Range(LEAST_MM, MOST_MM),
                        "by how much it stays behind the edge of what lies over it; left out, the job's register"),
                Option.number(
                        "tolerance",
                        String.valueOf(Overlap.TOLERANCE),
                        new Option.Range(0, 100),
                        "an ink that changes by no more on the bare sheet (CIEDE2000) does without"));
    }

    /** Before anybody decides what runs on: that depends on the ground. */
    @Override
    public int rank() {
        return 15;
    }

    @Override
    public int depth(Job job) {
        return 1;
    }

    static boolean isOn(Job job) {
        return Options.of(new Underbase(), job).flag("enabled");
    }

    /** With less than the register it looks out when pulls are as far off as they may be. */
    static double chokeMm(Job job) {
        return Options.of(new Underbase(), job).lengthMm("choke").orElse(Math.min(job.registerMm(), MOST_MM));
    }

    @Override
    public PrintPlan plan(PlanningTable table, PrintPlan soFar, Job job) {
        if (!isOn(job) || soFar.pulls().isEmpty()) {
            return soFar;
        }
        double tolerance = Options.of(this, job).number("tolerance").orElseThrow();
        Prediction prediction = new Prediction(table.sheet());
        Optional<SharedWhite> shared = isNamed(job) ? Optional.empty() : SharedWhite.of(white(), table, soFar, job);
        Ink base = shared.map(SharedWhite::ink).orElseGet(() -> ink(table, soFar, job));
        Map<String, Double> changes = new TreeMap<>();
        for (Pull pull : soFar.pulls()) {
            changes.put(pull.ink().name(), prediction.difference(List.of(pull.ink()), List.of(base, pull.ink())));
        }
        StackSet needed = StackSet.of(table.rows().stream()
                .filter(row -> shown(row, soFar)
                        .filter(ink -> !ink.equals(base))
                        .anyMatch(ink -> changes.get(ink.name()) > tolerance))
                .mapToInt(Row::stack));
        if (needed.isEmpty()) {
            return soFar.withDecision(new Decision(
                    id(),
                    "",
                    "No ground is printed.",
                    String.format(
                            Locale.ROOT,
                            "Over one no ink would change by more than %.1f (CIEDE2000); %.1f is allowed.",
                            changes.values().stream()
                                    .mapToDouble(Double::doubleValue)
                                    .max()
                                    .orElse(0),
                            tolerance)));
        }
        PrintPlan plan = soFar.withPulls(withGround(base, needed, soFar, table))
                .withDecision(decision(base, changes, tolerance));
        return shared.isPresent() ? plan.withDecision(shared.get().decision(id())) : plan;
    }

    private boolean isNamed(Job job) {
        return job.settingsFor(id()).values().containsKey("ink");
    }

    private static Ink white() {
        return new Ink(NAME, Rgb.WHITE, HIDING, Optional.of(MESH), false);
    }

    private static Stream<Ink> shown(Row row, PrintPlan plan) {
        return plan.pulls().stream().map(Pull::ink).filter(row::shows);
    }

    /** The ink that the job names, or a white of our own. */
    private Ink ink(PlanningTable table, PrintPlan soFar, Job job) {
        Optional<String> named =
                isNamed(job) ? Optional.of(Options.of(this, job).text("ink")) : Optional.empty();
        List<Ink> known = Stream.concat(soFar.pulls().stream().map(Pull::ink), table.spare().stream())
                .toList();
        if (named.isEmpty()) {
            if (known.stream().anyMatch(ink -> ink.name().equals(NAME))) {
                throw new JobException(
                        job.file(),
                        job.settingsFor(id()).line(),
                        "an ink is called 'underbase'. If it is to be the ground, set underbase.ink to it; else rename it.");
            }
            return white();
        }
        return known.stream()
                .filter(ink -> ink.name().equals(named.get()))
                .findFirst()
                .orElseThrow(() -> new JobException(
                        job.file(),
                        job.settingsFor(id()).line(),
                        "underbase.ink names '" + named.get() + "', which no ink is called. List it under inks."));
    }

    /** Farthest from the eye: first on the front of a sheet, last on its back. */
    private static List<Pull> withGround(Ink base, StackSet needed, PrintPlan soFar, PlanningTable table) {
        List<Pull> pulls = new ArrayList<>(soFar.pulls());
        Pull own = pulls.stream()
                .filter(pull -> pull.ink().equals(base))
                .findFirst()
                .orElseGet(() -> new Pull(base, StackSet.NONE));
        pulls.removeIf(pull -> pull.ink().equals(base));
        pulls.add(table.sheet().side(base) == Side.BACK ? pulls.size() : 0, own.asGround(needed));
        return pulls;
    }

    private Decision decision(Ink base, Map<String, Double> changes, double tolerance) {
        List<String> without = changes.entrySet().stream()
                .filter(change ->
                        change.getValue() <= tolerance && !change.getKey().equals(base.name()))
                .map(change -> String.format(Locale.ROOT, "%s (%.1f)", change.getKey(), change.getValue()))
                .toList();
        String most = changes.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(change -> String.format(Locale.ROOT, "%s by %.1f", change.getKey(), change.getValue()))
                .orElse("");
        return new Decision(
                id(),
                base.name(),
                "It is the ground of all inks"
                        + (without.isEmpty()
                                ? "."
                                : " but those that hide the sheet by themselves: " + String.join(", ", without) + "."),
                "Without it the sheet would change " + most + " (CIEDE2000).");
    }
}
