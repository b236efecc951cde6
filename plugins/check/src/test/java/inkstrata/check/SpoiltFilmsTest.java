package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.check.SpoilCase.Spoilt;
import inkstrata.check.Spoiling.Scope;
import inkstrata.check.WrittenFilm.Hand;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Films spoilt by a program: every kind of fault on every film of a set is found where it is and said once, and nothing on films as planned.
 *
 * <p>{@code -Dlaws.drawings=100 -Dlaws.from=40} asks for more drawings, or others.
 */
class SpoiltFilmsTest {
    private static final int DRAWINGS = Integer.getInteger("laws.drawings", 40);
    private static final int FROM = Integer.getInteger("laws.from", 0);

    /** One kind alone, to look closer. */
    private static final String KIND = System.getProperty("laws.kind", "");

    @TempDir
    private Path folder;

    private final List<String> faults = new ArrayList<>();
    private final Map<Long, Bench> benches = new HashMap<>();
    private final Map<Spoiling, Integer> done = new EnumMap<>(Spoiling.class);

    static LongStream drawings() {
        return LongStream.range(FROM, FROM + DRAWINGS);
    }

    /** Each kind on one film of a drawing that has a place for it. */
    @Test
    void everyKindIsFound() {
        int turn = 0;
        for (Spoiling spoiling : Spoiling.values()) {
            turn++;
            for (long seed = 0; !done.containsKey(spoiling); seed++) {
                assertThat(seed).as("a drawing with a place for %s", spoiling).isLessThan(60);
                Bench bench = benches.computeIfAbsent(seed, Bench::new);
                for (int pull = 0; pull < bench.drawn.films().size() && !done.containsKey(spoiling); pull++) {
                    bench.spoil(spoiling, (pull + turn) % bench.drawn.films().size());
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("drawings")
    void everyKindIsFoundOnEveryFilm(long seed, TestReporter reporter) {
        Bench bench = new Bench(seed);
        for (Spoiling spoiling : Spoiling.values()) {
            for (int pull = 0; pull < bench.drawn.films().size(); pull++) {
                if (KIND.isEmpty() || spoiling.name().equals(KIND)) {
                    bench.spoil(spoiling, pull);
                }
            }
        }
        reporter.publishEntry(seed + " " + done);
        assertThat(faults).isEmpty();
    }

    /** A drawing whose films are spoilt. */
    private final class Bench {
        private final long seed;
        private final SpoilCase drawn;
        private List<Finding> right;

        Bench(long seed) {
            this.seed = seed;
            this.drawn = SpoilCase.of(drawing(seed));
        }

        private List<Finding> right() {
            if (right == null) {
                right = serious(CheckedFilms.findings(drawn.planned(), drawn.films(), Hand.PLAIN, folder));
                if (!right.stream().allMatch(finding -> finding.rule().equals("register"))) {
                    faults.add("drawing " + seed + " unspoilt: " + words(right));
                }
            }
            return right;
        }

        void spoil(Spoiling spoiling, int pull) {
            Optional<Spoilt> spoilt = spoiling.spoil(drawn, pull);
            if (spoilt.isEmpty()) {
                return;
            }
            done.merge(spoiling, 1, Integer::sum);
            List<Finding> all =
                    CheckedFilms.findings(drawn.planned(), spoilt.get().films(), Hand.PLAIN, folder);
            List<Finding> wrong = new ArrayList<>(serious(all));
            wrong.removeIf(finding -> right().stream().anyMatch(known -> isSame(known, finding)));
            String said = said(spoiling, pull, spoilt.get(), wrong);
            if (!said.isEmpty()) {
                faults.add(spoiling + " of film " + pull + " of drawing " + seed + ": " + said + ": " + words(wrong));
            }
        }

        /** What is wrong with what was said; nothing if it is right. */
        private String said(Spoiling spoiling, int pull, Spoilt spoilt, List<Finding> wrong) {
            if (spoiling.scope == Scope.NOTHING) {
                return wrong.isEmpty() ? "" : "blamed";
            }
            List<Finding> found = wrong.stream()
                    .filter(finding -> spoiling.rules.contains(finding.rule())
                            && spoilt.isThere().test(finding.place()))
                    .toList();
            if (found.isEmpty()) {
                return "missed";
            }
            return switch (spoiling.scope) {
                case WHOLE, SET -> {
                    String ink = drawn.planned().plan().pulls().get(pull).ink().name();
                    boolean isNamed = found.get(0).measured().contains("film" + pull + ".svg")
                            || found.get(0).measured().contains(ink)
                            || spoiling.scope == Scope.SET;
                    yield !isNamed ? "film is not named" : wrong.size() > 1 ? "said more than once" : "";
                }
                case PLACE -> wrong.size() > 1 ? "said more than once" : "";
                case SWAP -> wrong.size() > 2 ? "said more than once" : "";
                case AROUND, HOLD, NOTHING -> "";
            };
        }
    }

    /** Knocked out, light first or dark first, or running on beneath each other. */
    private static Separation drawing(long seed) {
        return SimulationTest.trapped(
                switch ((int) (seed % 4)) {
                    case 1 -> RandomDrawing.darkFirst(seed);
                    case 3 -> RandomDrawing.runningOn(seed);
                    default -> RandomDrawing.of(seed, 1);
                });
    }

    private static List<Finding> serious(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .toList();
    }

    /** What the drawing itself is blamed for. */
    private static boolean isSame(Finding known, Finding other) {
        return known.rule().equals(other.rule())
                && known.severity() == other.severity()
                && Math.hypot(
                                known.place().x() - other.place().x(),
                                known.place().y() - other.place().y())
                        < 0.5;
    }

    private static List<String> words(List<Finding> findings) {
        return findings.stream()
                .map(finding ->
                        finding.severity() + " " + finding.rule() + " at " + finding.place() + " " + finding.measured())
                .toList();
    }
}
