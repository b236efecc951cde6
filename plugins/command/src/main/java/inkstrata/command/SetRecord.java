package inkstrata.command;

import inkstrata.measure.Place;
import inkstrata.report.Json;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the folder of a set that was written here says of itself: {@code films.json} which file is what, {@code plan.json} how it was made.
 *
 * @param files by name
 * @param pictureWidthMm of the picture that was taken apart
 * @param inks names of the inks of its pulls, first printed first
 * @param filmCorner where the upper left corner of its films lies on the sheet
 */
record SetRecord(
        Map<String, Entry> files, OptionalDouble pictureWidthMm, List<String> inks, Optional<Place> filmCorner) {
    /** Larger ones were not written here. */
    private static final long MOST_BYTES = 64L << 20;

    /**
     * One file.
     *
     * @param what as in {@code film} or {@code overview}
     * @param pull from 1; 0 if it is not one pull's
     * @param ink empty if it is not one ink's
     * @param corner where the film's upper left corner lies on the sheet
     * @param sha256 of its content when it was written
     */
    record Entry(String what, int pull, String ink, Optional<Place> corner, String sha256) {
        /** Whether it holds films as a whole: no tiles, no overview. */
        boolean isFilms() {
            return List.of("film", "films", "inks").contains(what);
        }
    }

    SetRecord {
        files = Map.copyOf(files);
        inks = List.copyOf(inks);
    }

    /** As far as it is there and can be read. */
    static SetRecord in(Path folder) throws IOException {
        Map<String, Object> ledger = object(folder.resolve("films.json"));
        Map<String, Object> plan = object(folder.resolve("plan.json"));
        Map<String, Entry> files = new HashMap<>();
        for (Map<?, ?> file : objects(ledger.get("files"))) {
            files.put(
                    text(file.get("file")),
                    new Entry(
                            text(file.get("what")),
                            (int) number(file.get("pull")).orElse(0),
                            text(file.get("ink")),
                            place(file),
                            text(file.get("sha256"))));
        }
        List<String> inks = new ArrayList<>();
        for (Map<?, ?> pull : objects(plan.get("pulls"))) {
            inks.add(text(pull.get("ink")));
        }
        OptionalDouble width = plan.get("artwork") instanceof Map<?, ?> artwork
                ? number(artwork.get("widthMm"))
                : OptionalDouble.empty();
        Optional<Place> corner = plan.get("film") instanceof Map<?, ?> film ? place(film) : Optional.empty();
        return new SetRecord(files, width, inks, corner);
    }

    /** Names of tiles, sorted. */
    List<String> tiles() {
        return files.entrySet().stream()
                .filter(file ->
                        List.of("tile", "tiles").contains(file.getValue().what()))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    Optional<Entry> of(Path file) {
        return Optional.ofNullable(files.get(String.valueOf(file.getFileName())));
    }

    /** Whether a file is as it was written. */
    boolean isUnchanged(Path file) throws IOException {
        Optional<Entry> entry = of(file);
        return entry.isPresent() && entry.get().sha256().equals(Checksums.of(file));
    }

    private static Map<String, Object> object(Path file) throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
            return Map.of();
        }
        try {
            return Json.read(Files.readAllBytes(file));
        } catch (IOException notOurs) {
            return Map.of();
        }
    }

    private static List<Map<?, ?>> objects(Object list) {
        List<Map<?, ?>> objects = new ArrayList<>();
        if (list instanceof List<?> all) {
            for (Object each : all) {
                if (each instanceof Map<?, ?> object) {
                    objects.add(object);
                }
            }
        }
        return objects;
    }

    private static Optional<Place> place(Map<?, ?> of) {
        OptionalDouble x = number(of.get("xMm"));
        OptionalDouble y = number(of.get("yMm"));
        return x.isPresent() && y.isPresent()
                ? Optional.of(new Place(x.getAsDouble(), y.getAsDouble()))
                : Optional.empty();
    }

    private static String text(Object value) {
        return value instanceof String text ? text : "";
    }

    private static OptionalDouble number(Object value) {
        return value instanceof Number number ? OptionalDouble.of(number.doubleValue()) : OptionalDouble.empty();
    }
}
