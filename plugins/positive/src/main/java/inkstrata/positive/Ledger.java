package inkstrata.positive;

import inkstrata.plugin.OutputFolder;
import inkstrata.report.Json;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps a list of the files that are written, with the SHA-256 (FIPS 180-4) of each: {@code films.json}, described in {@code
 * plugins/positive/docs/films.md}.
 */
final class Ledger {
    private final OutputFolder folder;
    private final List<Map<String, Object>> files = new ArrayList<>();

    Ledger(OutputFolder folder) {
        this.folder = folder;
    }

    /**
     * Opens a file.
     *
     * @param facts what is said of it, in order
     */
    OutputStream create(String name, Map<String, Object> facts) throws IOException {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("file", name);
        entry.putAll(facts);
        files.add(entry);
        return new Hashed(folder.create(name), entry);
    }

    /** Writes the list.
     *
     * @throws IllegalStateException if a file is still open
     */
    void write(String title) throws IOException {
        for (Map<String, Object> entry : files) {
            if (!entry.containsKey("sha256")) {
                throw new IllegalStateException(entry.get("file") + " was not closed");
            }
        }
        Map<String, Object> list = new LinkedHashMap<>();
        list.put("format", Json.FORMAT);
        list.put("title", title);
        list.put("files", files);
        String text = Json.text(list);
        try (OutputStream out = folder.create("films.json")) {
            out.write((text + "\n").getBytes(StandardCharsets.UTF_8));
        }
    }

    private static final class Hashed extends FilterOutputStream {
        private final MessageDigest digest;
        private final Map<String, Object> entry;

        Hashed(OutputStream out, Map<String, Object> entry) {
            super(out);
            this.entry = entry;
            try {
                digest = MessageDigest.getInstance("SHA-256");
            } catch (NoSuchAlgorithmException everyJdkHasIt) {
                throw new IllegalStateException(everyJdkHasIt);
            }
        }

        @Override
        public void write(int b) throws IOException {
            digest.update((byte) b);
            out.write(b);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            digest.update(bytes, from, length);
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            super.close();
            entry.computeIfAbsent("sha256", key -> HexFormat.of().formatHex(digest.digest()));
        }
    }
}
