package inkstrata.job;

import inkstrata.colour.InkFilm;
import inkstrata.colour.Spectrum;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Measured reflectances: a table of comma-separated values whose first line names wavelengths in nanometres after one word, and
 * whose other lines hold a name and shares of 0 to 1.
 *
 * <p>{@code white} and {@code black} are the film over white and over black; {@code white card} and {@code black card} what
 * it lay on, ideal if they are not there. Between wavelengths shares run straight; beyond the ends they stay as they are.
 */
final class SpectraFile {
    private static final String WHITE = "white";
    private static final String BLACK = "black";
    private static final String WHITE_CARD = "white card";
    private static final String BLACK_CARD = "black card";

    /** What is seen lies within these, in nanometres (CIE 15 allows to leave out less than that). */
    private static final double FIRST_NM = 400;

    private static final double LAST_NM = 700;

    /** Wider steps miss what inks do (CIE 15: no wider than 20 nm). */
    private static final double WIDEST_STEP_NM = 20;

    private final String name;
    private final Map<String, NavigableMap<Double, Double>> rows = new LinkedHashMap<>();

    private SpectraFile(String name) {
        this.name = name;
    }

    /**
     * The film of ink that a file describes.
     *
     * @throws IllegalArgumentException that says what is wrong with it
     */
    static InkFilm ink(Path file) {
        SpectraFile spectra = read(file);
        spectra.needs(BLACK);
        return spectra.film();
    }

    /** The sheet that a file describes: one that nothing shines through where there is no {@code black}. */
    static InkFilm sheet(Path file) {
        return read(file).film();
    }

    private InkFilm film() {
        needs(WHITE);
        try {
            Spectrum white = spectrum(WHITE);
            Spectrum black = rows.containsKey(BLACK) ? spectrum(BLACK) : white;
            if (!rows.containsKey(WHITE_CARD) && !rows.containsKey(BLACK_CARD)) {
                return InkFilm.measured(white, black);
            }
            return InkFilm.measured(
                    white,
                    black,
                    rows.containsKey(WHITE_CARD) ? spectrum(WHITE_CARD) : Spectrum.WHITE,
                    rows.containsKey(BLACK_CARD) ? spectrum(BLACK_CARD) : Spectrum.of(band -> 0));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(name + ": " + e.getMessage(), e);
        }
    }

    private void needs(String row) {
        if (!rows.containsKey(row)) {
            throw new IllegalArgumentException(
                    name + " has no line '" + row + "'. It must hold what was measured over " + row + ".");
        }
    }

    private Spectrum spectrum(String row) {
        NavigableMap<Double, Double> known = rows.get(row);
        return Spectrum.of(band -> {
            double nanometres = Spectrum.nanometres(band);
            Map.Entry<Double, Double> below = known.floorEntry(nanometres);
            Map.Entry<Double, Double> above = known.ceilingEntry(nanometres);
            if (below == null) {
                return above.getValue();
            }
            if (above == null || above.getKey().equals(below.getKey())) {
                return below.getValue();
            }
            double share = (nanometres - below.getKey()) / (above.getKey() - below.getKey());
            return below.getValue() + share * (above.getValue() - below.getValue());
        });
    }

    private static SpectraFile read(Path file) {
        SpectraFile spectra = new SpectraFile(String.valueOf(file.getFileName()));
        List<String> lines;
        try {
            lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalArgumentException(
                    "'" + file + "' can't be read as a text file. Look at its name and folder.", e);
        }
        double[] wavelengths = {};
        for (int line = 0; line < lines.size(); line++) {
            String[] cells = lines.get(line).strip().split("\\s*,\\s*", -1);
            if (lines.get(line).isBlank()) {
                continue;
            }
            double[] numbers = spectra.numbers(cells, line + 1);
            if (wavelengths.length == 0) {
                wavelengths = spectra.checked(numbers);
            } else {
                spectra.row(cells[0], wavelengths, numbers, line + 1);
            }
        }
        return spectra;
    }

    private void row(String row, double[] wavelengths, double[] shares, int line) {
        if (!List.of(WHITE, BLACK, WHITE_CARD, BLACK_CARD).contains(row)) {
            throw fault(line, "'" + row + "' is none of white, black, white card and black card.");
        }
        if (shares.length != wavelengths.length) {
            throw fault(line, shares.length + " shares for " + wavelengths.length + " wavelengths.");
        }
        NavigableMap<Double, Double> entry = new TreeMap<>();
        for (int i = 0; i < shares.length; i++) {
            if (!(shares[i] >= 0 && shares[i] <= 1)) {
                throw fault(line, shares[i] + " is no share of 0 to 1. Divide per cent by 100.");
            }
            entry.put(wavelengths[i], shares[i]);
        }
        if (rows.put(row, entry) != null) {
            throw fault(line, "'" + row + "' is there twice. Keep one.");
        }
    }

    private double[] checked(double[] wavelengths) {
        if (wavelengths.length == 0 || wavelengths[0] > FIRST_NM || wavelengths[wavelengths.length - 1] < LAST_NM) {
            throw fault(1, "wavelengths must run from 400 nm or less to 700 nm or more.");
        }
        for (int i = 1; i < wavelengths.length; i++) {
            double step = wavelengths[i] - wavelengths[i - 1];
            if (!(step > 0 && step <= WIDEST_STEP_NM)) {
                throw fault(1, "wavelengths must rise in steps of at most 20 nm.");
            }
        }
        return wavelengths;
    }

    private double[] numbers(String[] cells, int line) {
        double[] numbers = new double[cells.length - 1];
        for (int i = 1; i < cells.length; i++) {
            try {
                numbers[i - 1] = Double.parseDouble(cells[i]);
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(
                        name + ", line " + line + ": '" + cells[i] + "' is not a number.", e);
            }
        }
        return numbers;
    }

    private IllegalArgumentException fault(int line, String what) {
        return new IllegalArgumentException(name + ", line " + line + ": " + what);
    }
}
