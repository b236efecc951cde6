package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.film.Film;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.plan.Ink;
import inkstrata.plan.Prediction;
import inkstrata.plan.Pull;
import inkstrata.planar.Corners;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import inkstrata.planar.RegionExample;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Films of every kind of set, spoilt in every kind of place: what changes the print is an error, and what is called no error changes nothing.
 *
 * <p>What a print looks like is predicted here from the films alone, pile by pile; how far they hold is asked of them as if they had been planned so.
 */
class HostileFilmsTest {
    /** Differences of predicted colours (CIEDE2000) up to 2 pass for equal; a little more is asked for, so that rounding decides nothing. */
    private static final double SEEN = 2.1;

    private static final double NEAR_MM = 1;

    /** Another program's traps may be seen, and are a warning; not what holds a disc of that radius, in registers: a little more than half of one, for corners. */
    private static final double TRAP = 0.625;

    /** How far films may seem to hold less, in millimetres, by what is too thin to be said. */
    private static final double HOLDS_MM = 0.01;

    private static final String DRAWING = """
            <svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">
            <rect width="60" height="60" fill="%s"/>
            <g id="low"><rect x="4" y="30" width="52" height="26" fill="#7d8f4a"/></g>
            <g id="sail"><path d="M8 34L26 6L44 34z" fill="#b4512d"/><circle cx="50" cy="10" r="5" fill="#b4512d"/></g>
            <g id="hull"><path d="M6 34H50L44 50H14z" fill="#1d2440"/><rect x="10" y="53" width="30" height="1.5" fill="#1d2440"/></g>
            <g id="moon"><circle cx="26" cy="28" r="6" fill="#e39a9a"/><circle cx="12" cy="10" r="4" fill="#e39a9a"/></g>
            <g id="light"><rect x="20" y="40" width="5" height="4" fill="#f2dc8c"/><rect x="46" y="42" width="8" height="8" fill="#f2dc8c"/></g>
            </svg>
            """;

    private static final String INKS = """
            register: 0.4 mm
            inks:
              - {name: straw, prints: "#f2dc8c", hiding: %1$s%2$s}
              - {name: rose,  prints: "#e39a9a", hiding: %1$s%3$s}
              - {name: moss,  prints: "#7d8f4a", hiding: %1$s}
              - {name: rust,  prints: "#b4512d", hiding: %1$s}
              - {name: night, prints: "#1d2440", hiding: 0.97%4$s}
            """;

    /** Kinds of sets. */
    @SuppressWarnings("ImmutableEnumChecker")
    enum Kind {
        KNOCKED_OUT("#ffffff", inks("0.9", "", "", "")),
        RUNNING_ON("#f2dc8c", inks("0.5", "", "", ", key: true")),
        COVERED_BY_THE_FIRST("#f2dc8c", inks("0.05", "", "", "")),
        DARK_SHEET(
                "#20222c",
                "sheet: {size: 80 x 80 mm, colour: \"#20222c\"}\n" + inks("0.8", "", "", "")
                        + "use: {underbase: {enabled: true, choke: 0.3 mm}}\n"),
        BEHIND(
                "#ffffff",
                "sheet: {size: 80 x 80 mm, colour: \"#ffffff\", print: back, hiding: 0}\n" + inks("0.9", "", "", "")),
        BOTH_SIDES(
                "#ffffff",
                "sheet: {size: 80 x 80 mm, colour: \"#ffffff\", hiding: 0.3}\n"
                        + inks("0.9", "", ", from: \"#moon\", side: back", "")),
        STEPS("#ffffff", inks("0.9", "", "", "") + "use: {reduction: {enabled: true}}\n"),
        STEPS_THAT_KEEP("#ffffff", inks("0.9", "", "", "") + "use: {reduction: {enabled: true, keep: \"#moon\"}}\n"),
        OF_THEIR_OWN("#ffffff", inks("0.1", ", from: \"#light\"", ", from: \"#moon\"", "")),
        FEWEST("#ffffff", inks("0.2", "", "", "") + "use: {overprint: {build: true, tolerance: 6}}\n");

        private final Job job;
        private final String ground;

        Kind(String ground, String job) {
            this.ground = ground;
            this.job = JobReader.read("job.yaml", job);
        }

        private static String inks(String hiding, String straw, String rose, String night) {
            return INKS.formatted(hiding, straw, rose, night);
        }

        private Separation separated() throws IOException {
            byte[] svg = DRAWING.formatted(ground).getBytes(StandardCharsets.UTF_8);
            return new Separator(Press.plugins())
                    .separate(SvgReader.read("boat.svg", new ByteArrayInputStream(svg), ReadOptions.DEFAULT), job);
        }
    }

    @Test
    void noWrongSetOfInksThatRunOnPasses(TestReporter reporter) throws IOException {
        attack(Kind.COVERED_BY_THE_FIRST, 3, reporter);
    }

    @Tag("long")
    @ParameterizedTest
    @EnumSource(Kind.class)
    void noWrongSetPasses(Kind kind, TestReporter reporter) throws IOException {
        attack(kind, Integer.MAX_VALUE, reporter);
    }

    private static void attack(Kind kind, int most, TestReporter reporter) throws IOException {
        Shop shop = new Shop(kind.separated(), kind.job);
        List<String> faults = new ArrayList<>();
        int spoilt = 0;
        int wrong = 0;
        for (int pull = 0; pull < shop.count(); pull++) {
            List<Spoilt> all = shop.spoilt(pull);
            for (int i = 0; i < all.size(); i += Math.max(1, all.size() / most)) {
                Spoilt one = all.get(i);
                spoilt++;
                Optional<Region> seen = shop.seen(one.films());
                Inspection found = shop.compared(one.films());
                boolean isError = found.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR);
                boolean isTrap = (!one.isAllRound() || shop.isBeneathOthers(one.films(), pull))
                        && found.findings().stream().anyMatch(f -> f.rule().equals("wide rim"))
                        && seen.map(region -> region.shrunk(shop.job.registerMm() * TRAP))
                                .orElse(Region.EMPTY)
                                .isEmpty();
                boolean isThere = found.findings().stream()
                        .anyMatch(f -> f.severity() == Severity.ERROR
                                && (one.at().isEmpty()
                                        || distance(f.place(), one.at().get()) < NEAR_MM));
                double held = shop.heldMm(one.films());
                wrong += seen.isPresent() || held < shop.plannedMm - HOLDS_MM ? 1 : 0;
                if (seen.isPresent() && !isThere && !isTrap) {
                    faults.add(kind + " " + one.name() + ": seen at "
                            + seen.get().somewhere() + " of " + one.at() + " but " + said(found));
                }
                if (!isError && held < shop.plannedMm - HOLDS_MM) {
                    faults.add(kind + " " + one.name() + ": holds " + held + " mm, not " + shop.plannedMm + ", but "
                            + said(found));
                }
            }
        }
        reporter.publishEntry(kind + ": " + spoilt + " sets spoilt, " + wrong + " of them wrong");
        assertThat(faults).isEmpty();
        assertThat(wrong).isPositive();
    }

    private static double distance(Place one, Place other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }

    private static String said(Inspection found) {
        return found.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .map(finding ->
                        finding.severity() + " " + finding.rule() + " " + finding.place() + " " + finding.measured())
                .toList()
                .toString();
    }

    /**
     * Films of which one was spoilt.
     *
     * @param at where, if it is one place
     */
    private record Spoilt(String name, List<Region> films, Optional<Place> at) {
        boolean isAllRound() {
            return name.contains(" by 0.2 mm");
        }
    }

    /** A set and its plan. */
    private static final class Shop {
        private final Separation planned;
        private final Job job;
        private final Separator separator = new Separator(Press.plugins());
        private final Prediction prediction;
        private final List<Integer> farthestFirst;
        private final double plannedMm;

        Shop(Separation planned, Job job) {
            this.planned = planned;
            this.job = job;
            this.prediction = new Prediction(planned.table().sheet());
            this.farthestFirst =
                    planned.table().sheet().farthestFirst(planned.plan().pulls());
            this.plannedMm = heldMm(planned.printed());
        }

        int count() {
            return planned.printed().size();
        }

        Inspection compared(List<Region> films) {
            List<Optional<Film>> read = new ArrayList<>();
            for (int pull = 0; pull < films.size(); pull++) {
                read.add(Optional.of(
                        new Film("film" + (pull + 1) + ".svg", frame(), films.get(pull), Region.EMPTY, List.of())));
            }
            return separator.compare(planned, read, job);
        }

        /** As if they had been planned so; no more than is asked. */
        double heldMm(List<Region> films) {
            return Math.min(
                    job.registerMm(),
                    separator.inspect(planned.withPrinted(films), job).verdict().stream()
                            .flatMapToDouble(verdict -> verdict.heldMm().stream())
                            .findFirst()
                            .orElse(job.registerMm()));
        }

        private Frame frame() {
            return planned.artwork().frame();
        }

        /** Where the print would look otherwise than planned, and otherwise than without traps, and more than a speck of 0.2 mm of it. */
        Optional<Region> seen(List<Region> films) {
            List<Region> all = new ArrayList<>(films);
            all.addAll(planned.printed());
            planned.plan().pulls().forEach(pull -> all.add(planned.map().dissolve(pull.prints())));
            Region seen = CoverMap.of(frame(), all)
                    .where(cover -> isMoreThanALostRim(cover) && isSeen(cover, count()) && isSeen(cover, 2 * count()));
            return Optional.of(seen.shrunk(0.1)).filter(region -> !region.isEmpty());
        }

        /** Rims that are lost leave the drawing's own colours, but for other rims; it counts how far films hold then. */
        private boolean isMoreThanALostRim(BitSet cover) {
            return IntStream.range(0, count())
                    .anyMatch(pull -> cover.get(pull) != cover.get(count() + pull)
                            && (cover.get(pull) || cover.get(2 * count() + pull)));
        }

        private boolean isSeen(BitSet cover, int meant) {
            return prediction.difference(inks(cover.get(0, count())), inks(cover.get(meant, meant + count()))) > SEEN;
        }

        /** Whether nearly all that a film prints too much lies beneath others, as traps do. */
        boolean isBeneathOthers(List<Region> films, int pull) {
            Region more = films.get(pull).minus(planned.printed().get(pull));
            Region nearer = Region.union(IntStream.range(0, count())
                    .filter(other -> other != pull && planned.isNearer(other, pull))
                    .mapToObj(other -> planned.map()
                            .dissolve(planned.plan().pulls().get(other).prints()))
                    .toList());
            return more.minus(nearer).areaMm2() < more.areaMm2() / 10;
        }

        private List<Ink> inks(BitSet pulls) {
            return farthestFirst.stream()
                    .filter(pulls::get)
                    .map(pull -> planned.plan().pulls().get(pull))
                    .map(Pull::ink)
                    .toList();
        }

        List<Spoilt> spoilt(int pull) {
            List<Spoilt> all = new ArrayList<>();
            Region own = planned.printed().get(pull);
            String name = "film " + (pull + 1) + " ("
                    + planned.plan().pulls().get(pull).ink().name() + ") ";
            CoverMap laid = CoverMap.of(frame(), planned.printed());
            for (int number = 0; number < laid.count(); number++) {
                Region alike = laid.where(single(number));
                if (alike.shrunk(0.03).isEmpty()) {
                    continue; // Too thin for any mesh.
                }
                BitSet cover = laid.cover(number);
                inside(alike).ifPresent(place -> {
                    Region speck = box(place, 0.5, 0.5);
                    Region changed = cover.get(pull) ? own.minus(speck) : own.union(speck);
                    all.add(with(
                            name + (cover.get(pull) ? "a hole in " : "a speck on ") + cover,
                            pull,
                            changed,
                            Optional.of(place)));
                    if (cover.get(pull)) {
                        all.add(with(
                                name + "a slit of 1 µm in " + cover,
                                pull,
                                own.minus(box(place, 1, 0.001)),
                                Optional.empty()));
                    }
                });
                if (cover.get(pull)) {
                    all.add(with(name + "cut out of all of " + cover, pull, own.minus(alike), Optional.empty()));
                } else {
                    all.add(with(name + "over all of " + cover, pull, own.union(alike), Optional.empty()));
                }
            }
            if (own.isEmpty()) {
                return all;
            }
            all.add(with(name + "gone", pull, Region.EMPTY, Optional.empty()));
            Frame bounds = own.bounds().orElseThrow();
            Place middle = new Place(bounds.x() + bounds.width() / 2, bounds.y() + bounds.height() / 2);
            Region left = box(new Place(bounds.x(), middle.y()), bounds.width(), 2 * bounds.height());
            Region top = box(new Place(middle.x(), bounds.y()), 2 * bounds.width(), bounds.height());
            all.add(with(name + "right half gone", pull, own.intersection(left), Optional.empty()));
            all.add(with(name + "left half gone", pull, own.minus(left), Optional.empty()));
            all.add(with(name + "upper half gone", pull, own.minus(top), Optional.empty()));
            List<Region> islands = own.polygons().stream()
                    .map(Region::of)
                    .sorted(Comparator.comparingDouble(island -> -island.areaMm2()))
                    .limit(6)
                    .toList();
            for (int i = 0; islands.size() > 1 && i < islands.size(); i++) {
                all.add(with(name + "without island " + i, pull, own.minus(islands.get(i)), Optional.empty()));
                all.add(with(
                        name + "with island " + i + " elsewhere",
                        pull,
                        own.minus(islands.get(i)).union(within(islands.get(i).movedBy(1600, 800))),
                        Optional.empty()));
            }
            all.add(with(name + "moved by 0.2 mm", pull, within(own.movedBy(800, 0)), Optional.empty()));
            all.add(with(name + "choked by 0.2 mm", pull, own.shrunk(0.2), Optional.empty()));
            all.add(with(name + "spread by 0.2 mm", pull, within(own.grown(0.2, Corners.ROUND)), Optional.empty()));
            for (int other = 0; other < count(); other++) {
                if (other != pull) {
                    Region others = planned.printed().get(other);
                    Spoilt copied = with(name + "is film " + (other + 1) + " as well", pull, others, Optional.empty());
                    all.add(copied);
                    List<Region> swapped = new ArrayList<>(copied.films());
                    swapped.set(other, own);
                    all.add(new Spoilt(name + "swapped with film " + (other + 1), swapped, Optional.empty()));
                }
            }
            return all;
        }

        private Spoilt with(String name, int pull, Region picture, Optional<Place> at) {
            List<Region> films = new ArrayList<>(planned.printed());
            films.set(pull, picture);
            return new Spoilt(name, films, at);
        }

        private static BitSet single(int number) {
            BitSet one = new BitSet();
            one.set(number);
            return one;
        }

        private Region within(Region all) {
            return all.intersection(box(
                    new Place(frame().x() + frame().width() / 2, frame().y() + frame().height() / 2),
                    frame().width(),
                    frame().height()));
        }

        private static Optional<Place> inside(Region region) {
            return region.shrunk(0.7).polygons().stream()
                    .map(Region::of)
                    .max(Comparator.comparingDouble(Region::areaMm2))
                    .map(Region::somewhere);
        }

        private static Region box(Place middle, double width, double height) {
            return RegionExample.of(RegionExample.polygon(
                    RegionExample.rectangle(middle.x() - width / 2, middle.y() - height / 2, width, height)));
        }
    }
}
