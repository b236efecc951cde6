package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.check.WrittenFilm.Hand;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
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
            Inspection found = CheckedFilms.inspection(planned, CheckedFilms.asPlanned(planned), hand, folder);
            assertThat(found.findings())
                    .as("drawing %s", seed)
                    .allMatch(finding -> finding.severity() == Severity.NOTE
                            || finding.rule().equals("register"));
            assertThat(found.verdict())
                    .as("drawing %s", seed)
                    .contains(Check.limit(planned, planned.printed(), CheckedFilms.REGISTER_MM)
                            .verdict(List.of()));
        }
    }
}
