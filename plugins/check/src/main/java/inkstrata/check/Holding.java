package inkstrata.check;

import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How far a set of films holds: by the inks that count, and beside them by each ink that covers everything and whose film lacks some of that.
 *
 * <p>An ink that covers everything is passed over, since with it nothing would ever open. Where its film is cut back that is no longer so: its edge has to
 * meet another's there.
 *
 * @param counted by the inks that count
 * @param cut the same with one ink that was to cover everything; of each only what is lost because of it
 */
record Holding(LimitFindings counted, List<LimitFindings> cut) {
    Holding {
        cut = List.copyOf(cut);
    }

    /** What was lost stands first; the drawing's own openings come last. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        cut.forEach(one -> findings.addAll(one.lostFindings()));
        findings.addAll(counted.findings());
        return findings;
    }

    /** @param obstacles what must be mended first */
    Verdict verdict(List<String> obstacles) {
        LimitFindings worst = Stream.concat(Stream.of(counted), cut.stream())
                .min(Comparator.comparingDouble(LimitFindings::heldMm))
                .orElseThrow();
        return worst.verdict(obstacles, cut.isEmpty() ? counted.lost().plannedMm() : plannedMm());
    }

    /** The plan holds as far as the inks that count do. */
    private OptionalDouble plannedMm() {
        return counted.lost().plannedMm().isPresent()
                ? counted.lost().plannedMm()
                : Stream.concat(
                                Stream.of(counted.heldMm()),
                                cut.stream().map(one -> one.lost().plannedMm().orElseThrow()))
                        .mapToDouble(Double::doubleValue)
                        .min();
    }

    /** All that films lack and that makes them hold less. */
    Region lacking() {
        return Region.union(Stream.concat(Stream.of(counted), cut.stream())
                .flatMap(one -> one.lost().pieces().stream())
                .map(LostRegister.Piece::lacking)
                .toList());
    }
}
