package inkstrata.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;

/**
 * Joins colours that one ink can stand for: complete linkage under CIEDE2000, so that no two colours of a group are
 * farther apart than the limit.
 *
 * <p>The closest two groups join first; of equally close ones those whose first colours come first. Complete linkage:
 * Sørensen, A method of establishing groups of equal amplitude in plant sociology, Biol. Skr. 5 (1948).
 */
public final class NearColours {
    private NearColours() {}

    /**
     * Groups colours.
     *
     * @param areas each colour with how much of it shows, in any unit
     * @param limit two colours of one group are at most this far apart; 0 joins nothing
     * @return the groups, each with the colour of most area first (of equal ones the lower), then by area; groups in the
     *     order of their first colour's number
     */
    public static List<List<Rgb>> group(Map<Rgb, Double> areas, double limit) {
        return group(areas, limit, (one, other) -> true);
    }

    /**
     * Groups colours of which some must not meet in a group.
     *
     * @param mayJoin whether two colours may be in one group
     */
    public static List<List<Rgb>> group(Map<Rgb, Double> areas, double limit, BiPredicate<Rgb, Rgb> mayJoin) {
        List<Rgb> colours = new ArrayList<>(new TreeMap<>(areas).keySet());
        List<List<Rgb>> groups = colours.stream().map(List::of).toList();
        List<List<Rgb>> joined = limit == 0
                ? groups
                : joined(groups, (one, other) -> mayJoin.test(one, other) ? 0 : Double.POSITIVE_INFINITY, limit, 1);
        return sorted(joined, areas);
    }

    /**
     * Joins the closest groups until so many are left, or until no two may join.
     *
     * @param extra what is added to the distance of two colours; infinite if they must not meet
     */
    public static List<List<Rgb>> atMost(
            int most, List<List<Rgb>> groups, Map<Rgb, Double> areas, ToDoubleBiFunction<Rgb, Rgb> extra) {
        return sorted(joined(groups, extra, Double.MAX_VALUE, most), areas);
    }

    private static List<List<Rgb>> joined(
            List<List<Rgb>> groups, ToDoubleBiFunction<Rgb, Rgb> extra, double limit, int most) {
        List<List<Rgb>> result = new ArrayList<>();
        groups.forEach(group -> result.add(new ArrayList<>(group)));
        Linkage linkage = new Linkage(distances(groups, extra));
        int left = groups.size();
        for (int keep = linkage.closest(limit); keep >= 0 && left > most; keep = linkage.closest(limit)) {
            int join = linkage.nearest(keep);
            result.get(keep).addAll(result.get(join));
            linkage.join(keep, join);
            left--;
        }
        return IntStream.range(0, result.size())
                .filter(i -> !linkage.isGone(i))
                .mapToObj(result::get)
                .toList();
    }

    private static List<List<Rgb>> sorted(List<List<Rgb>> groups, Map<Rgb, Double> areas) {
        Comparator<Rgb> mostFirst =
                Comparator.comparing((Rgb colour) -> -areas.get(colour)).thenComparing(Comparator.naturalOrder());
        return groups.stream()
                .map(group -> group.stream().sorted(mostFirst).toList())
                .sorted(Comparator.comparing(group -> group.get(0)))
                .toList();
    }

    /** Whether any two of these colours are within the limit of each other. */
    public static boolean any(List<Rgb> colours, double limit) {
        List<Lab> labs = colours.stream().map(Lab::of).toList();
        for (int i = 0; i < labs.size(); i++) {
            for (int j = i + 1; j < labs.size(); j++) {
                if (Ciede2000.difference(labs.get(i), labs.get(j)) <= limit) {
                    return true;
                }
            }
        }
        return false;
    }

    /** That of two groups is that of their two colours farthest apart. */
    private static double[][] distances(List<List<Rgb>> groups, ToDoubleBiFunction<Rgb, Rgb> extra) {
        Map<Rgb, Lab> labs = new HashMap<>();
        groups.forEach(group -> group.forEach(colour -> labs.put(colour, Lab.of(colour))));
        double[][] apart = new double[groups.size()][groups.size()];
        for (int i = 0; i < apart.length; i++) {
            for (int j = i + 1; j < apart.length; j++) {
                for (Rgb one : groups.get(i)) {
                    for (Rgb other : groups.get(j)) {
                        double distance =
                                Ciede2000.difference(labs.get(one), labs.get(other)) + extra.applyAsDouble(one, other);
                        apart[i][j] = Math.max(apart[i][j], distance);
                    }
                }
                apart[j][i] = apart[i][j];
            }
        }
        return apart;
    }
}
