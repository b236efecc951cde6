package inkstrata.check;

import inkstrata.check.Laid.Alike;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.plan.Overlap;
import inkstrata.planar.Corners;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Separation;
import inkstrata.separation.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * Places where films in register would not show the artwork: ink that is missing, ink on bare sheet, over or beneath another, rims
 * that are too wide.
 *
 * <p>Each piece in which a film differs from its plan is one finding, by the worst that it does; what a film does to the colour is asked of that
 * film alone, the others taken as planned.
 */
final class Appearance {
    /** Of one kind and film so many places are named each; more are told together. */
    private static final int MOST_PLACES = 5;

    /** Farther from its own area than so many registers, in the plan's terms, ink is no rim. */
    private static final double RIM_IN_REGISTERS = 3;

    /** A rim no wider than the register, but for this, may be as short as it likes: it is a trap. */
    private static final double TRAP_IN_REGISTERS = 1.05;

    /** A disc that fits into a rim no broader than that many registers, at a right angle of it: there it is 1.17 times as broad. */
    private static final double BROAD_IN_REGISTERS = TRAP_IN_REGISTERS * 1.17;

    /** A wider one is so many times as long as wide. */
    private static final double RIM_LENGTH = 3;

    /** So near to its own area, in millimetres, a rim begins there. */
    private static final double TOUCHING_MM = 0.02;

    private static final int RIM_POINTS = 300;

    /** A film that prints so much of what it is to leave out prints all of it. */
    private static final double ALL = 0.97;

    private static final double MOST = 0.9;

    /** A film that lacks so much of what it is to print lost a part, and not this place and that. */
    private static final double LOST_PART = 0.25;

    private static final double LEAST_COAT_MM2 = 1;

    private final Separation planned;
    private final Intent intent;
    private final List<Region> films;
    private final List<String> files;
    private final Laid laid;
    private final double registerMm;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Region> mended;

    /**
     * Looks at them.
     *
     * @param films what each prints once what is wrong with it as a whole is mended, by position
     * @param files their names; empty where there is none
     */
    Appearance(Separation planned, Intent intent, List<Region> films, List<String> files, double registerMm) {
        this.planned = planned;
        this.intent = intent;
        this.files = files;
        this.registerMm = registerMm;
        this.films = new ArrayList<>(films);
        for (int film = 0; film < films.size(); film++) {
            if (!films.get(film).equals(intent.planned().get(film))) {
                this.films.set(film, movedBack(film));
            }
        }
        this.laid = Laid.of(planned, intent, this.films);
        this.mended = new ArrayList<>(this.films);
        for (int film = 0; film < films.size(); film++) {
            if (!this.films.get(film).equals(intent.planned().get(film))) {
                look(film);
            }
        }
    }

    /** By film: what it prints too much, then what it lacks. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** What films would print were it not for what was found here but lost overprints, by position; slits that nobody can print are closed. */
    List<Region> mended() {
        return List.copyOf(mended);
    }

    /** With parts that slid where the rest of the film is; they are said. */
    private Region movedBack(int film) {
        Optional<MovedParts> moved = MovedParts.of(
                films.get(film),
                List.of(intent.planned().get(film), intent.drawn().get(film)),
                intent.frame());
        moved.ifPresent(parts -> parts.parts().forEach(part -> findings.add(part.finding(file(film), subject(film)))));
        return moved.map(MovedParts::mended).orElse(films.get(film));
    }

    private void look(int film) {
        List<Alike> more = laid.more(film);
        List<Alike> less = laid.less(film);
        if (isUnlike(film, more, less)) {
            findings.add(unlike(film, more, less));
            mended.set(film, intent.planned().get(film));
            return;
        }
        Region tooMuch = laid.where(more);
        Region tooLittle = laid.where(less);
        List<Region> told = new ArrayList<>(extra(film, more));
        List<Region> lacking = new ArrayList<>(missing(film, less, tooLittle));
        Region extraAll = Pieces.holding(tooMuch, told, intent.frame());
        Region lackingAll = Pieces.holding(tooLittle, lacking, intent.frame());
        Region slits = slits(film, less, tooLittle);
        mended.set(
                film,
                CoverMap.of(intent.frame(), List.of(films.get(film), lackingAll, slits, extraAll))
                        .where(cover -> (cover.get(0) && !cover.get(3)) || cover.get(1) || cover.get(2)));
    }

    /** What is lost but too thin for any mesh: where nothing keeps the sheet from showing, and slits with ink on both sides. No ink is missing there. */
    private Region slits(int film, List<Alike> less, Region tooLittle) {
        Region thin = thin(tooLittle);
        Region bare = thin(laid.where(laid.bare(less)));
        if (thin.isEmpty() && bare.isEmpty()) {
            return Region.EMPTY;
        }
        Region closed = films.get(film).grown(Laid.THIN_MM / 2, Corners.ROUND).shrunk(Laid.THIN_MM / 2);
        return CoverMap.of(intent.frame(), List.of(thin, closed, bare))
                .where(cover -> cover.get(2) || (cover.get(0) && cover.get(1)));
    }

    private static Region thin(Region region) {
        return Region.of(
                polygons(region).stream().filter(piece -> !Pieces.isWide(piece)).toList());
    }

    private static List<Region> polygons(Region region) {
        return region.polygons().stream().map(Region::of).toList();
    }

    /** Whether film and plan have little in common. */
    private boolean isUnlike(int film, List<Alike> more, List<Alike> less) {
        double own = intent.planned().get(film).areaMm2();
        return laid.areaMm2(more) > own / 2 && laid.areaMm2(less) > own / 2;
    }

    private Finding unlike(int film, List<Alike> more, List<Alike> less) {
        Region own = intent.planned().get(film);
        double lacks = laid.areaMm2(less);
        List<Alike> all = new ArrayList<>(more);
        all.addAll(less);
        Region wrong = laid.where(all);
        return new Finding(
                        Severity.ERROR,
                        "unlike film",
                        wrong.somewhere(),
                        String.format(
                                Locale.ROOT,
                                "%s is another picture: %.0f %% of what it is to print is not on it, and %.2f mm² are that it is not to print",
                                file(film),
                                100 * lacks / own.areaMm2(),
                                laid.areaMm2(more)),
                        "what " + name(film) + " is to print",
                        "Look whether it is the film of another drawing, of an older one, or wrong in more ways than one.")
                .about(subject(film))
                .withQuantity(Quantity.of(lacks, 0, Unit.SQUARE_MILLIMETRES))
                .withArea(wrong);
    }

    private List<Region> extra(int film, List<Alike> more) {
        double all = laid.areaMm2(more);
        List<Alike> left = new ArrayList<>(more);
        if (all > ALL * laid.leftOutMm2(film) && all > LEAST_COAT_MM2) {
            Region area = laid.where(more);
            findings.add(finding(
                    film,
                    new Part(
                            Optional.of(Severity.ERROR),
                            "solid film",
                            file(film) + " prints everywhere",
                            "what " + name(film) + " is to print",
                            "Look for a background or a frame without a hole, and take it out."),
                    area.somewhere(),
                    area));
            return List.of(area);
        }
        List<Region> told = new ArrayList<>();
        for (int shown = 0; shown < films.size(); shown++) {
            coat(film, shown, left, all).ifPresent(told::add);
        }
        Region difference = laid.where(left);
        List<Region> pieces = Pieces.of(difference, intent.frame());
        NearOutlines own =
                new NearOutlines(List.of(intent.drawn().get(film)), Math.max(farthestRim(), Grid.STEPS_PER_MM));
        List<Map<Part, List<Alike>>> parts = new ArrayList<>();
        for (Region piece : pieces) {
            Rim rim = rim(film, piece, own);
            parts.add(grouped(left, alike -> extra(film, alike, rim)));
        }
        told.addAll(tell(film, pieces, parts, false));
        return told;
    }

    /** All of another ink's film printed as well, or all that the artwork shows of it. */
    private Optional<Region> coat(int film, int shown, List<Alike> left, double all) {
        if (shown == film) {
            return Optional.empty();
        }
        List<Alike> coat =
                left.stream().filter(alike -> laid.isPlanned(alike, shown)).toList();
        if (!isCoat(coat, all, laid.leftOutOfFilmMm2(film, shown))) {
            coat = left.stream()
                    .filter(alike -> alike.shown().equals(OptionalInt.of(shown)))
                    .toList();
            if (!isCoat(coat, all, laid.leftOutMm2(film, shown))) {
                return Optional.empty();
            }
        }
        double change = coat.stream()
                .max(Comparator.comparingDouble(alike -> laid.areaMm2(List.of(alike))))
                .orElseThrow()
                .change();
        Part part = extra(film, shown, change);
        Region region = laid.where(coat);
        if (!Pieces.isWide(region)) {
            return Optional.empty();
        }
        findings.add(finding(
                film,
                new Part(
                        part.severity(),
                        part.rule(),
                        name(film) + " prints all of what " + name(shown) + " is to show, "
                                + (planned.isNearer(film, shown)
                                        ? "and covers it"
                                        : String.format(
                                                Locale.ROOT,
                                                "beneath it, and changes its colour by about %.1f",
                                                change)),
                        part.limit(),
                        "Knock it out of the film."),
                region.somewhere(),
                region));
        left.removeAll(coat);
        return Optional.of(region);
    }

    /** Whether places are nearly all that a film prints too much, and nearly all of what they are part of. */
    private boolean isCoat(List<Alike> coat, double all, double whole) {
        double area = laid.areaMm2(coat);
        return area > LEAST_COAT_MM2 && area > ALL * whole && area > MOST * all;
    }

    private Part extra(int film, Alike alike, Rim rim) {
        if (alike.shown().isEmpty()) {
            return Part.onSheet(name(film));
        }
        int shown = alike.shown().getAsInt();
        boolean isHidden = !planned.isNearer(film, shown) && alike.change() <= Overlap.TOLERANCE;
        return (rim.isLong() && (isHidden || !rim.isBroad())) || (rim.isAttached() && isHidden)
                ? Part.wideRim(name(film), name(shown), rim.reachMm())
                : extra(film, shown, alike.change());
    }

    private Part extra(int film, int shown, double change) {
        return planned.isNearer(film, shown)
                ? Part.over(name(film), name(shown))
                : Part.beneath(name(film), name(shown), change, Overlap.TOLERANCE);
    }

    private List<Region> missing(int film, List<Alike> less, Region difference) {
        List<Region> pieces = new ArrayList<>(Pieces.of(difference, intent.frame()));
        Map<Part, List<Alike>> parts = grouped(less, alike -> missing(film, alike));
        List<Region> told = new ArrayList<>();
        for (Cut cut : Cut.of(
                films.get(film), intent.planned().get(film), intent.drawn().get(film))) {
            List<Region> beyond = pieces.stream().filter(cut::isBeyond).toList();
            if (!beyond.isEmpty()) {
                Region area = Region.of(beyond);
                pieces.removeAll(beyond);
                // With what is too thin to be told: it was cut off as well.
                told.addAll(polygons(difference).stream().filter(cut::isBeyond).toList());
                told.addAll(beyond);
                findings.add(finding(
                        film,
                        new Part(
                                Optional.of(Severity.ERROR),
                                "cut film",
                                file(film) + " is cut off: nothing prints " + cut.words(),
                                "all of the picture",
                                "Look at the page's size and at clips when the film is saved, and output all of it."),
                        area.somewhere(),
                        area));
            }
        }
        double lacking = pieces.stream().mapToDouble(Region::areaMm2).sum();
        boolean isAPart = lacking > LOST_PART * intent.planned().get(film).areaMm2();
        List<Region> errors =
                tell(film, pieces, pieces.stream().map(piece -> parts).toList(), isAPart);
        told.addAll(isAPart && !errors.isEmpty() ? polygons(difference) : errors);
        return told;
    }

    /** Whether a piece is a part of the plan of which nothing is left, but for what is too thin to matter. */
    private boolean isIsland(int film, Region piece) {
        Place place = piece.somewhere();
        return intent.planned().get(film).polygons().stream()
                .map(Region::of)
                .filter(part -> part.covers(place))
                .map(part -> CoverMap.of(intent.frame(), List.of(part, films.get(film))))
                .map(laidOver -> laidOver.where(cover -> cover.cardinality() == 2))
                .anyMatch(left -> !Pieces.isWide(left));
    }

    private Part missing(int film, Alike alike) {
        if (alike.shown().equals(OptionalInt.of(film))) {
            return Part.missing(name(film));
        }
        if (!alike.isOwn() || alike.shown().isEmpty()) {
            return Part.lostTrap();
        }
        String shown = name(alike.shown().getAsInt());
        return alike.change() > Overlap.TOLERANCE
                ? Part.missingBeneath(name(film), shown, alike.change(), Overlap.TOLERANCE)
                : Part.lostOverprint(name(film), shown);
    }

    private static Map<Part, List<Alike>> grouped(List<Alike> alike, Function<Alike, Part> part) {
        Map<Part, List<Alike>> grouped = new LinkedHashMap<>();
        alike.forEach(one -> grouped.computeIfAbsent(part.apply(one), key -> new ArrayList<>())
                .add(one));
        return grouped;
    }

    /**
     * One of the pieces, and what is wrong there.
     *
     * @param where the part of the piece where that is so
     */
    private record Told(Region piece, Part part, Region where) {
        boolean isMended() {
            return part.severity().isPresent() && !part.rule().equals(Part.LOST_OVERPRINT);
        }

        boolean isError() {
            return part.severity().equals(Optional.of(Severity.ERROR));
        }
    }

    /**
     * Says what is wrong with pieces, and which of them are mended for the question how far films hold: rims hold nothing back, but a lost overprint does,
     * and is left as it is.
     *
     * @param areOne whether all of them are lost by one cause: then errors are told together, and nothing else of the pieces
     */
    private List<Region> tell(int film, List<Region> pieces, List<Map<Part, List<Alike>>> parts, boolean areOne) {
        Map<String, List<Told>> byRule = new LinkedHashMap<>();
        List<Region> told = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Told worst = grounded(film, worst(pieces.get(i), parts.get(i)));
            if (worst.part().severity().isPresent()) {
                byRule.computeIfAbsent(
                                worst.part().severity().get() + worst.part().rule(), key -> new ArrayList<>())
                        .add(worst);
            }
            if (worst.isMended()) {
                told.add(worst.piece());
            }
        }
        if (areOne && !told.isEmpty()) {
            byRule.values().removeIf(alike -> !alike.get(0).isError());
        }
        for (List<Told> alike : byRule.values()) {
            boolean areIslands = alike.get(0).part().rule().equals("missing ink")
                    && alike.stream().allMatch(one -> isIsland(film, one.piece()));
            if (alike.size() == 1 || (alike.size() <= MOST_PLACES && !areIslands && !areOne)) {
                alike.forEach(one ->
                        findings.add(finding(film, one.part(), one.where().somewhere(), one.piece())));
            } else {
                findings.add(together(film, alike));
            }
        }
        return told;
    }

    /** The worst that is wrong on a part of the piece that is wide enough to matter; on its largest part if none is. */
    private Told worst(Region piece, Map<Part, List<Alike>> parts) {
        List<Told> all = new ArrayList<>();
        for (Map.Entry<Part, List<Alike>> part : parts.entrySet()) {
            Region where = CoverMap.of(intent.frame(), List.of(piece, laid.where(part.getValue())))
                    .where(cover -> cover.cardinality() == 2);
            if (!where.isEmpty()) {
                all.add(new Told(piece, part.getKey(), where));
            }
        }
        Comparator<Told> bySize =
                Comparator.comparingDouble(told -> told.where().areaMm2());
        return all.stream()
                .filter(told -> Pieces.isWide(told.where()))
                .max(Comparator.comparingInt((Told told) ->
                                told.part().severity().map(Severity::ordinal).orElse(-1))
                        .thenComparing(bySize))
                .or(() -> all.stream().max(bySize))
                .orElseThrow();
    }

    /** A ground that is knocked out so near to where it is needed that it is missing there as soon as what covers the place is off. */
    private Told grounded(int film, Told told) {
        if (!told.part().rule().equals(Part.LOST_OVERPRINT) || !planned.isOnlyGround(film)) {
            return told;
        }
        Region needed = laid.where(laid.needed(film));
        return !needed.isEmpty() && told.where().distanceMm(needed) < registerMm
                ? new Told(told.piece(), told.part().asLostGround(), told.where())
                : told;
    }

    private Finding together(int film, List<Told> alike) {
        Told largest = alike.get(0);
        Region area = Region.of(alike.stream().map(Told::piece).toList());
        Part part = largest.part();
        Finding first = finding(film, part, largest.where().somewhere(), area);
        return new Finding(
                        first.severity(),
                        first.rule(),
                        first.place(),
                        String.format(
                                Locale.ROOT,
                                "%s (%.2f mm²), and in %d more places (%.2f mm² in all)",
                                part.words(),
                                largest.piece().areaMm2(),
                                alike.size() - 1,
                                area.areaMm2()),
                        first.limit(),
                        first.remedy().replace("the place ", "the places "))
                .about(first.subject())
                .withQuantity(first.quantity().orElseThrow())
                .withArea(area);
    }

    private Finding finding(int film, Part part, Place place, Region area) {
        return new Finding(
                        part.severity().orElseThrow(),
                        part.rule(),
                        place,
                        String.format(Locale.ROOT, "%s (%.2f mm²)", part.words(), area.areaMm2()),
                        part.limit(),
                        part.remedy())
                .about(subject(film))
                .withQuantity(Quantity.of(area.areaMm2(), 0, Unit.SQUARE_MILLIMETRES))
                .withArea(area);
    }

    /**
     * How a piece lies along the film's own area.
     *
     * @param reachMm how far it reaches
     * @param isAttached whether it begins there and reaches no farther than a rim
     * @param isLong whether it lies along it like a trap, too
     * @param isBroad whether it is broader than a trap: no trap, if it is seen
     */
    private record Rim(double reachMm, boolean isAttached, boolean isLong, boolean isBroad) {}

    private Rim rim(int film, Region piece, NearOutlines own) {
        double reach = reachMm(piece, own);
        if (reach >= RIM_IN_REGISTERS * registerMm || intent.planned().get(film).isEmpty()) {
            return new Rim(reach, false, false, true);
        }
        NearOutlines outlines = new NearOutlines(List.of(intent.planned().get(film)), Grid.STEPS_PER_MM / 4.0);
        List<OutlinePoints.Point> points = OutlinePoints.of(piece, RIM_POINTS);
        long touching = points.stream()
                .filter(point -> outlines.nearest(point.spot(), TOUCHING_MM * Grid.STEPS_PER_MM)
                        .isPresent())
                .count();
        double contact = piece.perimeterMm() * touching / Math.max(1, points.size());
        boolean isAttached = contact > TOUCHING_MM;
        boolean isLong = isAttached
                && (reach <= TRAP_IN_REGISTERS * registerMm || contact >= RIM_LENGTH * piece.areaMm2() / contact);
        boolean isBroad = !piece.shrunk(BROAD_IN_REGISTERS * registerMm / 2).isEmpty();
        return new Rim(reach, isAttached, isLong, isBroad);
    }

    /** How far the piece's farthest corner is from the pull's own area; the most a rim may have if it is farther. */
    private double reachMm(Region piece, NearOutlines own) {
        double farthest = 0;
        for (Ring ring : NearOutlines.rings(piece)) {
            for (int i = 0; i < ring.size(); i++) {
                Spot spot = new Spot(ring.x(i), ring.y(i));
                double away =
                        own.nearest(spot, farthestRim()).map(spot::distanceTo).orElse(farthestRim());
                farthest = Math.max(farthest, away);
            }
        }
        return farthest * Grid.STEP_MM;
    }

    /** In grid steps. */
    private double farthestRim() {
        return RIM_IN_REGISTERS * registerMm * Grid.STEPS_PER_MM;
    }

    private String name(int pull) {
        return intent.inks().get(pull);
    }

    private String file(int pull) {
        return files.get(pull).isEmpty() ? "the film of " + name(pull) : files.get(pull);
    }

    private Subject subject(int pull) {
        return Subject.ink(name(pull)).withPull(pull).withFile(files.get(pull));
    }
}
