package inkstrata.separation;

import inkstrata.separation.Finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What inspectors have to say of a set.
 *
 * @param findings what can go wrong, in an order that is the same on every run
 * @param verdict how far pulls may be off, from an inspector that knows
 */
public record Inspection(List<Finding> findings, Optional<Verdict> verdict) {
    public static final Inspection NOTHING = new Inspection(List.of(), Optional.empty());

    public Inspection {
        findings = List.copyOf(findings);
    }

    /** Findings without a verdict. */
    public static Inspection of(List<Finding> findings) {
        return new Inspection(findings, Optional.empty());
    }

    public Inspection withVerdict(Verdict newVerdict) {
        return new Inspection(findings, Optional.of(newVerdict));
    }

    /**
     * What both found. Of two verdicts the worse counts; errors of one that gives no verdict stand in the way of the other's.
     */
    public Inspection and(Inspection other) {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(other.findings);
        Optional<Verdict> common = verdict.isPresent() && other.verdict.isPresent()
                ? Optional.of(worse(verdict.get(), other.verdict.get()))
                : verdict.map(own -> own.withObstacles(errors(other.findings)))
                        .or(() -> other.verdict.map(own -> own.withObstacles(errors(findings))));
        return new Inspection(all, common);
    }

    private static Verdict worse(Verdict one, Verdict other) {
        int answer = one.answer().compareTo(other.answer());
        return answer < 0
                        || (answer == 0
                                && one.heldMm().orElse(0) <= other.heldMm().orElse(0))
                ? one
                : other;
    }

    /** Rules by which something is an error, with how often. */
    private static List<String> errors(List<Finding> findings) {
        Map<String, Integer> byRule = new TreeMap<>();
        findings.stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .forEach(finding -> byRule.merge(finding.rule(), 1, Integer::sum));
        return byRule.entrySet().stream()
                .map(rule -> rule.getValue() + (rule.getValue() == 1 ? " error (" : " errors (") + rule.getKey() + ")")
                .toList();
    }
}
