package inkstrata.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The core keeps to its arrows. */
class RoomsTest {
    private static final JavaClasses CORE = HouseRules.built();

    @Test
    void laterRoomsUseEarlierOnes() {
        HouseRules.laterRoomsUseEarlierOnes().forEach(rule -> rule.check(CORE));
    }

    @Test
    void thereAreNoRings() {
        HouseRules.noRings().check(CORE);
    }

    @Test
    void everyClassIsInARoomAndSoNoneBelongsToAPlugin() {
        HouseRules.everythingIsInARoom().check(CORE);
    }

    @Test
    void eachLibraryHasOneDoor() {
        HouseRules.oneDoorForEachLibrary().forEach(rule -> rule.check(CORE));
    }

    @Test
    void nobodyInTheCoreReadsAClockOrWritesToTheConsole() {
        HouseRules.consoleAndClockAtTheCounter().forEach(rule -> rule.check(CORE));
    }

    @Test
    void onlyReaderAndJobOpenFiles() {
        HouseRules.filesOnlyWhereTheyBelong().check(CORE);
    }

    @Test
    void theRulesCatchWhatBreaksThem() {
        JavaClasses culprit = new ClassFileImporter().importClasses(Culprit.class);
        assertThat(HouseRules.consoleAndClockAtTheCounter())
                .allMatch(rule -> rule.evaluate(culprit).hasViolation());
        assertThat(HouseRules.filesOnlyWhereTheyBelong().evaluate(culprit).hasViolation())
                .isTrue();
        assertThat(HouseRules.everythingIsInARoom().evaluate(culprit).hasViolation())
                .isTrue();
        assertThat(HouseRules.knowsNone("inkstrata.shop..", List.of("measure"))
                        .evaluate(CORE)
                        .hasViolation())
                .as("the shop does know the first room")
                .isTrue();
    }

    /** Does all that the core must not do. */
    static final class Culprit {
        private Culprit() {}

        static String misbehave() throws IOException {
            System.out.println(java.time.Instant.now());
            java.util.Calendar calendar = java.util.Calendar.getInstance();
            return calendar + Files.readString(Path.of("nowhere"));
        }
    }
}
