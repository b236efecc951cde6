package inkstrata.plan;

import inkstrata.colour.Lab;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * In what order inks are printed: as they lie over each other ({@link UsualOrder}), unless the job says otherwise; on the back of a sheet
 * the other way round, since what is nearest to the eye is printed first there.
 *
 * @param inks first printed first
 * @param decisions how that came about
 */
public record PrintingOrder(List<Ink> inks, List<Decision> decisions) {
    /** Stands for all inks an order does not name. */
    public static final String THE_REST = "...";

    /** Who decides it. */
    static final String DECIDES = "order";

    /** Above that share of all edges between inks, what an asked order costs is said (our own choice). */
    private static final double LARGE = 0.05;

    public PrintingOrder {
        inks = List.copyOf(inks);
        decisions = List.copyOf(decisions);
    }

    /**
     * The order that is usual, or the one a job asks for.
     *
     * @param table of the artwork
     * @param names in print order, {@link #THE_REST} at most once standing for the rest in the usual order; empty for the
     *     usual order throughout
     * @param registerMm the most by which any two pulls may be off from each other
     * @throws IllegalArgumentException if a name is unknown or comes twice, or inks are left over and nothing stands for
     *     them
     */
    public static PrintingOrder of(PlanningTable table, List<String> names, double registerMm) {
        PrintingOrder nearness = UsualOrder.of(table, registerMm);
        List<Ink> usual = table.sheet().printed(nearness.inks());
        if (names.isEmpty()) {
            return new PrintingOrder(usual, nearness.decisions());
        }
        List<Ink> asked = asAsked(usual, names);
        return new PrintingOrder(asked, List.of(asked(asked, usual, table)));
    }

    private static List<Ink> asAsked(List<Ink> usual, List<String> names) {
        Set<String> named = new HashSet<>();
        for (String name : names) {
            if (!name.equals(THE_REST)
                    && usual.stream().noneMatch(ink -> ink.name().equals(name))) {
                throw new IllegalArgumentException(
                        "order names '" + name + "', which no ink is called. The inks are " + listed(usual) + ".");
            }
            if (!named.add(name)) {
                throw new IllegalArgumentException("order names '" + name + "' twice. Name it once.");
            }
        }
        List<Ink> rest =
                usual.stream().filter(ink -> !named.contains(ink.name())).toList();
        if (!rest.isEmpty() && !named.contains(THE_REST)) {
            throw new IllegalArgumentException(
                    "order leaves out " + listed(rest) + ". Name them, or write ... where the rest shall print.");
        }
        List<Ink> ordered = new ArrayList<>();
        for (String name : names) {
            if (name.equals(THE_REST)) {
                ordered.addAll(rest);
            } else {
                usual.stream().filter(ink -> ink.name().equals(name)).forEach(ordered::add);
            }
        }
        return ordered;
    }

    /** What obeying costs: along how much edge a lighter ink lies over a darker one that the usual order has over it. */
    private static Decision asked(List<Ink> asked, List<Ink> usual, PlanningTable table) {
        InkEdges edges = InkEdges.of(table);
        double turned = 0;
        for (int later = 0; later < asked.size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                Ink over = asked.get(later);
                Ink under = asked.get(earlier);
                boolean isBack = table.sheet().side(over) == Side.BACK;
                Ink lighter = isBack ? under : over;
                Ink darker = isBack ? over : under;
                boolean isTurned = usual.indexOf(over) < usual.indexOf(under);
                if (isTurned
                        && Lab.of(lighter.swatch()).lightness()
                                > Lab.of(darker.swatch()).lightness()) {
                    turned += edges.between(over, under);
                }
            }
        }
        String what = "Inks print in the order that the job asks for.";
        boolean isLarge = turned > LARGE * edges.all();
        return new Decision(
                DECIDES,
                "",
                what,
                isLarge
                        ? String.format(
                                Locale.ROOT,
                                "It costs: along %.0f of the %.0f mm of edges between inks a lighter ink lies over a darker one, and its"
                                        + " rim shows there. Unasked the order would be %s.",
                                turned,
                                edges.all(),
                                listed(usual))
                        : usual.equals(asked) ? "It is the usual one." : "It costs little.");
    }

    private static String listed(List<Ink> inks) {
        return String.join(", ", inks.stream().map(Ink::name).toList());
    }
}
