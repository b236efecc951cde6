package inkstrata.samples;

import inkstrata.job.JobReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Prints a sample in a Java machine of its own: its name, then the folder for the films. */
final class PressRun {
    private PressRun() {}

    public static void main(String[] arguments) throws IOException {
        Sample sample = new Sample(arguments[0]);
        Path folder = Files.createDirectories(Path.of(arguments[1]));
        Map<String, byte[]> files = Press.files(Press.read(sample), JobReader.read(sample.job()), Press.plugins());
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
    }
}
