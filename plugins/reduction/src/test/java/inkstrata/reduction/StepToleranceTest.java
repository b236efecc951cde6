package inkstrata.reduction;

import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Outline;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.plan.Ink;
import inkstrata.separation.Finding;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The number of docs/printing-rules.md by which a step may change over those beneath it: 2.0, or what the job says. */
class StepToleranceTest {
    private static final Job USUAL = JobReader.read("job.yaml", "use: {reduction: {enabled: true}}");

    @Test
    void stepsThatChangeByMoreThan2AreFound() {
        double largestPassed = 0;
        double smallestFound = Double.POSITIVE_INFINITY;
        for (int hiding = 60; hiding < 100; hiding++) {
            Separation drawn = drawn(hiding / 100.0);
            double change = change(findings(drawn, job(0)));
            boolean isFound = !findings(drawn, USUAL).isEmpty();
            assertThat(isFound).as("a change of %.3f", change).isEqualTo(change > 2);
            largestPassed = isFound ? largestPassed : Math.max(largestPassed, change);
            smallestFound = isFound ? Math.min(smallestFound, change) : smallestFound;
            assertThat(findings(drawn, job(change + 0.01))).isEmpty();
            assertThat(findings(drawn, job(Math.max(0, change - 0.01)))).hasSize(1);
        }
        assertThat(smallestFound - largestPassed)
                .as("steps were tried on either side")
                .isLessThan(1);
    }

    private static Job job(double tolerance) {
        return JobReader.read("job.yaml", "use: {reduction: {enabled: true, tolerance: " + tolerance + "}}");
    }

    private static List<Finding> findings(Separation drawn, Job job) {
        return new StepColours().inspect(drawn, job).findings();
    }

    private static double change(List<Finding> findings) {
        assertThat(findings).hasSize(1);
        return findings.get(0).quantity().orElseThrow().measured();
    }

    /** Rust that hides so much, on the sheet and on night. */
    private static Separation drawn(double hiding) {
        Ink night = ink("night", "#1d2440");
        Ink rust = new Ink("rust", ink("rust", "#b4512d").swatch(), hiding, Optional.empty(), false);
        return new FlatDrawing(60, 40)
                .fill(night, Outline.rectangle(5, 5, 10, 10))
                .fill(rust, Outline.rectangle(20, 5, 30, 30))
                .fill(rust, Outline.rectangle(7, 7, 4, 4))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), night, rust);
    }
}
