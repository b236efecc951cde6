package inkstrata.plan;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.colour.Rgb;
import inkstrata.plan.PlanningTable.Row;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * In what order inks lie over each other unless the job says otherwise, and why: light to dark; the key drawing nearest to the eye; thin
 * light shapes that hide what they lie on after that; clear inks after what they tint; a gloss coat after all.
 *
 * <p>The rules are common practice, no source; their numbers are our own choice.
 */
final class UsualOrder {
    /** Lighter inks (L*) hold no drawing together. */
    private static final double DARK = 35;

    /** Of the edges of each of two others, or more, a key has more than this share: it parts them. */
    private static final double MOST_EDGES = 0.5;

    /** Inks that hide less only tint. */
    private static final double CLEAR = 0.3;

    /** An ink that hides no more than that and is no farther from white has no colour. */
    private static final double GLOSS_HIDING = 0.02;

    private static final double GLOSS_DIFFERENCE = 1;

    private final PlanningTable table;
    private final double registerMm;
    private final InkEdges edges;
    private final Prediction prediction;
    private final List<Ink> order;
    private final List<Decision> decisions = new ArrayList<>();

    private UsualOrder(PlanningTable table, double registerMm) {
        this.table = table;
        this.registerMm = registerMm;
        this.edges = InkEdges.of(table);
        this.prediction = new Prediction(table.sheet());
        this.order = new ArrayList<>(lightToDark(table.inks()));
    }

    /** Inks, farthest from the eye first, with reasons. */
    static PrintingOrder of(PlanningTable table, double registerMm) {
        UsualOrder usual = new UsualOrder(table, registerMm);
        usual.settle();
        return new PrintingOrder(usual.order, usual.decisions);
    }

    /** Lightest first; of equally light ones by swatch, then by name; an ink named as key comes last. */
    static List<Ink> lightToDark(List<Ink> inks) {
        return inks.stream()
                .sorted(Comparator.comparing(Ink::key)
                        .thenComparing(ink -> -lightness(ink))
                        .thenComparing(Ink::swatch)
                        .thenComparing(Ink::name))
                .toList();
    }

    private void settle() {
        if (order.size() > 1) {
            decide(
                    "",
                    "Light inks lie beneath dark ones.",
                    String.format(
                            Locale.ROOT,
                            "L* runs from %.0f (%s) to %.0f (%s).",
                            order.stream()
                                    .mapToDouble(UsualOrder::lightness)
                                    .max()
                                    .orElseThrow(),
                            Collections.max(order, Comparator.comparingDouble(UsualOrder::lightness))
                                    .name(),
                            order.stream()
                                    .mapToDouble(UsualOrder::lightness)
                                    .min()
                                    .orElseThrow(),
                            Collections.min(order, Comparator.comparingDouble(UsualOrder::lightness))
                                    .name()));
        }
        keyLast();
        thinLightsOverDarks();
        clearOverWhatTheyTint();
        glossLast();
    }

    private void keyLast() {
        Optional<Ink> named = order.stream().filter(Ink::key).findFirst();
        if (named.isPresent()) {
            decide(
                    named.get().name(),
                    "It is the key and lies over all that is darker or lighter.",
                    "The job names it.");
            return;
        }
        Optional<Ink> key = order.stream()
                .filter(ink -> lightness(ink) <= DARK && parted(ink) > 1)
                .max(Comparator.comparingDouble(edges::of));
        if (key.isPresent()) {
            order.remove(key.get());
            order.add(key.get());
            decide(
                    key.get().name(),
                    "It holds the drawing together and lies over the others.",
                    String.format(
                            Locale.ROOT,
                            "It is dark (L* %.0f), has most of the edges of %d other inks, and %.0f %% of all edges between inks.",
                            lightness(key.get()),
                            parted(key.get()),
                            100 * edges.of(key.get()) / edges.all()));
        }
    }

    /** How many other inks have most of their edges with that one. */
    private long parted(Ink ink) {
        return order.stream()
                .filter(other -> edges.of(other) > 0 && edges.between(ink, other) > MOST_EDGES * edges.of(other))
                .count();
    }

    /** A light ink that lies on darker ones, hides them, and is so thin that its gap in them would not survive. */
    private void thinLightsOverDarks() {
        for (Ink light : List.copyOf(order)) {
            double area = 0;
            double onDark = 0;
            List<Ink> darks = new ArrayList<>();
            for (Row row : table.rows()) {
                if (row.shows(light) && light.from().isEmpty()) {
                    area += row.areaMm2();
                    Optional<Ink> under = darkUnder(row, light);
                    if (under.isPresent()) {
                        onDark += row.areaMm2();
                        darks.add(under.get());
                    }
                }
            }
            double width = 2 * area / edges.outline(light);
            double change = darks.stream()
                    .mapToDouble(dark -> prediction.change(light, List.of(dark)))
                    .max()
                    .orElse(Double.POSITIVE_INFINITY);
            boolean fits = !light.key()
                    && onDark > area / 2
                    && width < 2 * registerMm
                    && change <= Overlap.TOLERANCE
                    && moveAfter(light, darks);
            if (fits) {
                decide(
                        light.name(),
                        "It lies over the darker inks that the drawing has beneath it.",
                        String.format(
                                Locale.ROOT,
                                "It is %.2f mm wide on average, less than twice the register error, and over them its colour"
                                        + " changes by %.1f at most (CIEDE2000).",
                                width,
                                change));
            }
        }
    }

    /** The next darker ink down that a light one hides; what lies between, and is not printed there, has no say. */
    private Optional<Ink> darkUnder(Row row, Ink light) {
        for (int paint = 1; paint < row.inks().size(); paint++) {
            if (row.paints().paints().get(paint).colour().equals(table.sheet().colour())) {
                break;
            }
            Optional<Ink> ink = row.inks().get(paint);
            if (ink.isPresent()
                    && lightness(ink.get()) < lightness(light)
                    && prediction.change(light, List.of(ink.get())) <= Overlap.TOLERANCE) {
                return ink;
            }
        }
        return Optional.empty();
    }

    private void clearOverWhatTheyTint() {
        for (Ink clear : List.copyOf(order)) {
            if (clear.hiding() > CLEAR) {
                continue;
            }
            List<Ink> tinted = order.stream()
                    .filter(ink -> !ink.equals(clear) && ink.hiding() > CLEAR)
                    .filter(ink -> table.rows().stream().anyMatch(row -> row.shows(clear) && row.shows(ink)))
                    .toList();
            if (moveAfter(clear, tinted)) {
                decide(
                        clear.name(),
                        "It lies over the inks that it tints.",
                        String.format(
                                Locale.ROOT,
                                "It hides %.0f %%; beneath %s it would not be seen.",
                                100 * clear.hiding(),
                                String.join(", ", tinted.stream().map(Ink::name).toList())));
            }
        }
    }

    private void glossLast() {
        for (Ink ink : List.copyOf(order)) {
            boolean isGloss =
                    ink.hiding() <= GLOSS_HIDING && Ciede2000.difference(ink.swatch(), Rgb.WHITE) <= GLOSS_DIFFERENCE;
            if (isGloss
                    && moveAfter(
                            ink,
                            order.stream().filter(other -> !other.equals(ink)).toList())) {
                decide(ink.name(), "It lies over everything.", "It is clear and has no colour: a gloss coat.");
            }
        }
    }

    /** Whether that changed anything. */
    private boolean moveAfter(Ink ink, List<Ink> others) {
        int last = others.stream().mapToInt(order::indexOf).max().orElse(-1);
        int at = order.indexOf(ink);
        if (last <= at) {
            return false;
        }
        order.remove(at);
        order.add(last, ink);
        return true;
    }

    private void decide(String about, String what, String why) {
        decisions.add(new Decision(PrintingOrder.DECIDES, about, what, why));
    }

    private static double lightness(Ink ink) {
        return Lab.of(ink.swatch()).lightness();
    }
}
