package inkstrata.overprint;

import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.plan.Pull;
import inkstrata.planar.NarrowPlaces;
import inkstrata.planar.OutlineCells;
import inkstrata.planar.Region;
import inkstrata.planar.RegionWindow;
import inkstrata.plugin.Shaper;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Tidies what runs on beneath other inks: shards and knobs that no screen holds are left out, slits are filled, where nobody sees it.
 *
 * <p>Only deep beneath an ink, farther from where that ends on its film than pulls may be off: so that ink alone covers the place and all
 * around it, sheet shows between films no sooner, and what is filled comes out nowhere. What the place looks like stays
 * within the tolerance. Work grows with the number of places where hidden outlines come near each other; where there are none films stay
 * the very same.
 */
public final class Slivers implements Shaper {
    /** Narrower ink or gaps don't hold, of an ink whose mesh is not known (common practice, no source). */
    static final double NARROW_MM = 0.3;

    /** So many openings of the cloth must lie across what holds (common practice, no source). */
    private static final double OPENINGS = 2;

    /** Hidden deeper than pulls may be off by that much, for rounding. */
    private static final double SPARE_MM = 0.01;

    @Override
    public String id() {
        return "slivers";
    }

    @Override
    public String description() {
        return "leaves out shards and fills slits of what runs on beneath other inks (overprint)";
    }

    /** After inks have grown into each other, before the ground is choked. */
    @Override
    public int rank() {
        return 120;
    }

    @Override
    public Separation shape(Separation separation, Job job) {
        Overprint overprint = new Overprint();
        if (overprint.claims(job).isEmpty()) {
            return separation;
        }
        List<Region> printed = separation.printed();
        double depth = job.registerMm() + SPARE_MM;
        Map<Integer, OutlineCells> outlines = new ConcurrentHashMap<>();
        List<Narrow> found = IntStream.range(0, printed.size())
                .parallel()
                .filter(pull -> mayBeTidied(separation.plan().pulls().get(pull)))
                .mapToObj(pull -> {
                    Changeable changeable = new Changeable(
                            separation,
                            pull,
                            overprint.rules(
                                    separation.table().sheet(),
                                    separation.plan().pulls(),
                                    job));
                    double narrow = narrowMm(separation.plan().pulls().get(pull).ink());
                    List<NarrowPlaces.Place> places = NarrowPlaces.of(
                            separation.map(),
                            printed.get(pull),
                            changeable::covers,
                            cover -> outlines.computeIfAbsent(cover, it -> new OutlineCells(printed.get(it))),
                            narrow,
                            depth);
                    return new Narrow(pull, narrow, places, changeable.places(covers(places)));
                })
                .filter(narrow -> !narrow.places().isEmpty())
                .toList();
        Map<Integer, RegionWindow> windows = new HashMap<>();
        List<Region> tidied = new ArrayList<>(printed);
        List<Region> changed = new ArrayList<>();
        for (Narrow narrow : found) {
            covers(narrow.places())
                    .forEach(cover -> windows.computeIfAbsent(cover, it -> new RegionWindow(printed.get(it))));
            Tidying tidying = new Tidying(
                    printed.get(narrow.pull()), narrow.widthMm(), depth, narrow.mayChange(), windows, changed);
            tidied.set(narrow.pull(), tidying.at(narrow.places()));
            changed.addAll(tidying.changed());
        }
        return separation.withPrinted(tidied);
    }

    /** Where a pull is narrow, and where it may change. */
    private record Narrow(
            int pull, double widthMm, List<NarrowPlaces.Place> places, Map<Integer, Changeable.Places> mayChange) {}

    private static boolean mayBeTidied(Pull pull) {
        return !pull.ground() && pull.ink().from().isEmpty();
    }

    private static Set<Integer> covers(List<NarrowPlaces.Place> places) {
        return places.stream().flatMap(place -> place.covers().stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** What is narrower does not hold on an ink's screen, in millimetres. */
    static double narrowMm(Ink ink) {
        return ink.mesh()
                .map(mesh -> OPENINGS * (10.0 / mesh.threadsPerCm() - mesh.threadMicrometres() / 1000.0))
                .orElse(NARROW_MM);
    }
}
