package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import inkstrata.planar.Similarity;
import java.util.List;
import java.util.Optional;

/**
 * How well a film, placed otherwise, fits what was planned.
 *
 * @param place how it would have to be placed
 * @param misfitMm area that only one of both covers, for each length of their outlines: how far outlines are apart on the average
 */
record Fit(Similarity place, double misfitMm) {
    /** Tries it, in the picture's frame; none if the film would then leave the grid. */
    static Optional<Fit> of(Region film, Region planned, Similarity place, Frame frame) {
        if (planned.isEmpty() || !staysOnGrid(film, place)) {
            return Optional.empty();
        }
        return Optional.of(new Fit(place, misfitMm(place.of(film), planned, frame)));
    }

    /** Likewise, as it lies. */
    static double misfitMm(Region film, Region planned, Frame frame) {
        if (film.equals(planned)) {
            return 0;
        }
        CoverMap both = CoverMap.of(frame, List.of(film, planned));
        double apart = 0;
        for (int number = 0; number < both.count(); number++) {
            apart += both.cover(number).cardinality() == 1 ? both.areaMm2(number) : 0;
        }
        return apart / planned.perimeterMm();
    }

    private static boolean staysOnGrid(Region film, Similarity place) {
        double most = (Grid.LIMIT - 2) * Grid.STEP_MM;
        return film.bounds()
                .map(place::of)
                .filter(frame -> frame.x() > -most
                        && frame.y() > -most
                        && frame.right() < most
                        && frame.bottom() < most
                        && Math.min(frame.width(), frame.height()) > Grid.STEP_MM)
                .isPresent();
    }
}
