package inkstrata.job;

import inkstrata.colour.InkFilm;
import inkstrata.colour.Rgb;
import inkstrata.colour.Spectrum;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Length;
import inkstrata.measure.PaperSize;
import inkstrata.measure.Place;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;

/** Reads a job file: strictly, with every default filled in. */
public final class JobReader {
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
            Path folder = file.toAbsolutePath().getParent();
            return read(shortName, Files.readString(file, StandardCharsets.UTF_8), folder == null ? file : folder);
        } catch (CharacterCodingException fault) {
            throw new JobException(shortName, 0, "this is not UTF-8 text. Save it as UTF-8.");
        }
    }

    /** Reads the text of a job file whose files are where the program runs. */
    public static Job read(String file, String text) {
        return read(file, text, Path.of(""));
    }

    /**
     * Reads the text of a job file.
     *
     * @param file its name, for messages
     * @param folder that names of files in it start from
     * @throws JobException at the first fault, with its line
     */
    public static Job read(String file, String text, Path folder) {
        YamlMap root = YamlMap.parse(file, text)
                .only(
                        "title",
                        "sheet",
                        "artwork",
                        "register",
                        "seam",
                        "merge",
                        "inks",
                        "order",
                        "edition",
                        "films",
                        "use");
        YamlMap sheet =
                root.map("sheet").orElseGet(YamlMap::none).only("size", "colour", "also", "print", "hiding", "spectra");
        Rgb sheetColour = sheet.value("colour", Rgb::parse).orElse(Rgb.WHITE);
        Side side = sheet.value("print", InkReader::side).orElse(Side.FRONT);
        Optional<YamlMap> artwork = root.map("artwork").map(map -> map.only("width", "place"));
        Optional<Double> width = artwork.flatMap(map -> map.value("width", Values::positiveLength));
        InkReader inks = new InkReader(folder).bare(sheet).read(root.maps("inks"));
        return new Job(
                file,
                root.text("title").orElse(""),
                sheet.value("size", PaperSize::parse),
                sheetColour,
                side,
                sheetFilm(sheet, sheetColour, side, folder),
                width.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                artwork.flatMap(JobReader::place),
                root.value("register", Values::register).orElse(Job.DEFAULT_REGISTER_MM),
                root.value("seam", Values::seam).orElse(Job.DEFAULT_SEAM_MM),
                merge(root),
                inks.inks(),
                inks.also(),
                root.has("order") ? new AskedOrder(root.texts("order"), root.lineOf("order")) : AskedOrder.NONE,
                root.map("edition").map(JobReader::edition).orElse(Edition.DEFAULT),
                root.map("films").map(JobReader::films).orElse(Map.of()),
                root.map("use").map(JobReader::use).orElse(Map.of()));
    }

    private static InkFilm sheetFilm(YamlMap sheet, Rgb colour, Side side, Path folder) {
        if (sheet.has("spectra") && sheet.has("hiding")) {
            throw sheet.fault("hiding", "sheet has hiding and spectra, which say the same. Take hiding out.");
        }
        return sheet.value("spectra", name -> SpectraFile.sheet(folder.resolve(name)))
                .orElseGet(() -> InkFilm.of(
                        Spectrum.of(colour),
                        sheet.value("hiding", Values::hiding).orElse(Sheet.usualHiding(side))));
    }

    private static Merge merge(YamlMap root) {
        if (!root.isMap("merge")) {
            double within = root.value("merge", Values::difference).orElse(Merge.DEFAULT.within());
            return new Merge(within, Merge.DEFAULT.touching(), Merge.DEFAULT.inks());
        }
        YamlMap map = root.map("merge").orElseThrow().only("within", "touching", "inks");
        return new Merge(
                map.value("within", Values::difference).orElse(Merge.DEFAULT.within()),
                map.value("touching", Flag::parse).orElse(Merge.DEFAULT.touching()),
                map.value("inks", Values::inks).map(OptionalInt::of).orElse(OptionalInt.empty()));
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

    private static Edition edition(YamlMap map) {
        map.only("prints", "spoilage");
        int prints = map.value("prints", Values::prints).orElse(Edition.DEFAULT.prints());
        double spoilage = map.value("spoilage", Values::share).orElse(Edition.DEFAULT.spoilage());
        return new Edition(prints, spoilage);
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
                String text = settings.isList(option)
                        ? String.join(", ", settings.texts(option))
                        : settings.text(option).orElseThrow();
                values.put(option, new Setting(text, settings.lineOf(option)));
            }
            use.put(id, new PluginSettings(map.lineOf(id), values));
        }
        return use;
    }
}
