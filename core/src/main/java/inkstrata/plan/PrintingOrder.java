package inkstrata.plan;

import inkstrata.colour.Lab;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * In what order inks are printed: light to dark by L*, a named key last, unless the job says otherwise; on the back of a
 * sheet the other way round, since what is nearest to the eye is printed first there.
 *
 * <p>Light to dark with the key nearest to the eye is common practice, no source.
 */
public final class PrintingOrder {
    /** Stands for all inks an order does not name. */
    public static final String THE_REST = "...";

    private PrintingOrder() {}

    /** Lightest first; of equally light ones by swatch, then by name; an ink named as key comes last. */
    public static List<Ink> lightToDark(List<Ink> inks) {
        return inks.stream()
                .sorted(Comparator.comparing(Ink::key)
                        .thenComparing(ink -> -Lab.of(ink.swatch()).lightness())
                        .thenComparing(Ink::swatch)
                        .thenComparing(Ink::name))
                .toList();
    }

    /**
     * The order a job asks for.
     *
     * @param inks all inks of the plan
     * @param names in print order, {@link #THE_REST} at most once standing for the rest in the usual order; empty for the
     *     usual order throughout
     * @param side decides what is usual: light to dark on the front, dark to light on the back
     * @throws IllegalArgumentException if a name is unknown or comes twice, or inks are left over and nothing stands for
     *     them
     */
    public static List<Ink> asAsked(List<Ink> inks, List<String> names, Side side) {
        List<Ink> usual = usual(inks, side);
        if (names.isEmpty()) {
            return usual;
        }
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

    private static List<Ink> usual(List<Ink> inks, Side side) {
        List<Ink> order = new ArrayList<>(lightToDark(inks));
        if (side == Side.BACK) {
            Collections.reverse(order);
        }
        return order;
    }

    private static String listed(List<Ink> inks) {
        return String.join(", ", inks.stream().map(Ink::name).toList());
    }
}
