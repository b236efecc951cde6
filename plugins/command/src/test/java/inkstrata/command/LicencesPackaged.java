package inkstrata.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The one jar says whose software it holds, and under which licences: every jar of the class path whose classes are in it is listed, and the
 * texts that it brings along are there, word for word.
 */
class LicencesPackaged {
    private static final Path JAR = Path.of("target", "inkstrata.jar");
    private static final String FOLDER = "META-INF/licences/";

    /** Licences that may be given on with a work under Apache-2.0 in binary form, if their texts come along. */
    private static final Set<String> ACCEPTED =
            Set.of("Apache-2.0", "Apache-2.0 AND MIT", "Apache-2.0 AND W3C", "Apache-2.0 AND others", "EDL-1.0");

    /**
     * One line of the list.
     *
     * @param jar its name without version, which may end with a star
     */
    private record Component(String jar, String licence) {
        boolean isOf(String name) {
            return jar.endsWith("*") ? name.startsWith(jar.substring(0, jar.length() - 1)) : name.equals(jar);
        }
    }

    @Test
    void everyJarInsideIsListedAndItsTextsAreThere() throws IOException {
        try (JarFile one = new JarFile(JAR.toFile())) {
            List<Component> components = components(one);
            Set<Component> met = new HashSet<>();
            Set<String> texts = texts(one);
            String notice = words(text(one, "META-INF/NOTICE"));
            for (File file : inside(one)) {
                String name = file.getName().replaceFirst("-\\d.*$", "");
                List<Component> of = components.stream()
                        .filter(component -> component.isOf(name))
                        .toList();
                assertThat(of).as("lines on " + name + " in components.txt").hasSize(1);
                met.addAll(of);
                try (JarFile jar = new JarFile(file)) {
                    for (String entry : entries(jar)) {
                        if (entry.matches("(META-INF|license)/[^/]*LICENSE[^/]*")) {
                            assertThat(texts).as(name + ", " + entry).contains(words(text(jar, entry)));
                        }
                        if (entry.matches("(META-INF|license)/NOTICE(\\.txt)?")) {
                            assertThat(notice).as(name + ", " + entry).contains(words(text(jar, entry)));
                        }
                    }
                }
            }
            assertThat(met).as("components of which something is inside").hasSameElementsAs(components);
            assertThat(components).extracting(Component::licence).isSubsetOf(ACCEPTED);
        }
    }

    @Test
    void theNoticeNamesUsFirstAndTheLicenceIsOurs() throws IOException {
        try (JarFile one = new JarFile(JAR.toFile())) {
            assertThat(text(one, "META-INF/NOTICE")).startsWith("Inkstrata\nCopyright 2026 the Inkstrata authors\n");
            assertThat(text(one, "META-INF/LICENSE")).isEqualTo(Files.readString(Path.of("..", "..", "LICENSE")));
            assertThat(entries(one)).doesNotContain("META-INF/DEPENDENCIES").doesNotHaveDuplicates();
            assertThat(entries(one)).contains("inkstrata/positive/letters-license.txt");
        }
    }

    /** The bill of materials (CycloneDX 1.6) that is built with the jar; its plug-in makes none where Maven runs offline. */
    @Test
    void theBillOfMaterialsNamesEveryJarInsideWithItsLicence() throws IOException {
        Path file = Path.of("target", "inkstrata.cdx.json");
        assumeThat(file).as("made online alone").exists();
        Map<String, Object> bill = JSON.std.mapFrom(Files.readString(file));
        assertThat(bill).containsEntry("bomFormat", "CycloneDX").containsEntry("specVersion", "1.6");
        List<String> named = new ArrayList<>();
        for (Object each : (List<?>) bill.get("components")) {
            Map<?, ?> component = (Map<?, ?>) each;
            assertThat((List<?>) component.get("licenses"))
                    .as("licences of %s", component.get("name"))
                    .isNotEmpty();
            named.add(component.get("name") + "-" + component.get("version") + ".jar");
        }
        try (JarFile one = new JarFile(JAR.toFile())) {
            assertThat(named)
                    .containsAll(inside(one).stream().map(File::getName).toList());
        }
    }

    /** Jars of the class path, some of whose classes are in the one jar; not our own. */
    private static List<File> inside(JarFile one) throws IOException {
        Set<String> all = new TreeSet<>(entries(one));
        List<File> inside = new ArrayList<>();
        for (String path : System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
                .split(Pattern.quote(File.pathSeparator), -1)) {
            File file = new File(path);
            if (file.getName().endsWith(".jar") && !file.getName().startsWith("inkstrata-")) {
                try (JarFile jar = new JarFile(file)) {
                    if (entries(jar).stream().anyMatch(entry -> isClass(entry) && all.contains(entry))) {
                        inside.add(file);
                    }
                }
            }
        }
        assertThat(inside).as("jars inside").hasSizeGreaterThan(10);
        return inside;
    }

    private static boolean isClass(String entry) {
        return entry.endsWith(".class") && !entry.endsWith("-info.class");
    }

    private static List<Component> components(JarFile one) throws IOException {
        return text(one, FOLDER + "components.txt")
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(" {2,}", -1))
                .map(columns -> new Component(columns[0], columns[1]))
                .toList();
    }

    private static Set<String> texts(JarFile one) throws IOException {
        Set<String> texts = new HashSet<>(List.of(words(text(one, "META-INF/LICENSE"))));
        for (String entry : entries(one)) {
            if (entry.startsWith(FOLDER) && !entry.endsWith("/")) {
                texts.add(words(text(one, entry)));
            }
        }
        return texts;
    }

    private static List<String> entries(JarFile jar) {
        return jar.stream().map(JarEntry::getName).toList();
    }

    private static String text(JarFile jar, String entry) throws IOException {
        JarEntry found = jar.getJarEntry(entry);
        assertThat(found).as(entry + " in " + jar.getName()).isNotNull();
        try (InputStream in = jar.getInputStream(found)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String words(String text) {
        return Arrays.stream(text.split("\\s+", -1))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(" "));
    }
}
