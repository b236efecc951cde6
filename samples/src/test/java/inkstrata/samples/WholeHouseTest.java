package inkstrata.samples;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import inkstrata.house.HouseRules;
import inkstrata.plugin.Plugin;
import inkstrata.plugin.Plugins;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The whole shop keeps to its arrows: plug-ins know the core alone, and nobody knows a plug-in. */
class WholeHouseTest {
    private static final JavaClasses SHOP = HouseRules.built();
    private static final Plugins PLUGINS = Plugins.load(WholeHouseTest.class.getClassLoader());

    @Test
    void coreRoomsKeepTheirOrder() {
        HouseRules.laterRoomsUseEarlierOnes().forEach(rule -> rule.check(SHOP));
        HouseRules.noRings().check(SHOP);
    }

    @Test
    void nobodyKnowsAPlugin() {
        Set<String> plugins = pluginPackages(PLUGINS.all());
        assertThat(plugins).as("plug-ins on the class path").hasSizeGreaterThanOrEqualTo(2);
        for (String plugin : plugins) {
            noClasses()
                    .that()
                    .resideOutsideOfPackage(plugin + "..")
                    .should()
                    .dependOnClassesThat(resideInAnyPackage(plugin + ".."))
                    .check(SHOP);
        }
    }

    @Test
    void eachLibraryHasOneDoor() {
        HouseRules.oneDoorForEachLibrary().forEach(rule -> rule.check(SHOP));
    }

    @Test
    void consoleClockAndFilesStayWhereTheyBelong() {
        HouseRules.consoleAndClockAtTheCounter().forEach(rule -> rule.check(SHOP));
        String[] writers = pluginPackages(PLUGINS.writers()).stream()
                .map(name -> name + "..")
                .toArray(String[]::new);
        HouseRules.filesOnlyWhereTheyBelong(writers).check(SHOP);
    }

    @Test
    void everyPackageIsACoreRoomAPluginOrTheCommand() {
        Set<String> known = new TreeSet<>(pluginPackages(PLUGINS.all()));
        HouseRules.ROOMS.forEach(room -> known.add("inkstrata." + room));
        known.add("inkstrata.command");
        assertThat(SHOP)
                .allMatch(
                        type -> known.stream().anyMatch(room -> (type.getPackageName() + ".").startsWith(room + ".")));
    }

    private static Set<String> pluginPackages(List<? extends Plugin> plugins) {
        Set<String> packages = new TreeSet<>();
        plugins.forEach(plugin -> packages.add(plugin.getClass().getPackageName()));
        return packages;
    }
}
