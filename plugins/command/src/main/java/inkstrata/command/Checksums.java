package inkstrata.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A list of files with the SHA-256 (FIPS 180-4) of each, one a line: 64 hex digits, two spaces, the name. {@code sha256sum
 * -c} of the GNU core utilities reads it.
 */
final class Checksums {
    static final String FILE = "SHA256SUMS";

    private static final int DIGITS = 64;

    private Checksums() {}

    /** Writes the list of these files into their folder. */
    static void write(Path folder, List<String> names) throws IOException {
        StringBuilder list = new StringBuilder();
        for (String name : names) {
            list.append(of(folder.resolve(name))).append("  ").append(name).append('\n');
        }
        Files.writeString(folder.resolve(FILE), list);
    }

    /** By name; lines that are written otherwise are passed over. */
    static Map<String, String> read(Path folder) throws IOException {
        Map<String, String> sums = new TreeMap<>();
        for (String line : Files.readAllLines(folder.resolve(FILE), StandardCharsets.UTF_8)) {
            if (line.length() > DIGITS + 2 && line.startsWith("  ", DIGITS)) {
                sums.put(line.substring(DIGITS + 2), line.substring(0, DIGITS));
            }
        }
        return sums;
    }

    static String of(Path file) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException everyJdkHasIt) {
            throw new IllegalStateException(everyJdkHasIt);
        }
    }
}
