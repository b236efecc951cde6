package inkstrata.check;

import inkstrata.plan.Ink;
import inkstrata.plan.Overlap;
import inkstrata.plan.Prediction;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Films, what was planned for each, and what the artwork shows, all laid over each other. */
final class Laid {
    /** Thinner differences, in millimetres, are too fine for any mesh, or another program's curves, and no faults (our own choice). */
    static final double THIN_MM = 0.05;

    private final Separation planned;
    private final CoverMap map;
    private final Counted counted;
    private final int pulls;
    private final List<Integer> farthestFirst;
    private final Prediction prediction;

    private Laid(Separation planned, CoverMap map) {
        this.planned = planned;
        this.map = map;
        this.counted = Counted.of(planned);
        this.pulls = planned.plan().pulls().size();
        this.farthestFirst =
                planned.table().sheet().farthestFirst(planned.plan().pulls());
        this.prediction = new Prediction(planned.table().sheet());
    }

    static Laid of(Separation planned, Intent intent, List<Region> films) {
        List<Region> all = new ArrayList<>(films);
        all.addAll(intent.planned());
        all.addAll(intent.drawn());
        return new Laid(planned, CoverMap.of(intent.frame(), all));
    }

    /**
     * Places that are alike: the same films, plan and artwork.
     *
     * @param number of them
     * @param shown the pull that the artwork shows there; none for bare sheet
     * @param isOwn whether the artwork gives the place to the film that was asked for, be it beneath others
     * @param change how far the film's fault alone changes the colour there (CIEDE2000)
     */
    record Alike(int number, OptionalInt shown, boolean isOwn, double change) {}

    /** Where a film prints what was not planned. */
    List<Alike> more(int film) {
        return alike(film, cover -> cover.get(film) && !cover.get(pulls + film));
    }

    /** Where it lacks what was planned. */
    List<Alike> less(int film) {
        return alike(film, cover -> !cover.get(film) && cover.get(pulls + film));
    }

    /** Where it was planned and its absence would be seen. */
    List<Alike> needed(int film) {
        return alike(film, cover -> cover.get(pulls + film)).stream()
                .filter(alike -> alike.change() > Overlap.TOLERANCE)
                .toList();
    }

    /** Those of them where no film prints that keeps paper from showing ({@link Counted}): a ground does only where it is to be seen. */
    List<Alike> bare(List<Alike> alike) {
        return alike.stream()
                .filter(one -> counted.pulls().stream()
                        .filter(pull -> map.cover(one.number()).get(pull))
                        .allMatch(pull -> planned.plan().pulls().get(pull).ground()
                                && !one.shown().equals(OptionalInt.of(pull))))
                .toList();
    }

    Region where(List<Alike> alike) {
        BitSet numbers = new BitSet();
        alike.forEach(one -> numbers.set(one.number()));
        return map.where(numbers);
    }

    double areaMm2(List<Alike> alike) {
        return alike.stream().mapToDouble(one -> map.areaMm2(one.number())).sum();
    }

    /** All that is not planned for a film, in square millimetres. */
    double leftOutMm2(int film) {
        return areaMm2(cover -> !cover.get(pulls + film));
    }

    /** The same where the artwork shows one pull. */
    double leftOutMm2(int film, int shown) {
        return areaMm2(cover -> !cover.get(pulls + film) && shown(cover).equals(OptionalInt.of(shown)));
    }

    /** The same where one pull is to print, be it beneath others. */
    double leftOutOfFilmMm2(int film, int printed) {
        return areaMm2(cover -> !cover.get(pulls + film) && cover.get(pulls + printed));
    }

    /** Whether a pull is to print there. */
    boolean isPlanned(Alike alike, int pull) {
        return map.cover(alike.number()).get(pulls + pull);
    }

    private double areaMm2(Predicate<BitSet> asked) {
        return IntStream.range(0, map.count())
                .filter(number -> asked.test(map.cover(number)))
                .mapToDouble(map::areaMm2)
                .sum();
    }

    private List<Alike> alike(int film, Predicate<BitSet> asked) {
        return IntStream.range(0, map.count())
                .filter(number -> asked.test(map.cover(number)))
                .mapToObj(number -> alike(film, number))
                .toList();
    }

    private Alike alike(int film, int number) {
        BitSet cover = map.cover(number);
        List<Ink> with = new ArrayList<>();
        List<Ink> without = new ArrayList<>();
        for (int pull : farthestFirst) {
            Ink ink = planned.plan().pulls().get(pull).ink();
            if (pull == film) {
                with.add(ink);
            } else if (cover.get(pulls + pull)) {
                with.add(ink);
                without.add(ink);
            }
        }
        return new Alike(number, shown(cover), cover.get(2 * pulls + film), prediction.difference(with, without));
    }

    /** The pull nearest to the eye of those that the artwork gives a place to. */
    private OptionalInt shown(BitSet cover) {
        return IntStream.range(0, pulls)
                .filter(pull -> cover.get(2 * pulls + pull))
                .reduce((one, other) -> planned.isNearer(one, other) ? one : other);
    }
}
