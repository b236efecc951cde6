package inkstrata.command;

import inkstrata.measure.Place;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Findings as a map tells them: those of one place together, the worst first, so many that they can be read, and the rest in numbers.
 *
 * @param numbered told in full; the first is number 1
 * @param rest drawn, but only counted
 */
record MapSpots(List<Spot> numbered, List<Finding> rest) {
    /** Spots that are told in full. */
    static final int MOST = 20;

    /** Findings of one spot that are told in full. */
    private static final int MOST_HERE = 3;

    MapSpots {
        numbered = List.copyOf(numbered);
        rest = List.copyOf(rest);
    }

    /**
     * What was found at one place.
     *
     * @param place of the worst of them; none if they speak of the whole set
     * @param findings the worst first, that are told in full
     * @param more how many more lie here
     */
    record Spot(Optional<Place> place, List<Finding> findings, int more) {
        Spot {
            findings = List.copyOf(findings);
        }

        Severity worst() {
            return findings.get(0).severity();
        }

        Spot with(Finding finding) {
            if (findings.size() >= MOST_HERE) {
                return new Spot(place, findings, more + 1);
            }
            List<Finding> all = new ArrayList<>(findings);
            all.add(finding);
            return new Spot(place, all, more);
        }
    }

    /** @param nearMm places no farther apart are one */
    static MapSpots of(List<Finding> findings, double nearMm) {
        List<Finding> worstFirst = findings.stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
        List<Spot> spots = new ArrayList<>();
        List<Finding> rest = new ArrayList<>();
        for (Finding finding : worstFirst) {
            Optional<Place> place = isOfAll(finding) ? Optional.empty() : Optional.of(finding.place());
            int at = 0;
            while (at < spots.size() && !isNear(spots.get(at).place(), place, nearMm)) {
                at++;
            }
            if (at < spots.size()) {
                spots.set(at, spots.get(at).with(finding));
            } else if (spots.size() < MOST) {
                spots.add(new Spot(place, List.of(finding), 0));
            } else {
                rest.add(finding);
            }
        }
        return new MapSpots(spots, rest);
    }

    /** How many of the rest there are by severity and rule, the worst first. */
    Map<String, Integer> restByRule() {
        Map<String, Integer> counted = new LinkedHashMap<>();
        rest.forEach(finding -> counted.merge(finding.rule(), 1, Integer::sum));
        return counted;
    }

    /** What speaks of no place: such findings lie at the sheet's corner. */
    private static boolean isOfAll(Finding finding) {
        return finding.area().isEmpty()
                && finding.subject().equals(Subject.ALL)
                && finding.place().x() == 0
                && finding.place().y() == 0;
    }

    private static boolean isNear(Optional<Place> one, Optional<Place> other, double nearMm) {
        return (one.isPresent() && other.isPresent())
                ? Math.hypot(
                                one.get().x() - other.get().x(),
                                one.get().y() - other.get().y())
                        <= nearMm
                : (one.isEmpty() && other.isEmpty());
    }
}
