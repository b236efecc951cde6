package inkstrata.house;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.Console;
import java.io.File;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.FileReader;
import java.io.FileWriter;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.Collection;
import java.util.Date;
import java.util.List;

/** The arrows of the house, as rules that both the core and the whole shop are held to. */
public final class HouseRules {
    /** Rooms of the core in the order a job walks through them. */
    public static final List<String> ROOMS = List.of(
            "measure", "colour", "artwork", "planar", "plan", "job", "separation", "report", "film", "plugin", "shop");

    private static final String COMMAND = "inkstrata.command..";

    private HouseRules() {}

    /** What has been built, without any tests. */
    public static JavaClasses built() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .withImportOption(location -> !location.contains("-tests.jar"))
                .importPackages("inkstrata");
    }

    /** One rule for each room: it knows no room that comes after it. */
    public static List<ArchRule> laterRoomsUseEarlierOnes() {
        List<ArchRule> rules = new ArrayList<>();
        for (int room = 0; room < ROOMS.size() - 1; room++) {
            rules.add(knowsNone(packageOf(ROOMS.get(room)), ROOMS.subList(room + 1, ROOMS.size())));
        }
        return rules;
    }

    /** No class in {@code user}'s packages depends on one of the named rooms. */
    public static ArchRule knowsNone(String user, Collection<String> rooms) {
        String[] packages = rooms.stream().map(HouseRules::packageOf).toArray(String[]::new);
        return noClasses().that().resideInAPackage(user).should().dependOnClassesThat(resideInAnyPackage(packages));
    }

    public static ArchRule noRings() {
        return slices().matching("inkstrata.(*)..").should().beFreeOfCycles();
    }

    /** Each outside library lives behind one door. */
    public static List<ArchRule> oneDoorForEachLibrary() {
        return List.of(
                onlyIn("inkstrata.planar..", "org.locationtech.."),
                onlyIn("inkstrata.artwork.svg..", "org.apache.batik.."),
                onlyIn("inkstrata.artwork.svg..", "org.apache.xmlgraphics.."),
                onlyIn("inkstrata.positive.page..", "org.apache.pdfbox.."),
                onlyIn("inkstrata.positive.page..", "javax.imageio.."),
                onlyIn("inkstrata.artwork.svg..", "org.w3c.."),
                onlyIn("inkstrata.job..", "org.snakeyaml.."),
                onlyIn("inkstrata.report..", "com.fasterxml.."),
                onlyIn(COMMAND, "picocli.."));
    }

    /** The console, the clock and the end of the program belong to the command. */
    public static List<ArchRule> consoleAndClockAtTheCounter() {
        return List.of(
                noClasses()
                        .that()
                        .resideOutsideOfPackage(COMMAND)
                        .should()
                        .accessTargetWhere(
                                member("java.lang.System", "out|err|in|console|exit|currentTimeMillis|nanoTime")),
                noClasses()
                        .that()
                        .resideOutsideOfPackage(COMMAND)
                        .should()
                        .accessTargetWhere(member("java\\.time\\..*", "now|system.*")),
                noClasses()
                        .that()
                        .resideOutsideOfPackage(COMMAND)
                        .should()
                        .dependOnClassesThat(assignableTo(Date.class)
                                .or(assignableTo(Console.class))
                                .or(assignableTo(Calendar.class))
                                .as("are a clock or a console")));
    }

    /**
     * Files are opened only by the reader, the job file, the command and writers.
     *
     * @param writers packages whose trade is to write
     */
    public static ArchRule filesOnlyWhereTheyBelong(String... writers) {
        List<String> allowed = new ArrayList<>(List.of("inkstrata.artwork.svg..", "inkstrata.job..", COMMAND));
        allowed.addAll(List.of(writers));
        return noClasses()
                .that(resideOutsideOfPackages(allowed.toArray(String[]::new)))
                .should()
                .dependOnClassesThat(OPEN_FILES);
    }

    /** Every class of these has its place in a room. */
    public static ArchRule everythingIsInARoom() {
        return classes()
                .should()
                .resideInAnyPackage(ROOMS.stream().map(HouseRules::packageOf).toArray(String[]::new));
    }

    public static String packageOf(String room) {
        return "inkstrata." + room + "..";
    }

    private static DescribedPredicate<JavaAccess<?>> member(String type, String name) {
        return DescribedPredicate.describe(
                "a member of " + type + " called " + name,
                access -> access.getTargetOwner().getFullName().matches(type)
                        && access.getName().matches(name));
    }

    private static ArchRule onlyIn(String door, String library) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(door)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }

    private static final DescribedPredicate<JavaClass> OPEN_FILES = assignableTo(Files.class)
            .or(assignableTo(File.class))
            .or(assignableTo(FileInputStream.class))
            .or(assignableTo(FileOutputStream.class))
            .or(assignableTo(FileReader.class))
            .or(assignableTo(FileWriter.class))
            .or(assignableTo(FileChannel.class))
            .or(assignableTo(RandomAccessFile.class))
            .as("open files");
}
