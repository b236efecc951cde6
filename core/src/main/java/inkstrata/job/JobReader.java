package inkstrata.job;

import inkstrata.colour.Rgb;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Length;
import inkstrata.measure.PaperSize;
import inkstrata.measure.Place;
import inkstrata.plan.Ink;
import inkstrata.plan.Mesh;
import inkstrata.plan.Side;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** Reads a job file: strictly, with every default filled in. */
public final class JobReader {
    /** No two pulls are farther apart than this, or they do not belong to one print. */
    private static final double WORST_REGISTER_MM = 10;

    private JobReader() {}

    /**
     * Reads a file.
     *
     * @throws JobException at the first fault, with its line
     * @throws IOException if the file cannot be read
     */
    public static Job read(Path file) throws IOException {
        Path name = file.getFileName();
        String shortName = name == null ? file.toString() : name.toString();
        try {
            return read(shortName, Files.readString(file, StandardCharsets.UTF_8));
        } catch (CharacterCodingException fault) {
            throw new JobException(shortName, 0, "this is not UTF-8 text. Save it as UTF-8.");
        }
    }

    /**
     * Reads the text of a job file.
     *
     * @param file its name, for messages
     * @throws JobException at the first fault, with its line
     */
    public static Job read(String file, String text) {
        YamlMap root = YamlMap.parse(file, text)
                .only("title", "sheet", "artwork", "register", "merge", "inks", "order", "edition", "films", "use");
        Optional<YamlMap> sheet = root.map("sheet").map(map -> map.only("size", "colour", "print"));
        Optional<YamlMap> artwork = root.map("artwork").map(map -> map.only("width", "place"));
        Optional<Double> width = artwork.flatMap(map -> map.value("width", JobReader::positiveLength));
        return new Job(
                file,
                root.text("title").orElse(""),
                sheet.flatMap(map -> map.value("size", PaperSize::parse)),
                sheet.flatMap(map -> map.value("colour", Rgb::parse)).orElse(Rgb.WHITE),
                sheet.flatMap(map -> map.value("print", JobReader::side)).orElse(Side.FRONT),
                width.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                artwork.flatMap(JobReader::place),
                root.value("register", JobReader::register).orElse(Job.DEFAULT_REGISTER_MM),
                root.value("merge", JobReader::merge).orElse(Job.DEFAULT_MERGE),
                inks(root),
                root.has("order") ? new AskedOrder(root.texts("order"), root.lineOf("order")) : AskedOrder.NONE,
                root.map("edition").map(JobReader::edition).orElse(Edition.DEFAULT),
                root.map("films").map(JobReader::films).orElse(Map.of()),
                root.map("use").map(JobReader::use).orElse(Map.of()));
    }

    private static double positiveLength(String text) {
        double millimetres = Length.parse(text).millimetres();
        if (!(millimetres > 0)) {
            throw new IllegalArgumentException("'" + text + "' must be more than 0.");
        }
        return millimetres;
    }

    private static Side side(String text) {
        return switch (text) {
            case "front" -> Side.FRONT;
            case "back" -> Side.BACK;
            default -> throw new IllegalArgumentException("'" + text + "' is neither front nor back.");
        };
    }

    private static Optional<Place> place(YamlMap artwork) {
        if (!artwork.isMap("place")) {
            artwork.value("place", text -> {
                if (!text.equals("centre")) {
                    throw new IllegalArgumentException("'" + text
                            + "' is not a place. Write centre, or {x: 50 mm, y: 70 mm} for the top left corner.");
                }
                return text;
            });
            return Optional.empty();
        }
        YamlMap place = artwork.map("place").orElseThrow().only("x", "y");
        double x = place.value("x", text -> Length.parse(text).millimetres()).orElse(0.0);
        double y = place.value("y", text -> Length.parse(text).millimetres()).orElse(0.0);
        return Optional.of(new Place(x, y));
    }

    private static double register(String text) {
        double millimetres = Length.parse(text).millimetres();
        if (!(millimetres >= 0 && millimetres <= WORST_REGISTER_MM)) {
            throw new IllegalArgumentException("'" + text + "' is outside 0 to 10 mm.");
        }
        return millimetres;
    }

    private static double merge(String text) {
        double merge = number(text);
        if (!(merge >= 0 && merge <= 100)) {
            throw new IllegalArgumentException("'" + text + "' is outside 0 to 100.");
        }
        return merge;
    }

    private static double number(String text) {
        try {
            double number = Double.parseDouble(text.trim());
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("'" + text + "' is not a number.", e);
        }
        throw new IllegalArgumentException("'" + text + "' is not a finite number.");
    }

    private static List<Ink> inks(YamlMap root) {
        List<Ink> inks = new ArrayList<>();
        Set<String> names = new HashSet<>();
        Map<Rgb, String> swatches = new HashMap<>();
        for (YamlMap map : root.maps("inks")) {
            if (map.text("from").isPresent()) {
                throw map.fault(
                        "from", "inks.from is not supported yet: an ink takes its colour's areas of the artwork.");
            }
            map.only("name", "prints", "hiding", "mesh", "key");
            String name = map.text("name")
                    .filter(text -> !text.isBlank())
                    .orElseThrow(() -> map.fault("name", "an ink needs a name: name: sand."));
            Rgb swatch = map.value("prints", Rgb::parse)
                    .orElseThrow(() ->
                            map.fault("prints", "ink '" + name + "' needs the colour it prints: prints: \"#e8cf9a\"."));
            if (!names.add(name)) {
                throw map.fault("name", "two inks are called '" + name + "'. Rename one.");
            }
            String twin = swatches.put(swatch, name);
            if (twin != null) {
                throw map.fault(
                        "prints",
                        "'" + twin + "' and '" + name + "' print the same colour " + swatch + ". Keep one of them.");
            }
            inks.add(new Ink(
                    name,
                    swatch,
                    map.value("hiding", JobReader::hiding).orElse(Ink.DEFAULT_HIDING),
                    map.value("mesh", Mesh::parse),
                    map.value("key", JobReader::flag).orElse(false)));
        }
        return inks;
    }

    private static double hiding(String text) {
        double hiding = number(text);
        if (!(hiding >= 0 && hiding <= 1)) {
            throw new IllegalArgumentException("'" + text + "' is outside 0 (clear) to 1 (opaque).");
        }
        return hiding;
    }

    private static boolean flag(String text) {
        return switch (text) {
            case "true" -> true;
            case "false" -> false;
            default -> throw new IllegalArgumentException("'" + text + "' is neither true nor false.");
        };
    }

    private static Edition edition(YamlMap map) {
        map.only("prints", "spoilage");
        int prints = map.value("prints", JobReader::prints).orElse(Edition.DEFAULT.prints());
        double spoilage = map.value("spoilage", JobReader::share).orElse(Edition.DEFAULT.spoilage());
        return new Edition(prints, spoilage);
    }

    private static int prints(String text) {
        double prints = number(text);
        if (prints != Math.rint(prints) || prints < 1 || prints > 1_000_000) {
            throw new IllegalArgumentException("'" + text + "' is not a whole number of prints, 1 or more.");
        }
        return (int) prints;
    }

    private static double share(String text) {
        String digits = text.trim();
        if (!digits.endsWith("%")) {
            throw new IllegalArgumentException(
                    "'" + text + "' is not a share. Write it with its sign, for example 12 %.");
        }
        double share = number(digits.substring(0, digits.length() - 1)) / 100;
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("'" + text + "' is outside 0 to 100 %.");
        }
        return share;
    }

    private static Map<String, String> films(YamlMap map) {
        Map<String, String> films = new TreeMap<>();
        for (String ink : map.keys()) {
            films.put(ink, map.text(ink).orElseThrow());
        }
        return films;
    }

    private static Map<String, PluginSettings> use(YamlMap map) {
        Map<String, PluginSettings> use = new TreeMap<>();
        for (String id : map.keys()) {
            YamlMap settings = map.map(id).orElseThrow();
            Map<String, Setting> values = new TreeMap<>();
            for (String option : settings.keys()) {
                values.put(option, new Setting(settings.text(option).orElseThrow(), settings.lineOf(option)));
            }
            use.put(id, new PluginSettings(map.lineOf(id), values));
        }
        return use;
    }
}
