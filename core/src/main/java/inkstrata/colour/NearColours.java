package inkstrata.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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
        List<Rgb> colours = new ArrayList<>(new TreeMap<>(areas).keySet());
        List<List<Rgb>> groups = new ArrayList<>();
        for (Rgb colour : colours) {
            groups.add(new ArrayList<>(List.of(colour)));
        }
        Linkage linkage = new Linkage(distances(colours));
        for (int keep = linkage.closest(limit); keep >= 0 && limit > 0; keep = linkage.closest(limit)) {
            int join = linkage.nearest(keep);
            groups.get(keep).addAll(groups.get(join));
            linkage.join(keep, join);
        }
        Comparator<Rgb> mostFirst =
                Comparator.comparing((Rgb colour) -> -areas.get(colour)).thenComparing(Comparator.naturalOrder());
        List<List<Rgb>> result = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            if (!linkage.isGone(i)) {
                result.add(groups.get(i).stream().sorted(mostFirst).toList());
            }
        }
        result.sort(Comparator.comparing(group -> group.get(0)));
        return result;
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

    private static double[][] distances(List<Rgb> colours) {
        List<Lab> labs = colours.stream().map(Lab::of).toList();
        double[][] apart = new double[labs.size()][labs.size()];
        for (int i = 0; i < apart.length; i++) {
            for (int j = i + 1; j < apart.length; j++) {
                apart[i][j] = Ciede2000.difference(labs.get(i), labs.get(j));
                apart[j][i] = apart[i][j];
            }
        }
        return apart;
    }
}
