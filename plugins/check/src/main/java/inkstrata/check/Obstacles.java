package inkstrata.check;

import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Errors that must be mended before it counts how far a set holds, in a few words for each rule. */
final class Obstacles {
    private Obstacles() {}

    /** In the order of findings; not the errors of a set that holds less than was planned, of which the verdict itself speaks. */
    static List<String> among(List<Finding> findings) {
        Map<String, List<Finding>> byRule = new LinkedHashMap<>();
        findings.stream()
                .filter(finding ->
                        finding.severity() == Severity.ERROR && !finding.rule().equals(LimitFindings.LOST))
                .forEach(finding -> byRule.computeIfAbsent(finding.rule(), rule -> new ArrayList<>())
                        .add(finding));
        List<String> words = new ArrayList<>();
        byRule.forEach((rule, found) -> words.add(words(rule, found)));
        return words;
    }

    private static String words(String rule, List<Finding> found) {
        int count = found.size();
        return switch (rule) {
            case "missing film" -> (count == 1 ? "1 film is missing" : count + " films are missing") + inks(found);
            case "gap" -> "no film covers " + (count == 1 ? "1 place" : count + " places") + " that the drawing inks";
            default -> rule + (count == 1 ? inks(found) : " (" + count + " times)");
        };
    }

    private static String inks(List<Finding> found) {
        String inks = found.stream()
                .map(finding -> finding.subject().ink())
                .filter(ink -> !ink.isEmpty())
                .distinct()
                .collect(Collectors.joining(", "));
        return inks.isEmpty() ? "" : " (" + inks + ")";
    }
}
