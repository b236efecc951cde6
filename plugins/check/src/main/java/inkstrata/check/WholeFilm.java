package inkstrata.check;

import inkstrata.film.Film;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import inkstrata.planar.Similarity;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is wrong with a film as a whole: another one's, a negative, mirrored, of another size, turned or moved.
 *
 * @param picture what it prints once that is mended
 * @param around what lies around it then
 * @param pull the pull that it prints, by position
 * @param finding what is wrong, if anything is
 */
record WholeFilm(Region picture, Region around, int pull, Optional<Finding> finding) {
    /** As far apart on the average, in millimetres, outlines are the same but for rounding. */
    private static final double SAME_MM = 0.0005;

    /** A film that no corner of which is farther from its place, in millimetres, lies right. */
    private static final double RIGHT_MM = 0.008;

    /** Another place explains a film if that much less of it is then off. */
    private static final double BETTER = 0.5;

    /** A film is another's if it fits that one so much better, and so well. */
    private static final double MUCH_BETTER = 0.25;

    private static final double ANOTHERS_MM = 0.05;

    /** A unit taken for another: inches, centimetres, points (1/72 in), px (1/96 in; 1/90 in once), and none at all. */
    private static final double[] UNITS = {
        25.4,
        10,
        96 / 25.4,
        72 / 25.4,
        90 / 25.4,
        96.0 / 72,
        96.0 / 90,
        90.0 / 72,
        1.0 / 25.4,
        0.1,
        25.4 / 96,
        25.4 / 72,
        25.4 / 90,
        72.0 / 96,
        90.0 / 96,
        72.0 / 90
    };

    /** A film may lie on its side, or upside down. */
    private static final List<Similarity> QUARTERS = List.of(
            new Similarity(0, 1, 0, 0, false), new Similarity(-1, 0, 0, 0, false), new Similarity(0, -1, 0, 0, false));

    /**
     * Finds out.
     *
     * @param pull whose film it is said to be, by position
     * @param planned what each pull is to print
     * @param drawn the same without traps: another program's films may have others
     * @param frame where the picture lies
     * @param inks name of each pull's ink
     */
    static WholeFilm of(Film film, int pull, List<Region> planned, List<Region> drawn, Frame frame, List<String> inks) {
        Region own = planned.get(pull);
        if (own.isEmpty()) {
            return new WholeFilm(film.picture(), film.around(), pull, Optional.empty());
        }
        double misfit = Fit.misfitMm(film.picture(), own, frame);
        if (misfit <= SAME_MM) {
            return new WholeFilm(film.picture(), film.around(), pull, Optional.empty());
        }
        Region all = Region.union(List.of(film.picture(), film.around()));
        if (all.isEmpty()) {
            return new WholeFilm(all, all, pull, Optional.of(empty(film, own)));
        }
        Optional<Integer> other = IntStream.range(0, planned.size())
                .filter(i -> i != pull && !planned.get(i).isEmpty())
                .filter(i -> isMeantFor(film, planned.get(i), drawn.get(i), misfit, frame))
                .boxed()
                .findFirst();
        if (other.isPresent()) {
            return new WholeFilm(
                    film.picture(),
                    film.around(),
                    other.get(),
                    Optional.of(swapped(film, pull, other.get(), own, inks)));
        }
        Region inverse = inverse(film.picture(), frame);
        if (Fit.misfitMm(inverse, own, frame) < Math.min(ANOTHERS_MM, MUCH_BETTER * misfit)) {
            return new WholeFilm(inverse, Region.EMPTY, pull, Optional.of(negative(film, own)));
        }
        List<Similarity> places = places(film.picture(), all, own, frame);
        return Stream.of(own, drawn.get(pull))
                .flatMap(target -> new Alignment(target).of(all, places).stream())
                .flatMap(place -> Fit.of(all, own, place, frame).stream())
                .min(Comparator.comparingDouble(Fit::misfitMm))
                .filter(fit -> fit.misfitMm() < BETTER * misfit && offMm(fit.place(), own) > RIGHT_MM)
                .map(fit -> new WholeFilm(
                        within(frame, fit.place().of(all)),
                        fit.place().of(film.around()),
                        pull,
                        Optional.of(misplaced(film, fit.place(), own))))
                .orElse(new WholeFilm(film.picture(), film.around(), pull, Optional.empty()));
    }

    private static boolean isMeantFor(Film film, Region planned, Region drawn, double misfit, Frame frame) {
        double least =
                Math.min(Fit.misfitMm(film.picture(), planned, frame), Fit.misfitMm(film.picture(), drawn, frame));
        return least < Math.min(ANOTHERS_MM, MUCH_BETTER * misfit);
    }

    /** How it may have been meant to lie; the first is as it does. */
    private static List<Similarity> places(Region picture, Region all, Region own, Frame frame) {
        List<Similarity> places = new ArrayList<>();
        places.add(Similarity.NONE);
        places.add(new Similarity(1, 0, frame.x() + frame.right(), 0, true));
        for (double unit : UNITS) {
            places.add(new Similarity(unit, 0, 0, 0, false));
            places.add(new Similarity(unit, 0, frame.x() * (1 - unit), frame.y() * (1 - unit), false));
        }
        for (Region part : picture.isEmpty() ? List.of(all) : List.of(all, picture)) {
            for (boolean mirrored : new boolean[] {false, true}) {
                Alignment.frames(part, own, mirrored).ifPresent(places::add);
            }
            for (Similarity turn : QUARTERS) {
                Alignment.frames(turn.of(part), own, false).map(turn::then).ifPresent(places::add);
            }
        }
        return places;
    }

    /** The frame without it. */
    private static Region inverse(Region picture, Frame frame) {
        return CoverMap.of(frame, List.of(picture)).where(BitSet::isEmpty);
    }

    private static Region within(Frame frame, Region all) {
        return CoverMap.of(frame, List.of(all)).where(cover -> !cover.isEmpty());
    }

    /** How far the corner that is off most has to move. */
    private static double offMm(Similarity place, Region own) {
        Frame frame = own.bounds().orElseThrow();
        double off = 0;
        for (double x : new double[] {frame.x(), frame.right()}) {
            for (double y : new double[] {frame.y(), frame.bottom()}) {
                Place there = place.of(new Place(x, y));
                off = Math.max(off, Math.hypot(there.x() - x, there.y() - y));
            }
        }
        return off;
    }

    private static Finding empty(Film film, Region own) {
        return new Finding(
                Severity.ERROR,
                "empty film",
                middle(own),
                "nothing on " + film.file() + " prints",
                String.format(Locale.ROOT, "%.1f mm² of ink", own.areaMm2()),
                "Check that the drawing was not left out or hidden when the film was saved.");
    }

    private static Finding negative(Film film, Region own) {
        return fault(
                "negative film",
                film,
                own,
                " is a negative: clear where ink is to print, and black elsewhere",
                "black where ink is to print",
                "Invert it, or have it output as a positive.");
    }

    private static Finding swapped(Film film, int pull, int other, Region own, List<String> inks) {
        return new Finding(
                Severity.ERROR,
                "swapped films",
                middle(own),
                film.file() + " prints what " + inks.get(other) + " is to print",
                "what " + inks.get(pull) + " is to print",
                "Exchange the films, or say under films in the job file which is which.");
    }

    private static Finding misplaced(Film film, Similarity place, Region own) {
        double extent = Math.max(
                own.bounds().orElseThrow().width(), own.bounds().orElseThrow().height());
        if (place.mirrored()) {
            return fault(
                    "mirrored film",
                    film,
                    own,
                    " is mirrored",
                    "a film that reads as the print does, or as the job says",
                    "Mirror it, or set sheet.print in the job file.");
        }
        double larger = 1 / place.scale();
        if (Math.abs(larger - 1) * extent > RIGHT_MM) {
            return fault(
                    "film size",
                    film,
                    own,
                    String.format(Locale.ROOT, " is %.4f times as large as the artwork", larger),
                    "1.0000 times",
                    "Write width and height in mm, print at 100 %, and hold a ruler to it.");
        }
        double turn = -place.turnDegrees();
        if (Math.abs(Math.toRadians(turn)) * extent > RIGHT_MM) {
            return fault(
                    "turned film",
                    film,
                    own,
                    String.format(
                            Locale.ROOT,
                            " is turned by %.3f degrees %s",
                            Math.abs(turn),
                            turn > 0 ? "clockwise" : "anticlockwise"),
                    "as the drawing lies",
                    "Turn all of it back.");
        }
        Place middle = middle(own);
        Place meant = place.of(middle);
        return fault(
                "film place",
                film,
                own,
                " lies "
                        + Stream.of(
                                        off(middle.x() - meant.x(), "right", "left"),
                                        off(middle.y() - meant.y(), "down", "up"))
                                .flatMap(Optional::stream)
                                .collect(Collectors.joining(" and ")),
                "where the drawing has it",
                "Move all of it back.");
    }

    private static Optional<String> off(double distance, String where, String whereIfNegative) {
        String length = String.format(Locale.ROOT, "%.3f mm too far ", Math.abs(distance));
        return length.startsWith("0.000")
                ? Optional.empty()
                : Optional.of(length + (distance > 0 ? where : whereIfNegative));
    }

    private static Finding fault(String rule, Film film, Region own, String measured, String limit, String remedy) {
        return new Finding(Severity.ERROR, rule, middle(own), film.file() + measured, limit, remedy);
    }

    private static Place middle(Region own) {
        Frame frame = own.bounds().orElseThrow();
        return new Place(frame.x() + frame.width() / 2, frame.y() + frame.height() / 2);
    }
}
