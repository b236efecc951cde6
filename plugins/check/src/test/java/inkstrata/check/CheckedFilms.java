package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.film.FilmReader;
import inkstrata.separation.Finding;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes films into files, reads them back, and compares them with the plan. */
final class CheckedFilms {
    static final double REGISTER_MM = 0.4;

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
                Files.writeString(file, films.get(pull).get().svg(hand, side));
                read.add(Optional.of(
                        reader.read(file, planned.plan().pulls().get(pull).ink())));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return new Comparison(planned, read, REGISTER_MM).inspection();
    }
}
