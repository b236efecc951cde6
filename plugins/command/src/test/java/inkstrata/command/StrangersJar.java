package inkstrata.command;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.plugin.Inspector;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import javax.tools.ToolProvider;

/** Builds a jar with somebody else's plug-in, in a folder of its own. */
final class StrangersJar {
    private StrangersJar() {}

    /** An inspector that finds one thing, a warning. */
    static Path finding(Path folder) throws IOException {
        return inspector(
                folder,
                "return Inspection.of(java.util.List.of(new Finding(Finding.Severity.WARNING, \"gap\","
                        + " new inkstrata.measure.Place(1, 2), \"0.1 mm\", \"0.2 mm\", \"Draw it wider.\")));");
    }

    /** An inspector that fails. */
    static Path failing(Path folder) throws IOException {
        return inspector(folder, "throw new IllegalStateException(\"the ladder\\nfell over\");");
    }

    private static Path inspector(Path folder, String body) throws IOException {
        Files.createDirectories(folder);
        Path source = Files.createDirectories(folder.resolve("stranger")).resolve("Stranger.java");
        Files.writeString(
                source,
                "package stranger;\nimport inkstrata.separation.*;\n"
                        + "public final class Stranger implements inkstrata.plugin.Inspector {\n"
                        + "  public String id() { return \"stranger\"; }\n"
                        + "  public String description() { return \"looks over your shoulder\"; }\n"
                        + "  public Inspection inspect(Separation separation, inkstrata.job.Job job) {\n"
                        + body + "\n}}\n");
        int code = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-d",
                        folder.toString(),
                        source.toString());
        assertThat(code).as("compiling the stranger").isZero();
        try (OutputStream file = Files.newOutputStream(folder.resolve("stranger.jar"));
                JarOutputStream jar = new JarOutputStream(file)) {
            jar.putNextEntry(new ZipEntry("META-INF/services/" + Inspector.class.getName()));
            jar.write("stranger.Stranger\n".getBytes(StandardCharsets.UTF_8));
            jar.putNextEntry(new ZipEntry("stranger/Stranger.class"));
            jar.write(Files.readAllBytes(folder.resolve("stranger/Stranger.class")));
        }
        return folder;
    }
}
