package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.check.Spoiling.Case;
import inkstrata.check.Spoiling.Spoilt;
import inkstrata.check.WrittenFilm.Hand;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Films spoilt by a program: every kind of fault is found where it is, and nothing on films as planned. */
class SpoiltFilmsTest {
    /** What follows from a fault of a whole film, in words of its own. */
    private static final List<String> ABOUT_THE_SET = List.of("register", "thin line", "thin gap");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Spoiling.class)
    void faultsAreFound(Spoiling spoiling) {
        find(spoiling, 3);
    }

    @Tag("long")
    @ParameterizedTest
    @EnumSource(Spoiling.class)
    void faultsAreFoundInManyDrawings(Spoiling spoiling) {
        find(spoiling, 20);
    }

    private void find(Spoiling spoiling, int drawings) {
        int done = 0;
        for (long seed = 0; done < drawings; seed++) {
            assertThat(seed).as("drawings with a place for it").isLessThan(40L * drawings);
            Separation planned = SimulationTest.trapped(
                    spoiling == Spoiling.RUNS_BENEATH ? RandomDrawing.darkFirst(seed) : RandomDrawing.of(seed, 1));
            Case drawn = new Case(planned, CheckedFilms.asPlanned(planned));
            Optional<Spoilt> spoilt = spoiling.spoil(drawn);
            if (spoilt.isPresent()) {
                done++;
                check(spoiling, seed, drawn, spoilt.get());
            }
        }
    }

    private void check(Spoiling spoiling, long seed, Case drawn, Spoilt spoilt) {
        String which = spoiling + " of drawing " + seed;
        List<Finding> right = CheckedFilms.findings(drawn.planned(), drawn.films(), Hand.PLAIN, folder);
        assertThat(right)
                .as("%s, unspoilt", which)
                .allMatch(finding -> ABOUT_THE_SET.contains(finding.rule()) && finding.severity() != Severity.ERROR);
        List<Finding> wrong = CheckedFilms.findings(drawn.planned(), spoilt.films(), Hand.PLAIN, folder);
        assertThat(wrong)
                .as(which)
                .anyMatch(finding -> finding.rule().equals(spoiling.rule)
                        && !right.contains(finding)
                        && spoilt.isThere().test(finding.place()));
        if (Spoiling.WHOLE.contains(spoiling)) {
            String ink = drawn.planned().plan().pulls().get(spoilt.pull()).ink().name();
            assertThat(wrong.stream().filter(finding -> finding.rule().equals(spoiling.rule)))
                    .as("%s: the film is named", which)
                    .anyMatch(finding -> finding.measured().contains("film" + spoilt.pull() + ".svg")
                            || finding.measured().contains(ink));
            assertThat(wrong.stream().filter(finding -> finding.severity() == Severity.ERROR))
                    .as("%s: nothing else is an error", which)
                    .allMatch(finding -> finding.rule().equals(spoiling.rule));
        }
    }
}
