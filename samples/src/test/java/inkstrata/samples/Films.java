package inkstrata.samples;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.jr.ob.JSON;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.separation.FilmStack.Film;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A set of films as its plan.json describes it.
 *
 * @param sheet its size
 * @param bare its colour
 * @param picture where the artwork lies on it
 * @param films in print order
 */
record Films(Size sheet, Rgb bare, Frame picture, List<Film> films) {
    Films {
        films = List.copyOf(films);
    }

    /** From the files that writers wrote, by name. */
    static Films of(Map<String, byte[]> files) throws IOException {
        Map<String, Object> plan = JSON.std.mapFrom(new String(files.get("plan.json"), UTF_8));
        Map<?, ?> sheet = (Map<?, ?>) plan.get("sheet");
        Map<?, ?> artwork = (Map<?, ?>) plan.get("artwork");
        List<Film> films = new ArrayList<>();
        for (Object pull : (List<?>) plan.get("pulls")) {
            Map<?, ?> facts = (Map<?, ?>) pull;
            Map<?, ?> ink = (Map<?, ?>) facts.get("ink");
            films.add(new Film(files.get((String) facts.get("file")), Rgb.parse((String) ink.get("swatch"))));
        }
        return new Films(
                new Size(number(sheet, "widthMm"), number(sheet, "heightMm")),
                Rgb.parse((String) sheet.get("colour")),
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
}
