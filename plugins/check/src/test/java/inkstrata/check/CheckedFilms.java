package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.film.FilmReader;
import inkstrata.plan.Ink;
import inkstrata.separation.Finding;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes films into files, reads them back, and compares them with the plan. */
final class CheckedFilms {
    static final double REGISTER_MM = 0.4;

    /** Most films of a spoilt set are right, and were read before. */
    private static final Map<Known, Film> KNOWN = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Known, Film> eldest) {
            return size() > MOST_KNOWN;
        }
    };

    private static final int MOST_KNOWN = 100;

    /** Whatever a film depends on. */
    private record Known(FilmReader reader, String file, Ink ink, String svg) {}

    private CheckedFilms() {}

    /** As planned, with marks. */
    static List<Optional<WrittenFilm>> asPlanned(Separation planned) {
        double side = planned.artwork().frame().width();
        return planned.printed().stream()
                .map(picture -> Optional.of(new WrittenFilm(picture, WrittenFilm.marksAround(side))))
                .toList();
    }

    static List<Finding> findings(
            Separation planned, List<Optional<WrittenFilm>> films, WrittenFilm.Hand hand, Path folder) {
        return inspection(planned, films, hand, folder).findings();
    }

    static Inspection inspection(
            Separation planned, List<Optional<WrittenFilm>> films, WrittenFilm.Hand hand, Path folder) {
        double side = planned.artwork().frame().width();
        FilmReader reader =
                new FilmReader(planned.table().sheet(), planned.artwork().frame());
        List<Optional<Film>> read = new ArrayList<>();
        try {
            for (int pull = 0; pull < films.size(); pull++) {
                if (films.get(pull).isEmpty()) {
                    read.add(Optional.empty());
                    continue;
                }
                Path file = folder.resolve("film" + pull + ".svg");
                String svg = films.get(pull).get().svg(hand, side);
                Known key = new Known(
                        reader,
                        file.getFileName().toString(),
                        planned.plan().pulls().get(pull).ink(),
                        svg);
                Film film = KNOWN.get(key);
                if (film == null) {
                    film = reader.read(Files.writeString(file, svg), key.ink());
                    KNOWN.put(key, film);
                }
                read.add(Optional.of(film));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return new Comparison(planned, read, REGISTER_MM).inspection();
    }
}
