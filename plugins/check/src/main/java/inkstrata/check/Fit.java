package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.planar.Affine;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import java.util.List;

/** How well films fit what was planned. */
final class Fit {
    private Fit() {}

    /**
     * Area in the picture's frame that only one of both covers, for each length of what was planned: how far outlines are apart on the average, in
     * millimetres.
     */
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

    /** Whether a film can be placed so. */
    static boolean staysOnGrid(Region film, Affine place) {
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
