package inkstrata.house;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between the core, the plug-ins and the command, over everything that is built. */
class WholeHouseTest {
    private static final JavaClasses HOUSE = HouseRules.built();
    private static final List<String> PLUGINS =
            List.of("knockout", "overprint", "reduction", "underbase", "trap", "check", "positive", "command");

    static Stream<String> plugins() {
        return PLUGINS.stream();
    }

    @Test
    void everyPluginIsLookedAt() {
        assertThat(Stream.concat(HouseRules.ROOMS.stream(), PLUGINS.stream()))
                .allMatch(room ->
                        HOUSE.stream().anyMatch(type -> type.getPackageName().startsWith("inkstrata." + room)));
        assertThat(HOUSE.stream()
                        .map(type -> type.getPackageName().split("\\.", 3)[1])
                        .distinct())
                .containsExactlyInAnyOrderElementsOf(Stream.concat(HouseRules.ROOMS.stream(), PLUGINS.stream())
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("plugins")
    void noPluginKnowsAnother(String plugin) {
        List<String> others =
                PLUGINS.stream().filter(other -> !other.equals(plugin)).toList();
        HouseRules.knowsNone(HouseRules.packageOf(plugin), others).check(HOUSE);
    }

    @Test
    void theCoreKnowsNoPlugin() {
        String[] core = HouseRules.ROOMS.stream().map(HouseRules::packageOf).toArray(String[]::new);
        String[] plugins = PLUGINS.stream().map(HouseRules::packageOf).toArray(String[]::new);
        ArchRule rule =
                noClasses().that().resideInAnyPackage(core).should().dependOnClassesThat(resideInAnyPackage(plugins));
        rule.check(HOUSE);
    }

    @Test
    void thereAreNoRings() {
        HouseRules.noRings().check(HOUSE);
    }

    @Test
    void eachLibraryHasOneDoor() {
        HouseRules.oneDoorForEachLibrary().forEach(rule -> rule.check(HOUSE));
    }

    @Test
    void consoleAndClockStayAtTheCounter() {
        HouseRules.consoleAndClockAtTheCounter().forEach(rule -> rule.check(HOUSE));
    }

    @Test
    void pluginsOpenNoFiles() {
        HouseRules.filesOnlyWhereTheyBelong().check(HOUSE);
    }
}
