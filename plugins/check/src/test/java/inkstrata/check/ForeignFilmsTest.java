package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.check.WrittenFilm.Hand;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.RandomDrawing;
import inkstrata.separation.Separation;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Films in other programs' words: strokes, groups, transforms, other units, paper, white over black. */
class ForeignFilmsTest {
    private static final int DRAWINGS = 10;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Hand.class)
    void rightFilmsAreRightInAnyWords(Hand hand) {
        for (long seed = 0; seed < DRAWINGS; seed++) {
            Separation planned = SimulationTest.trapped(RandomDrawing.of(seed, 1));
            List<Finding> findings = CheckedFilms.findings(planned, CheckedFilms.asPlanned(planned), hand, folder);
            assertThat(findings)
                    .as("drawing %s", seed)
                    .allMatch(finding -> finding.severity() == Severity.NOTE
                            || finding.rule().equals("register"));
            List<Finding> own = new LimitFindings(
                            RegisterLimit.of(
                                    planned.printed(),
                                    Check.picture(planned),
                                    planned.artwork().frame(),
                                    CheckedFilms.REGISTER_MM),
                            RandomDrawing.INKS.stream().map(ink -> ink.name()).toList())
                    .findings();
            assertThat(holds(findings)).as("drawing %s", seed).isEqualTo(holds(own));
        }
    }

    private static String holds(List<Finding> findings) {
        return findings.get(findings.size() - 1).measured();
    }
}
