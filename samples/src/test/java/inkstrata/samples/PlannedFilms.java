package inkstrata.samples;

import static com.fasterxml.jackson.jr.ob.JSON.std;
import static java.nio.charset.StandardCharsets.UTF_8;

import inkstrata.colour.Rgb;
import inkstrata.colour.Spectrum;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.separation.FilmStack;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A set of films with what plan.json says of their inks, and what they would look like: by film code of its own, one line for a film on
 * what lies beneath it.
 *
 * @param sheet its size
 * @param bare its colour before white
 * @param sheetHiding how much of what lies behind it the sheet hides
 * @param picture where the artwork lies on it
 * @param films in print order
 */
record PlannedFilms(Size sheet, Rgb bare, double sheetHiding, Frame picture, List<PlannedFilm> films) {
    /** One film, its ink, and the side that it prints. */
    record PlannedFilm(byte[] svg, String ink, Rgb swatch, double hiding, boolean isBack) {}

    static PlannedFilms of(Map<String, byte[]> files) throws IOException {
        Map<String, Object> plan = std.mapFrom(new String(files.get("plan.json"), UTF_8));
        Map<?, ?> sheet = (Map<?, ?>) plan.get("sheet");
        Map<?, ?> artwork = (Map<?, ?>) plan.get("artwork");
        List<PlannedFilm> films = new ArrayList<>();
        for (Object pull : (List<?>) plan.get("pulls")) {
            Map<?, ?> facts = (Map<?, ?>) pull;
            films.add(new PlannedFilm(
                    files.get((String) facts.get("file")),
                    (String) facts.get("ink"),
                    Rgb.parse((String) facts.get("swatch")),
                    number(facts, "hiding"),
                    facts.get("side").equals("back")));
        }
        return new PlannedFilms(
                new Size(number(sheet, "widthMm"), number(sheet, "heightMm")),
                Rgb.parse((String) sheet.get("colour")),
                number(sheet, "hiding"),
                new Frame(
                        number(artwork, "xMm"),
                        number(artwork, "yMm"),
                        number(artwork, "widthMm"),
                        number(artwork, "heightMm")),
                films);
    }

    private static double number(Map<?, ?> map, String key) {
        return ((Number) map.get(key)).doubleValue();
    }

    /** For each pixel of a frame of the sheet, seen from the front, a bit for each film that prints there. */
    long[][] covers(Frame frame, double pixelsPerMm) {
        long[][] covers = null;
        for (int i = 0; i < films.size(); i++) {
            PlannedFilm film = films.get(i);
            Frame there = film.isBack()
                    ? new Frame(sheet.width() - frame.x() - frame.width(), frame.y(), frame.width(), frame.height())
                    : frame;
            BufferedImage image = FilmStack.film(film.svg(), there, pixelsPerMm);
            if (covers == null) {
                covers = new long[image.getHeight()][image.getWidth()];
            }
            for (int y = 0; y < covers.length; y++) {
                for (int x = 0; x < covers[y].length; x++) {
                    int from = film.isBack() ? covers[y].length - 1 - x : x;
                    if (image.getRGB(from, y) >>> 24 != 0) {
                        covers[y][x] |= 1L << i;
                    }
                }
            }
        }
        return covers == null ? new long[0][0] : covers;
    }

    /** What is seen where those films print: first on the back what was printed last, then the sheet, then the front as printed. */
    Spectrum seen(long cover) {
        Spectrum seen = Spectrum.WHITE;
        for (int i = films.size() - 1; i >= 0; i--) {
            if (films.get(i).isBack() && (cover >> i & 1) != 0) {
                seen = laid(films.get(i).swatch(), films.get(i).hiding(), seen);
            }
        }
        seen = laid(bare, sheetHiding, seen);
        for (int i = 0; i < films.size(); i++) {
            if (!films.get(i).isBack() && (cover >> i & 1) != 0) {
                seen = laid(films.get(i).swatch(), films.get(i).hiding(), seen);
            }
        }
        return seen;
    }

    /**
     * A film that looks like its swatch W over white and like h W over black: R + T² G / (1 - R G) over G, with R = h W and
     * T² = (1 - h) W (1 - R) (Kubelka 1948).
     */
    private static Spectrum laid(Rgb swatch, double h, Spectrum ground) {
        Spectrum white = WHITES.computeIfAbsent(swatch, Spectrum::of);
        if (h == 1) {
            return white;
        }
        return Spectrum.of(band -> {
            double r = h * white.at(band);
            return r + (1 - h) * white.at(band) * (1 - r) * ground.at(band) / (1 - r * ground.at(band));
        });
    }

    private static final Map<Rgb, Spectrum> WHITES = new HashMap<>();
}
