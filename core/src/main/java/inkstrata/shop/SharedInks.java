package inkstrata.shop;

import inkstrata.colour.NearColours;
import inkstrata.colour.Rgb;
import inkstrata.colour.Xyz;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.plan.Ink;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleBiFunction;

/**
 * Which colours share an ink: first those within {@code merge} of each other, none of which touch along an edge that can be seen unless the
 * job lets them; then, if the job wants fewer inks, those that are closest.
 *
 * @param areas of colours that no ink is found for yet, in mm²
 * @param edges how much edge colours share
 * @param job what is asked for
 */
record SharedInks(Map<Rgb, Double> areas, SharedEdges edges, Job job) {
    /** An edge that is lost counts as so much of a difference (CIEDE2000): a drawing is read by its edges (our own choice). */
    private static final double LOST_EDGE = 10;

    /**
     * The groups.
     *
     * @param listed inks that are used already; their swatches may come up in groups, never two in one
     * @throws JobException if so many are listed that there can't be as few as the job wants
     */
    List<List<Rgb>> groups(List<Ink> listed) {
        boolean mayTouch = job.merge().touching();
        List<List<Rgb>> groups =
                NearColours.group(areas, job.merge().within(), (one, other) -> mayTouch || !edges.isSeen(one, other));
        if (job.merge().inks().isEmpty()) {
            return groups;
        }
        int most = job.merge().inks().getAsInt();
        if (listed.size() > most || most < 1) {
            throw new JobException(
                    job.file(),
                    0,
                    "the job lists " + listed.size() + " inks that print, and wants " + most
                            + " at most. List fewer, or ask for more.");
        }
        List<Rgb> swatches = listed.stream()
                .filter(ink -> ink.from().isEmpty())
                .map(Ink::swatch)
                .toList();
        int drawings = listed.size() - swatches.size();
        Map<Rgb, Double> all = new TreeMap<>(areas);
        List<List<Rgb>> nodes = new ArrayList<>(groups);
        swatches.forEach(swatch -> {
            all.put(swatch, 0.0);
            nodes.add(List.of(swatch));
        });
        ToDoubleBiFunction<Rgb, Rgb> extra = (one, other) -> {
            if (swatches.contains(one) && swatches.contains(other)) {
                return Double.POSITIVE_INFINITY;
            }
            return mayTouch || !edges.isSeen(one, other) ? 0 : LOST_EDGE;
        };
        return NearColours.atMost(Math.max(1, most - drawings), nodes, all, extra);
    }

    /**
     * The mean of a group's colours by area, in linear light; the largest one's if that is taken.
     *
     * @param taken swatches of others
     */
    static Rgb swatch(List<Rgb> group, Map<Rgb, Double> areas, Set<Rgb> taken) {
        if (group.size() == 1) {
            return group.get(0);
        }
        double x = 0;
        double y = 0;
        double z = 0;
        double area = 0;
        for (Rgb colour : group) {
            Xyz light = Xyz.of(colour);
            double weight = areas.get(colour);
            x += weight * light.x();
            y += weight * light.y();
            z += weight * light.z();
            area += weight;
        }
        Rgb mean = Rgb.of(new Xyz(x / area, y / area, z / area));
        return taken.contains(mean) ? group.get(0) : mean;
    }
}
