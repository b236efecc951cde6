package inkstrata.samples;

import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.separation.FilmStack.Film;
import java.io.IOException;
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
        PlannedFilms planned = PlannedFilms.of(files);
        return new Films(
                planned.sheet(),
                planned.bare(),
                planned.picture(),
                planned.films().stream()
                        .map(film -> new Film(film.svg(), film.swatch()))
                        .toList());
    }
}
