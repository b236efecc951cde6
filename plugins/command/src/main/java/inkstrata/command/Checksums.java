package inkstrata.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A list of files with the SHA-256 (FIPS 180-4) of each, one a line: 64 hex digits, two spaces, the name. {@code sha256sum
 * -c} of the GNU core utilities reads it and passes over the first line, by which a list of ours is known.
 */
final class Checksums {
    static final String FILE = "SHA256SUMS";

    private static final String OURS =
            "# Written by Inkstrata, which replaces this folder when asked as long as all of it is unchanged.";
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (.+)");

    private Checksums() {}

    /** Writes the list of these files into their folder. */
    static void write(Path folder, List<String> names) throws IOException {
        StringBuilder list = new StringBuilder(OURS).append('\n');
        for (String name : names) {
            list.append(of(folder.resolve(name))).append("  ").append(name).append('\n');
        }
        Files.writeString(folder.resolve(FILE), list);
    }

    /** The list as it stands in a folder; empty where there is none. */
    static String list(Path folder) throws IOException {
        Path list = folder.resolve(FILE);
        return Files.isRegularFile(list) ? Files.readString(list, StandardCharsets.ISO_8859_1) : "";
    }

    /** By name; empty where the list is not one of ours from the first line to the last. */
    static Map<String, String> read(Path folder) throws IOException {
        Map<String, String> sums = new TreeMap<>();
        List<String> lines = Files.readAllLines(folder.resolve(FILE), StandardCharsets.ISO_8859_1);
        if (lines.isEmpty() || !lines.get(0).equals(OURS)) {
            return Map.of();
        }
        for (String line : lines.subList(1, lines.size())) {
            Matcher matcher = LINE.matcher(line);
            if (!matcher.matches()) {
                return Map.of();
            }
            sums.put(matcher.group(2), matcher.group(1));
        }
        return sums;
    }

    static String of(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] piece = new byte[1 << 16];
            for (int length = in.read(piece); length >= 0; length = in.read(piece)) {
                digest.update(piece, 0, length);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException everyJdkHasIt) {
            throw new IllegalStateException(everyJdkHasIt);
        }
    }
}
