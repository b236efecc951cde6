package inkstrata.check;

import inkstrata.check.Alignment.Outline;
import inkstrata.check.WholeFilm.Fault;
import inkstrata.film.Film;
import inkstrata.film.Stain;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Affine;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds what is wrong with films as wholes.
 *
 * <p>Whatever is wrong, it is tried what would mend it. Of all that explains a film about equally well the simplest is taken: moved; spread or
 * choked; turned; larger or smaller by the ratio of two units; mirrored; of any other size; last stretched. A disc at 97 % is mirrored as well as not,
 * and is not said to be. No other place is made up for what lies right: a film that lost a part lies where it did.
 */
final class Diagnosis {
    /** As far apart on the average, in millimetres, outlines are the same but for rounding. */
    static final double SAME_MM = 0.0005;

    /** A film that no corner of which is farther from its place, in millimetres, lies right. */
    static final double RIGHT_MM = 0.008;

    /** Another place explains a film if that much less of it is then off. */
    private static final double BETTER = 0.5;

    /** What explains a film that little worse than the best does explains it as well. */
    private static final double ABOUT = 1.3;

    /** One place explains another film too, if that is farther off on the average by so little more, in millimetres. */
    private static final double ALSO_MM = 0.003;

    /** A film is another's if it fits that one so much better, and so well. */
    private static final double MUCH_BETTER = 0.25;

    private static final double ANOTHERS_MM = 0.05;

    /** So much of what was planned must have the film's outline so near, in millimetres, once it is placed otherwise. */
    private static final double AGREED = 0.85;

    /** Less will do, for films with other traps, if much less of the film is then off. */
    private static final double HALF_AGREED = 0.55;

    private static final double NEAR_MM = 0.02;

    /** If that much has it that near as it lies, whatever is wrong is wrong in places only. */
    private static final double LIES_RIGHT = 0.98;

    private static final double EXACT_MM = 0.006;

    /** Another place leaves no more than that share of the film's own outline off that is off as it lies: what lies right has not moved. */
    private static final double LEFT_OFF = 0.7;

    /** A film that prints so much of the picture's frame prints all of it. */
    private static final double ALL = 0.97;

    /** Parts count if they have that much of the outline. */
    private static final double LEAST_SHARE = 0.03;

    /** A film may lie on its side, or upside down. */
    private static final List<Affine> QUARTERS =
            List.of(new Affine(0, -1, 1, 0, 0, 0), new Affine(-1, 0, 0, -1, 0, 0), new Affine(0, 1, -1, 0, 0, 0));

    private static final List<Affine> TURNS = List.of(Affine.NONE, QUARTERS.get(0), QUARTERS.get(1), QUARTERS.get(2));

    /** So many of the largest parts of plan and film are looked at for their form. */
    private static final int PLANNED_PARTS = 3;

    private static final int FILM_PARTS = 30;

    /** Parts of one form fill their frames to the same share, but for this. */
    private static final double ONE_FORM = 0.02;

    /** Printers and programs get sizes wrong, or slant, by no more than this without mixing up units, as a ratio (our own choice). */
    private static final double NEARLY_RIGHT = 0.05;

    /** Sizes that differ by less, as a ratio, are one. */
    private static final double ONE_SIZE = 0.001;

    private final Intent intent;
    private final Map<Region, Alignment> alignments = new HashMap<>();

    Diagnosis(Intent intent) {
        this.intent = intent;
    }

    /** Something that may be wrong, the simpler the earlier in a list, and how well that would explain it. */
    private record Explanation(WholeFilm whole, double misfitMm) {}

    /**
     * A film as it lies.
     *
     * @param painted all that it prints in the picture's frame
     * @param outline of all that is on it, marks and all
     * @param own of what it prints in the frame
     * @param misfitMm how far its outlines are off on the average, from those with traps or without, whichever are nearer
     */
    private record Lying(WholeFilm film, Region painted, Outline outline, OwnOutline own, double misfitMm) {}

    /** @param pull whose film it is said to be, by position */
    WholeFilm of(Film film, int pull) {
        WholeFilm right = WholeFilm.right(pull, film);
        Region own = intent.planned().get(pull);
        Region painted = WholeFilm.painted(film);
        if (own.isEmpty() || isAsPlanned(film.picture(), pull)) {
            return right;
        }
        double misfit = misfit(painted, own);
        if (misfit <= SAME_MM) {
            return right;
        }
        Region all = Region.union(List.of(painted, film.around()));
        if (all.isEmpty()) {
            return right.with(Fault.EMPTY, film);
        }
        Region inverse = inverse(painted);
        if (fits(misfit(inverse, own), own, misfit)) {
            return right.with(Fault.NEGATIVE, new Film(film.file(), film.page(), inverse, Region.EMPTY, List.of()));
        }
        Outline outline = new Outline(all);
        if (alignment(own).share(outline, Affine.NONE, EXACT_MM) > LIES_RIGHT) {
            return right;
        }
        Optional<Integer> other = IntStream.range(0, intent.planned().size())
                .filter(i -> i != pull && isMeantFor(painted, i, misfit))
                .boxed()
                .findFirst();
        if (other.isPresent()) {
            return right.anothers(other.get());
        }
        if (isSolid(painted, own)) {
            return right;
        }
        return explained(lying(right, painted, outline), all)
                .or(() -> mirroredOfAnother(right, painted, misfit))
                .orElse(painted.isEmpty() ? right.with(Fault.EMPTY, film) : right);
    }

    /** Another's film that was turned over on the sheet as well; none if it is the pull's own without its traps, in a drawing of two halves. */
    private Optional<WholeFilm> mirroredOfAnother(WholeFilm whole, Region painted, double misfit) {
        if (misfit(painted, intent.drawn().get(whole.pull())) <= ANOTHERS_MM) {
            return Optional.empty();
        }
        Frame frame = intent.frame();
        Affine mirror = new Affine(-1, 0, 0, 1, frame.x() + frame.right(), 0);
        Region turned = mirror.of(painted);
        return IntStream.range(0, intent.planned().size())
                .filter(i -> i != whole.pull() && isMeantFor(turned, i, misfit))
                .mapToObj(i -> whole.anothers(
                        i, mirror, placed(whole.film(), mirror, intent.planned().get(i))))
                .findFirst();
    }

    /**
     * A film that is to be explained by what is wrong with another, if that explains it about as well as what was found.
     *
     * @param first the other one
     * @param spreadMm by so much amounts of spread may differ
     */
    Optional<WholeFilm> explainedBy(WholeFilm first, WholeFilm whole, double spreadMm) {
        return first.fault().isAllRound()
                ? explainedBy(first.offsetMm(), whole, spreadMm)
                : explainedBy(first.place(), whole);
    }

    private Optional<WholeFilm> explainedBy(double offset, WholeFilm whole, double spreadMm) {
        Region painted = WholeFilm.painted(whole.film());
        int pull = whole.pull();
        if (painted.isEmpty() || intent.planned().get(pull).isEmpty()) {
            return Optional.empty();
        }
        double worst = ABOUT * misfitOf(whole) + ALSO_MM;
        return targets(pull).stream()
                .flatMap(target -> allRound(WholeFilm.right(pull, whole.film()), painted, target, false).stream())
                .filter(explanation ->
                        Math.abs(explanation.whole().offsetMm() - offset) < spreadMm && explanation.misfitMm() <= worst)
                .findFirst()
                .map(Explanation::whole);
    }

    private Optional<WholeFilm> explainedBy(Affine place, WholeFilm whole) {
        Region own = intent.planned().get(whole.pull());
        Region all = Region.union(
                List.of(WholeFilm.painted(whole.film()), whole.film().around()));
        if (all.isEmpty() || !Fit.staysOnGrid(all, place)) {
            return Optional.empty();
        }
        if (own.isEmpty()) {
            // Nothing speaks against it: what lies around goes along.
            Film moved = new Film(
                    whole.film().file(),
                    whole.film().page(),
                    within(place.of(whole.film().picture())),
                    around(whole.film(), place),
                    List.of());
            return Optional.of(whole.placed(Fault.NONE, place, moved));
        }
        Film placed = placed(whole.film(), place, own);
        return misfit(WholeFilm.painted(placed), own) <= ABOUT * misfitOf(whole) + ALSO_MM
                ? Optional.of(whole.placed(fault(place, own), place, placed))
                : Optional.empty();
    }

    private double misfitOf(WholeFilm whole) {
        return misfit(WholeFilm.painted(whole.mended()), intent.planned().get(whole.pull()));
    }

    boolean isAsPlanned(Region picture, int pull) {
        Region own = intent.planned().get(pull);
        return AsPlanned.of(picture, own, intent.frame()).equals(own);
    }

    /** Whether it is black nearly everywhere, and was not meant to be: nothing on it tells where it lies. */
    private boolean isSolid(Region painted, Region own) {
        Region frame = inverse(Region.EMPTY);
        return painted.areaMm2() > ALL * frame.areaMm2() && own.areaMm2() < ALL * painted.areaMm2();
    }

    private Lying lying(WholeFilm film, Region painted, Outline outline) {
        List<Region> targets = targets(film.pull());
        // What a film is as it lies counts by the better of both: else a film with its traps would seem off from the
        // drawing without.
        double misfit = targets.stream()
                .mapToDouble(target -> misfit(painted, target))
                .min()
                .orElseThrow();
        OwnOutline own = OwnOutline.of(painted, targets, EXACT_MM, intent.frame());
        return new Lying(film, painted, outline, own, misfit);
    }

    private Optional<WholeFilm> explained(Lying film, Region all) {
        List<Explanation> explanations = new ArrayList<>();
        for (Region target : targets(film.film().pull())) {
            Alignment alignment = alignment(target);
            List<Affine> guesses = places(film.painted(), all, target);
            List<Affine> upright = guesses.stream()
                    .filter(guess -> guess.xx() > 0 && !guess.isMirrored())
                    .toList();
            List<Affine> turned = guesses.stream()
                    .filter(guess -> !(guess.xx() > 0) && !guess.isMirrored())
                    .toList();
            List<Affine> mirrored = guesses.stream().filter(Affine::isMirrored).toList();
            Optional<Affine> start = alignment.of(film.outline(), upright);
            start.flatMap(place -> explanation(film, alignment, place, target)).ifPresent(explanations::add);
            allRound(film.film(), film.painted(), target, true)
                    .or(() -> rim(film, target))
                    .ifPresent(explanations::add);
            alignment
                    .of(film.outline(), turned)
                    .flatMap(place -> explanation(film, alignment, place, target))
                    .ifPresent(explanations::add);
            alignment
                    .of(film.outline(), mirrored)
                    .flatMap(place -> explanation(film, alignment, place, target))
                    .ifPresent(explanations::add);
            start.map(place -> alignment.stretched(film.outline(), place))
                    .flatMap(place -> explanation(film, alignment, place, target))
                    .ifPresent(explanations::add);
        }
        if (!explanations.isEmpty()) {
            slid(film).ifPresent(explanations::add);
        }
        double best =
                explanations.stream().mapToDouble(Explanation::misfitMm).min().orElse(0);
        return explanations.stream()
                .filter(explanation -> explanation.misfitMm() <= ABOUT * best + SAME_MM)
                .map(Explanation::whole)
                .min(Comparator.comparingInt(Diagnosis::oddness));
    }

    /** A part of it that moved, the rest lying right: no turn, size or stretching of the film. Several moves would explain nearly anything. */
    private Optional<Explanation> slid(Lying film) {
        List<Region> targets = targets(film.film().pull());
        return MovedParts.of(film.painted(), targets, intent.frame())
                .filter(moved -> moved.parts().size() == 1)
                .map(moved -> new Explanation(
                        film.film(),
                        targets.stream()
                                .mapToDouble(target -> misfit(moved.mended(), target))
                                .min()
                                .orElseThrow()));
    }

    /** How far-fetched it is: a size that is no ratio of two units, the more so mirrored or stretched, explains nearly any simple shape by another. */
    private static int oddness(WholeFilm film) {
        boolean isFreeSize = isOfAnySize(film.place(), ONE_SIZE);
        return switch (film.fault()) {
            case EMPTY, SWAPPED, NEGATIVE -> 0;
            case PLACE -> 1;
            case NONE, SPREAD, CHOKED -> 2;
            case TURNED -> 3;
            case SIZE -> isFreeSize ? 6 : 4;
            case MIRRORED -> isFreeSize ? 7 : 5;
            case STRETCHED -> 8;
        };
    }

    /** A size that is not nearly right, nor the ratio of two units: it has to explain nearly all. */
    private static boolean isFarFetched(Affine place) {
        return isOfAnySize(place, NEARLY_RIGHT);
    }

    /** One of two parts that slid sideways looks like a slant, but no printer and no program slants by several degrees. */
    private static boolean isSlantedMuch(Affine place) {
        double along = place.xx() * place.xy() + place.yx() * place.yy();
        return Math.abs(along) > NEARLY_RIGHT * Math.hypot(place.xx(), place.yx()) * Math.hypot(place.xy(), place.yy());
    }

    private static boolean isOfAnySize(Affine place, double but) {
        return Math.abs(Math.log(place.scale())) > but
                && UnitSlip.of(1 / place.scale()).isEmpty();
    }

    /** With its traps and without. */
    private List<Region> targets(int pull) {
        Region planned = intent.planned().get(pull);
        Region drawn = intent.drawn().get(pull);
        return drawn.equals(planned) || drawn.isEmpty() ? List.of(planned) : List.of(planned, drawn);
    }

    private Optional<Explanation> explanation(Lying film, Alignment alignment, Affine place, Region target) {
        Film asItLies = film.film().film();
        Region all = Region.union(List.of(film.painted(), asItLies.around()));
        if (!Fit.staysOnGrid(all, place) || offMm(place, target) <= RIGHT_MM || isSlantedMuch(place)) {
            return Optional.empty();
        }
        double share = alignment.share(film.outline(), place, NEAR_MM);
        if (share < HALF_AGREED) {
            return Optional.empty();
        }
        double own = film.own().share(new NearOutlines(List.of(target), Grid.STEPS_PER_MM / 4.0), place, NEAR_MM);
        if (1 - own >= LEFT_OFF * (1 - film.own().shareThatLiesRight())
                && film.own().holdsAny()) {
            return Optional.empty();
        }
        boolean isAll = Math.min(share, own) > LIES_RIGHT;
        if ((isFarFetched(place) || fault(place, target) == Fault.STRETCHED) && Math.min(share, own) < AGREED) {
            return Optional.empty();
        }
        if (!isAll && wouldMoveWhatLiesRight(film.outline(), alignment, place, target)) {
            return Optional.empty();
        }
        Film mended = placed(asItLies, place, target);
        double left = misfit(WholeFilm.painted(mended), target);
        return left < (share < AGREED ? MUCH_BETTER : BETTER) * film.misfitMm()
                ? Optional.of(new Explanation(film.film().placed(fault(place, target), place, mended), left))
                : Optional.empty();
    }

    /** Whether parts lie where they should, every point of them, and would not then: others have moved, not the film. */
    private boolean wouldMoveWhatLiesRight(Outline outline, Alignment alignment, Affine place, Region target) {
        double right = 0;
        for (Region part : largest(target, FILM_PARTS)) {
            if (offMm(place, part) > Laid.THIN_MM
                    && outline.holds(part, EXACT_MM)
                    && !alignment.holds(place.of(part), NEAR_MM)) {
                right += part.perimeterMm();
            }
        }
        return right > LEAST_SHARE * target.perimeterMm();
    }

    /** @param isAlone whether nothing else speaks for it: then it must be in sight, or it may be a trap of another width */
    private Optional<Explanation> allRound(WholeFilm film, Region painted, Region target, boolean isAlone) {
        if (painted.isEmpty()) {
            return Optional.empty();
        }
        return AllRound.of(painted, target, intent.frame())
                .filter(round -> round.misfitMm() < BETTER * misfit(painted, target))
                .filter(round -> !isAlone || round.offsetMm() < 0 || reachesOutInSight(painted, target, film.pull()))
                .map(round -> new Explanation(
                        film.allRound(
                                round.offsetMm(),
                                film.film()
                                        .withPicture(AsPlanned.carriedOver(
                                                painted,
                                                round.expected(),
                                                intent.planned().get(film.pull()),
                                                intent.frame(),
                                                4 * round.offsetMm() * round.offsetMm()))),
                        round.misfitMm()));
    }

    /** A film that is spread, but beneath others alone: its rim is too wide, and it is no larger disc. */
    private Optional<Explanation> rim(Lying film, Region target) {
        return allRound(film.film(), film.painted(), target, false)
                .map(spread -> new Explanation(film.film(), spread.misfitMm()));
    }

    /** Whether a tenth of what lies outside of it is to be seen, be it on bare sheet or over others; what is planned is no spread. */
    private boolean reachesOutInSight(Region painted, Region target, int pull) {
        CoverMap laid = CoverMap.of(
                intent.frame(), List.of(painted, target, intent.planned().get(pull), intent.nearer(pull)));
        double rim = 0;
        double inSight = 0;
        for (int number = 0; number < laid.count(); number++) {
            BitSet cover = laid.cover(number);
            if (cover.get(0) && !cover.get(1) && !cover.get(2)) {
                rim += laid.areaMm2(number);
                inSight += cover.get(3) ? 0 : laid.areaMm2(number);
            }
        }
        return inSight > rim / 10;
    }

    /** All that lies around the picture in the film's place, be it in the picture's frame now. */
    private Region around(Film film, Affine place) {
        Region all = Region.union(List.of(place.of(film.around()), place.of(film.picture())));
        return all.minus(inverse(Region.EMPTY));
    }

    /** In the film's place; what lies around the picture may have stayed where it was. */
    private Film placed(Film film, Affine place, Region target) {
        Region around = around(film, place);
        List<Stain> stains = film.stains().stream()
                .map(stain -> new Stain(stain.shade(), within(place.of(stain.region()))))
                .toList();
        Film alone = new Film(film.file(), film.page(), within(place.of(film.picture())), around, stains);
        Film together = alone.withPicture(within(place.of(Region.union(List.of(film.picture(), film.around())))));
        return misfit(WholeFilm.painted(together), target) <= misfit(WholeFilm.painted(alone), target)
                ? together
                : alone;
    }

    /** How it may have been meant to lie; the first is as it does. */
    private List<Affine> places(Region painted, Region all, Region own) {
        Frame frame = intent.frame();
        List<Affine> places = new ArrayList<>();
        places.add(Affine.NONE);
        places.add(new Affine(-1, 0, 0, 1, frame.x() + frame.right(), 0));
        for (UnitSlip slip : UnitSlip.all()) {
            double back = 1 / slip.times();
            places.add(new Affine(back, 0, 0, back, 0, 0));
            places.add(new Affine(back, 0, 0, back, frame.x() * (1 - back), frame.y() * (1 - back)));
        }
        Frame to = own.bounds().orElseThrow();
        for (Region part : painted.isEmpty() ? List.of(all) : List.of(all, painted)) {
            Frame from = part.bounds().orElseThrow();
            for (boolean mirrored : new boolean[] {false, true}) {
                Alignment.frames(from, to, mirrored).ifPresent(places::add);
            }
            for (Affine turning : QUARTERS) {
                for (boolean mirrored : new boolean[] {false, true}) {
                    Alignment.frames(turning.of(from), to, mirrored)
                            .map(turning::then)
                            .ifPresent(places::add);
                }
            }
        }
        places.addAll(byParts(all, own));
        return places;
    }

    /** The largest parts brought onto parts of the same form: wherever a film lies, and whatever lies around it. */
    private static List<Affine> byParts(Region all, Region own) {
        List<Affine> places = new ArrayList<>();
        List<Region> parts = largest(all, FILM_PARTS);
        for (Region target : largest(own, PLANNED_PARTS)) {
            Frame to = target.bounds().orElseThrow();
            double filled = target.areaMm2() / (to.width() * to.height());
            for (Region part : parts) {
                Frame bounds = part.bounds().orElseThrow();
                if (Math.abs(part.areaMm2() / (bounds.width() * bounds.height()) - filled) > ONE_FORM * filled) {
                    continue;
                }
                for (Affine turn : TURNS) {
                    Frame from = turn.of(bounds);
                    for (boolean mirrored : new boolean[] {false, true}) {
                        Alignment.frames(from, to, mirrored).map(turn::then).ifPresent(places::add);
                    }
                }
            }
        }
        return places;
    }

    private static List<Region> largest(Region region, int count) {
        return region.polygons().stream()
                .map(Region::of)
                .sorted(Comparator.comparingDouble(part -> -part.areaMm2()))
                .limit(count)
                .toList();
    }

    /** What to call it. */
    private static Fault fault(Affine place, Region own) {
        Frame bounds = own.bounds().orElseThrow();
        double extent = Math.max(bounds.width(), bounds.height());
        if (place.isMirrored()) {
            return Fault.MIRRORED;
        }
        // How far right angles and equal sides are from that.
        double across = Math.hypot(place.xx() - place.yy(), place.xy() + place.yx());
        if (across * extent > RIGHT_MM) {
            return Fault.STRETCHED;
        }
        if (Math.abs(1 / place.scale() - 1) * extent > RIGHT_MM) {
            return Fault.SIZE;
        }
        return Math.abs(Math.atan2(place.yx(), place.xx())) * extent > RIGHT_MM ? Fault.TURNED : Fault.PLACE;
    }

    private boolean isMeantFor(Region painted, int pull, double misfit) {
        Region planned = intent.planned().get(pull);
        Region drawn = intent.drawn().get(pull);
        if (planned.isEmpty() || drawn.isEmpty()) {
            return false;
        }
        double least = Math.min(misfit(painted, planned), misfit(painted, drawn));
        return fits(least, planned, misfit);
    }

    /** Far better than as it is meant, and far better than an empty film would. */
    private static boolean fits(double left, Region target, double misfit) {
        double empty = target.areaMm2() / target.perimeterMm();
        return left < Math.min(ANOTHERS_MM, MUCH_BETTER * Math.min(misfit, empty));
    }

    private double misfit(Region film, Region planned) {
        return Fit.misfitMm(film, planned, intent.frame());
    }

    private Alignment alignment(Region target) {
        return alignments.computeIfAbsent(target, Alignment::new);
    }

    /** The frame without it. */
    private Region inverse(Region picture) {
        return CoverMap.of(intent.frame(), List.of(picture)).where(BitSet::isEmpty);
    }

    private Region within(Region all) {
        return CoverMap.of(intent.frame(), List.of(all)).where(cover -> !cover.isEmpty());
    }

    /** How far the corner that is off most has to move. */
    private static double offMm(Affine place, Region own) {
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
}
