package inkstrata.overprint;

import static inkstrata.plan.PlanningExample.start;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.colour.Rgb;
import inkstrata.colour.Spectrum;
import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobReader;
import inkstrata.job.PluginSettings;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Size;
import inkstrata.overprint.FewestScreens.Found;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.Paint;
import inkstrata.planar.PaintStack;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Options;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FewestScreensTest {
    private static final Sheet SHEET = new Sheet(new Size(100, 100), Rgb.WHITE, Side.FRONT);
    private static final double TOLERANCE = 2;

    /** That n clear inks make 2^n - 1 colours: common practice, and follows. */
    @Test
    void allOverlapsOfClearInksNeedNoScreensOfTheirOwn() {
        for (int clear = 2; clear <= 4; clear++) {
            for (long seed = 0; seed < 5; seed++) {
                List<Ink> inks = overlaps(clear, new Random(100L * clear + seed));
                PrintPlan plan = built(inks, JobExample.withUse(Job.DEFAULT, use("maxFilms", String.valueOf(clear))));
                assertThat(plan.pulls())
                        .as("%d clear inks, seed %d", clear, seed)
                        .hasSize(clear);
                assertThat(plan.decisions())
                        .extracting(Decision::what)
                        .contains(clear + " screens print " + inks.size() + " colours: " + (inks.size() - clear)
                                + " saved.");
            }
        }
    }

    /** Fewest screens first, then least difference by area: by trying every set of inks, in every order, with every pile. */
    @Test
    void nothingIsBetterThanWhatIsFound() {
        int saved = 0;
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            List<Ink> colours = someOverlaps(2 + random.nextInt(4), random);
            List<Ink> spare = random.nextInt(3) == 0 ? List.of(ink("spare", colour(random), random)) : List.of();
            List<Ink> candidates = new ArrayList<>(colours);
            candidates.addAll(spare);
            Map<Ink, Double> areas = new LinkedHashMap<>();
            Map<Ink, List<Ink>> grounds = new LinkedHashMap<>();
            colours.forEach(colour -> {
                areas.put(colour, 1.0 + random.nextInt(20));
                grounds.put(colour, List.of());
            });
            int mostFilms = 1 + random.nextInt(3);
            Recipes recipes = Recipes.of(
                    new Recipes.Wanted(grounds, candidates, (above, under) -> true, TOLERANCE, mostFilms),
                    SHEET,
                    new Effort(Long.MAX_VALUE));
            Found found = new FewestScreens(candidates, areas, recipes, new Effort(Long.MAX_VALUE)).find();
            ByTrying trying = new ByTrying(candidates, areas, mostFilms);
            int screens = (int) found.recipes().values().stream()
                    .flatMap(recipe -> recipe.inks().stream())
                    .distinct()
                    .count();
            assertThat(found.isExact()).isTrue();
            assertThat(screens).as("seed %d", seed).isEqualTo(trying.screens);
            assertThat(found.cost()).as("seed %d", seed).isCloseTo(trying.cost, within(1e-6));
            saved += colours.size() - screens;
        }
        assertThat(saved).as("drawings in which something was saved").isGreaterThan(100);
    }

    /** Its own small film code, one number for each band. */
    private static final class ByTrying {
        private final List<Ink> candidates;
        private final Map<Ink, Double> areas;
        private final int mostFilms;
        private final Map<List<String>, Lab> known = new HashMap<>();
        private int screens = Integer.MAX_VALUE;
        private double cost = Double.POSITIVE_INFINITY;

        ByTrying(List<Ink> candidates, Map<Ink, Double> areas, int mostFilms) {
            this.candidates = candidates;
            this.areas = areas;
            this.mostFilms = mostFilms;
            orders(new ArrayList<>());
        }

        private void orders(List<Ink> order) {
            if (!order.isEmpty()) {
                attempt(order);
            }
            for (Ink ink : candidates) {
                if (!order.contains(ink)) {
                    order.add(ink);
                    orders(order);
                    order.remove(order.size() - 1);
                }
            }
        }

        private void attempt(List<Ink> order) {
            if (order.size() > screens) {
                return;
            }
            double sum = 0;
            for (Map.Entry<Ink, Double> colour : areas.entrySet()) {
                sum += colour.getValue() * least(colour.getKey(), order);
            }
            int used = order.size();
            if (Double.isFinite(sum) && (used < screens || sum < cost)) {
                screens = used;
                cost = sum;
            }
        }

        private double least(Ink colour, List<Ink> order) {
            double alone = difference(List.of(colour), colour);
            if (order.contains(colour)) {
                return alone;
            }
            double least = Double.POSITIVE_INFINITY;
            for (int set = 1; set < 1 << order.size(); set++) {
                List<Ink> pile = new ArrayList<>();
                for (int i = 0; i < order.size(); i++) {
                    if ((set >> i & 1) != 0) {
                        pile.add(order.get(i));
                    }
                }
                if (pile.size() <= mostFilms) {
                    double difference = difference(pile, colour);
                    if (difference <= Math.max(TOLERANCE, alone)) {
                        least = Math.min(least, difference);
                    }
                }
            }
            return least;
        }

        private double difference(List<Ink> pile, Ink colour) {
            List<String> names = pile.stream().map(Ink::name).toList();
            Lab seen = known.computeIfAbsent(names, piled -> seen(pile).lab());
            return Ciede2000.difference(seen, Lab.of(colour.swatch()));
        }
    }

    /** White sheet, then film after film: R + T² G / (1 - R G) with R = h W and T² = (1 - h) W (1 - R) over white W. */
    private static Spectrum seen(List<Ink> pile) {
        Spectrum ground = Spectrum.WHITE;
        for (Ink ink : pile) {
            Spectrum white = Spectrum.of(ink.swatch());
            Spectrum beneath = ground;
            double h = ink.hiding();
            ground = Spectrum.of(band -> {
                double r = h * white.at(band);
                double squared = (1 - h) * white.at(band) * (1 - r);
                return r + squared * beneath.at(band) / (1 - r * beneath.at(band));
            });
        }
        return ground;
    }

    @Test
    void anAskedOrderIsObeyed() {
        Ink cover = new Ink("cover", Rgb.parse("#d0d0c8"), 0.9, Optional.empty(), false);
        Ink tint = new Ink("tint", Rgb.parse("#e06060"), 0.05, Optional.empty(), false);
        Ink tinted = new Ink("tinted", seen(List.of(cover, tint)).rgb(), 0.9, Optional.empty(), false);
        List<Ink> inks = List.of(cover, tint, tinted);
        assertThat(built(inks, Job.DEFAULT).pulls()).extracting(Pull::ink).containsExactly(cover, tint);
        Job turned = JobReader.read("job.yaml", "order: [tint, cover, tinted]");
        assertThat(built(inks, turned).pulls()).extracting(Pull::ink).containsExactly(tint, cover, tinted);
    }

    @Test
    void theColourThatIsMadePrintsWithTheInksThatMakeIt() {
        List<Ink> inks = overlaps(2, new Random(3));
        PrintPlan plan = built(inks, Job.DEFAULT);
        StackSet third = StackSet.of(2);
        assertThat(plan.pulls())
                .allSatisfy(pull -> assertThat(pull.prints().and(third)).isEqualTo(third));
    }

    @Test
    void anInkThatTheJobListsAndNothingShowsMaySaveOthers() {
        Ink spare = new Ink("spare", Rgb.parse("#50b0d0"), 0.02, Optional.empty(), false);
        Ink one = new Ink("one", Rgb.parse("#f0d040"), 0.02, Optional.empty(), false);
        Ink two = new Ink("two", Rgb.parse("#e08090"), 0.02, Optional.empty(), false);
        List<Ink> shown = List.of(
                one,
                two,
                new Ink("a", seen(List.of(one, spare)).rgb(), 0.9, Optional.empty(), false),
                new Ink("b", seen(List.of(two, spare)).rgb(), 0.9, Optional.empty(), false));
        PlanningTable table = table(shown, List.of(spare));
        PrintPlan plan = new Building(table, start(shown), Job.DEFAULT, TOLERANCE, 3).plan();
        assertThat(plan.pulls()).extracting(Pull::ink).containsExactlyInAnyOrder(one, two, spare);
    }

    @Test
    void aSearchThatIsGivenUpSaysSo() {
        List<Ink> inks = overlaps(3, new Random(1));
        PrintPlan plan =
                new Building(table(inks, List.of()), start(inks), Job.DEFAULT, TOLERANCE, 3).plan(new Effort(0));
        assertThat(plan.pulls()).hasSize(7);
        assertThat(plan.decisions())
                .extracting(Decision::why)
                .anyMatch(why -> why.contains("given up after much work"));
    }

    @Test
    void moreColoursThanCanBeSearchedKeepTheirScreens() {
        List<Ink> inks = new ArrayList<>();
        for (int i = 0; i < 64; i++) {
            inks.add(new Ink("ink " + i, Rgb.of(0x020304 * i), 0.9, Optional.empty(), false));
        }
        PrintPlan plan = built(inks, Job.DEFAULT);
        assertThat(plan.pulls()).hasSize(64);
        assertThat(plan.decisions()).extracting(Decision::why).anyMatch(why -> why.contains("63 colours at most"));
    }

    private static PrintPlan built(List<Ink> inks, Job job) {
        double mostFilms = Options.of(new Overprint(), job).number("maxFilms").orElseThrow();
        return new Building(table(inks, List.of()), start(inks), job, TOLERANCE, (int) mostFilms).plan();
    }

    private static Map<String, PluginSettings> use(String option, String value) {
        return Map.of("overprint", new PluginSettings(1, Map.of(option, new Setting(value, 1))));
    }

    private static PlanningTable table(List<Ink> inks, List<Ink> spare) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < inks.size(); i++) {
            Ink ink = inks.get(i);
            rows.add(new Row(i, new PaintStack(List.of(new Paint(ink.swatch()))), List.of(Optional.of(ink)), 1));
        }
        return new PlanningTable(SHEET, inks, spare, rows, List.of());
    }

    /** Clear inks far apart, and an ink for each colour that they make over each other; all of them colours that sRGB holds. */
    private static List<Ink> overlaps(int clear, Random random) {
        while (true) {
            List<Ink> inks = drawn(clear, random);
            boolean isHeld = inks.stream()
                    .allMatch(ink -> ink.swatch().red() > 8
                            && ink.swatch().green() > 8
                            && ink.swatch().blue() > 8);
            if (isHeld) {
                return inks;
            }
        }
    }

    private static List<Ink> drawn(int clear, Random random) {
        List<Ink> inks = new ArrayList<>();
        for (int i = 0; i < clear; i++) {
            double hue = (i + 0.3 * random.nextDouble()) / clear;
            Rgb swatch =
                    Rgb.of(java.awt.Color.HSBtoRGB((float) hue, 0.45f + 0.2f * random.nextFloat(), 0.95f) & 0xffffff);
            inks.add(new Ink("clear " + i, swatch, 0.02, Optional.empty(), false));
        }
        List<Ink> all = new ArrayList<>(inks);
        for (int set = 1; set < 1 << clear; set++) {
            if (Integer.bitCount(set) > 1) {
                List<Ink> pile = new ArrayList<>();
                for (int i = 0; i < clear; i++) {
                    if ((set >> i & 1) != 0) {
                        pile.add(inks.get(i));
                    }
                }
                all.add(new Ink("overlap " + set, seen(pile).rgb(), 0.9, Optional.empty(), false));
            }
        }
        return all;
    }

    /** Inks of any hiding, some with the colours that others make over each other. */
    private static List<Ink> someOverlaps(int count, Random random) {
        List<Ink> inks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boolean isMixed = inks.size() > 1 && random.nextInt(4) > 0;
            Ink one = isMixed ? inks.get(random.nextInt(inks.size())) : null;
            Ink other = isMixed ? inks.get(random.nextInt(inks.size())) : null;
            Rgb swatch = isMixed ? seen(List.of(one, other)).rgb() : colour(random);
            if (inks.stream().noneMatch(ink -> ink.swatch().equals(swatch))) {
                inks.add(ink("ink " + i, swatch, random));
            }
        }
        return inks;
    }

    private static Ink ink(String name, Rgb swatch, Random random) {
        double hiding = random.nextBoolean() ? 0.05 : random.nextDouble();
        return new Ink(name, swatch, hiding, Optional.empty(), false);
    }

    private static Rgb colour(Random random) {
        return Rgb.of(random.nextInt(1 << 24));
    }
}
