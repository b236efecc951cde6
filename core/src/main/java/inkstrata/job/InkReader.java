package inkstrata.job;

import inkstrata.colour.InkFilm;
import inkstrata.colour.Rgb;
import inkstrata.colour.Spectrum;
import inkstrata.plan.Ink;
import inkstrata.plan.Mesh;
import inkstrata.plan.Side;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Reads the inks that a job file lists. */
final class InkReader {
    private final Path folder;
    private final Set<String> names = new HashSet<>();
    private final Map<Rgb, String> colours = new HashMap<>();
    private final Map<Rgb, String> also = new TreeMap<>();
    private final List<Ink> inks = new ArrayList<>();

    /** @param folder that names of files start from */
    InkReader(Path folder) {
        this.folder = folder;
    }

    /** In the order of the file. */
    List<Ink> inks() {
        return inks;
    }

    /** Colours that an ink prints beside its own, with its name. */
    Map<Rgb, String> also() {
        return also;
    }

    /** Takes colours that are bare sheet. */
    InkReader bare(YamlMap sheet) {
        for (Rgb colour : colours(sheet)) {
            claim(colour, Job.BARE_SHEET, "also", sheet);
            also.put(colour, Job.BARE_SHEET);
        }
        return this;
    }

    InkReader read(List<YamlMap> entries) {
        entries.forEach(this::add);
        return this;
    }

    private void add(YamlMap map) {
        map.only("name", "prints", "also", "hiding", "spectra", "mesh", "key", "side", "from");
        String name = map.text("name")
                .filter(text -> !text.isBlank())
                .orElseThrow(() -> map.fault("name", "an ink needs a name: name: sand."));
        if (!names.add(name)) {
            throw map.fault("name", "two inks are called '" + name + "'. Rename one.");
        }
        Rgb swatch = map.value("prints", Rgb::parse)
                .orElseThrow(() ->
                        map.fault("prints", "ink '" + name + "' needs the colour it prints: prints: \"#e8cf9a\"."));
        Optional<String> from = map.text("from");
        if (from.isEmpty()) {
            claim(swatch, name, "prints", map);
        } else if (map.has("also")) {
            throw map.fault("also", "ink '" + name + "' prints a drawing, whatever its colours. Take also out.");
        }
        for (Rgb colour : colours(map)) {
            claim(colour, name, "also", map);
            also.put(colour, name);
        }
        Optional<InkFilm> measured = map.value("spectra", file -> SpectraFile.ink(folder.resolve(file)));
        if (measured.isPresent() && map.has("hiding")) {
            throw map.fault(
                    "hiding", "ink '" + name + "' has hiding and spectra, which say the same. Take hiding out.");
        }
        double hiding = measured.map(InkFilm::hiding)
                .or(() -> map.value("hiding", Values::hiding))
                .orElse(Ink.DEFAULT_HIDING);
        inks.add(new Ink(
                name,
                swatch,
                hiding,
                map.value("mesh", Mesh::parse),
                map.value("key", Flag::parse).orElse(false),
                measured.orElseGet(() -> InkFilm.of(Spectrum.of(swatch), hiding)),
                map.value("side", InkReader::side),
                from));
    }

    private static List<Rgb> colours(YamlMap map) {
        List<Rgb> colours = new ArrayList<>();
        for (String text : map.texts("also")) {
            try {
                colours.add(Rgb.parse(text));
            } catch (IllegalArgumentException e) {
                throw map.fault("also", "also: " + e.getMessage());
            }
        }
        return colours;
    }

    private void claim(Rgb colour, String name, String key, YamlMap map) {
        String twin = colours.put(colour, name);
        if (twin != null && twin.equals(name)) {
            throw map.fault(key, called(name) + " names " + colour + " twice. Name it once.");
        }
        if (twin != null) {
            throw map.fault(
                    key,
                    called(twin) + " and " + called(name) + " print the same colour " + colour + ". Keep one of them.");
        }
    }

    private static String called(String name) {
        return name.equals(Job.BARE_SHEET) ? "the sheet" : "'" + name + "'";
    }

    static Side side(String text) {
        return switch (text) {
            case "front" -> Side.FRONT;
            case "back" -> Side.BACK;
            default -> throw new IllegalArgumentException("'" + text + "' is neither front nor back.");
        };
    }
}
