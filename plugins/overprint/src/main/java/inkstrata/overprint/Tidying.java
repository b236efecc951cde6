package inkstrata.overprint;

import inkstrata.measure.Frame;
import inkstrata.planar.Corners;
import inkstrata.planar.NarrowPlaces;
import inkstrata.planar.Region;
import inkstrata.planar.RegionWindow;
import inkstrata.planar.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Opens and closes what one pull prints, in windows around narrow places alone. */
final class Tidying {
    /** Thinner than that is rounding of offsets, in millimetres. */
    private static final double ROUNDING_MM = 0.003;

    /**
     * A place is left as it is if its outlines are so dense that moving them would take longer: corners in it, times how many of them lie in
     * a square as wide as they are moved. At this bound one place takes about two seconds; at ten times as much, minutes.
     */
    private static final double MOST_WORK = 40_000;

    private final Region own;
    private final RegionWindow ownWindow;
    private final double narrow;
    private final double depth;
    private final Map<Integer, Changeable.Places> places;
    private final Map<Integer, RegionWindow> covers;
    private final RegionWindow before;
    private final List<Region> changed = new ArrayList<>();

    /**
     * Of one pull.
     *
     * @param own what it prints
     * @param narrow in millimetres
     * @param depth in millimetres
     * @param places beneath each other pull
     * @param covers what those print
     * @param before what was changed of other pulls: there nothing changes twice
     */
    Tidying(
            Region own,
            double narrow,
            double depth,
            Map<Integer, Changeable.Places> places,
            Map<Integer, RegionWindow> covers,
            List<Region> before) {
        this.own = own;
        this.ownWindow = new RegionWindow(own);
        this.narrow = narrow;
        this.depth = depth;
        this.places = places;
        this.covers = covers;
        this.before = new RegionWindow(Region.of(before));
    }

    /** What was filled and left out. */
    List<Region> changed() {
        return changed;
    }

    /** The pull's region, tidied there. */
    Region at(List<NarrowPlaces.Place> narrowPlaces) {
        List<Change> parts = narrowPlaces.parallelStream().map(this::at).toList();
        Region filled = large(Region.union(parts.stream().map(Change::filled).toList()));
        Region leftOut = large(Region.union(parts.stream().map(Change::leftOut).toList()));
        changed.add(filled);
        changed.add(leftOut);
        return own.patched(filled, leftOut);
    }

    private record Change(Region filled, Region leftOut) {}

    private Change at(NarrowPlaces.Place place) {
        Map<Integer, Region> mayCome = place.ofGap() ? free(place, Changeable.Places::mayCome) : Map.of();
        Map<Integer, Region> mayGo = place.ofRegion() ? free(place, Changeable.Places::mayGo) : Map.of();
        if (mayCome.isEmpty() && mayGo.isEmpty()) {
            return new Change(Region.EMPTY, Region.EMPTY);
        }
        Region there = ownWindow.at(wider(place.frame(), 2 * narrow));
        if (isTooDense(there, narrow)
                || place.covers().stream().anyMatch(cover -> isTooDense(cover(cover, place), depth))) {
            return new Change(Region.EMPTY, Region.EMPTY);
        }
        Region gaps = mayCome.isEmpty() ? Region.EMPTY : deep(narrowGaps(there), mayCome, place);
        Region filled = there.union(gaps);
        Region shards = mayGo.isEmpty() ? Region.EMPTY : deep(narrowInk(filled), mayGo, place);
        return new Change(gaps, shards);
    }

    /** Beneath each cover where this pull may change in a place's window. */
    private Map<Integer, Region> free(NarrowPlaces.Place place, Function<Changeable.Places, RegionWindow> where) {
        Map<Integer, Region> free = new TreeMap<>();
        for (int cover : place.covers()) {
            Region there = where.apply(places.get(cover)).at(place.frame());
            if (!there.isEmpty()) {
                free.put(cover, there);
            }
        }
        return free;
    }

    /** What of narrow parts is free and lies deep beneath a cover. */
    private Region deep(Region narrowParts, Map<Integer, Region> free, NarrowPlaces.Place place) {
        Region parts = large(narrowParts);
        List<Region> deep = new ArrayList<>();
        free.forEach((cover, where) -> {
            Region there = where.intersection(parts);
            if (!there.isEmpty()) {
                deep.add(there.intersection(cover(cover, place).shrunk(depth)));
            }
        });
        Region all = Region.union(deep);
        return all.isEmpty() ? all : all.minus(before.at(place.frame()));
    }

    private Region cover(int cover, NarrowPlaces.Place place) {
        return covers.get(cover).at(wider(place.frame(), 2 * depth));
    }

    /** By how much outlines are to be moved counts: each corner becomes an arc that long, and all that cross each other are looked at. */
    private static boolean isTooDense(Region region, double byMm) {
        double corners = region.polygons().stream()
                .mapToInt(polygon -> polygon.shell().size()
                        + polygon.holes().stream().mapToInt(Ring::size).sum())
                .sum();
        return region.bounds()
                .filter(box -> corners * corners * byMm * byMm > MOST_WORK * box.width() * box.height())
                .isPresent();
    }

    private static Frame wider(Frame frame, double by) {
        return new Frame(frame.x() - by, frame.y() - by, frame.width() + 2 * by, frame.height() + 2 * by);
    }

    /** What of a region is narrower than that, and tips of its corners. */
    private Region narrowInk(Region region) {
        return region.minus(region.shrunk(narrow / 2).grown(narrow / 2 + ROUNDING_MM, Corners.ROUND));
    }

    private Region narrowGaps(Region region) {
        return region.grown(narrow / 2, Corners.ROUND)
                .shrunk(narrow / 2 + ROUNDING_MM)
                .minus(region);
    }

    /** Parts longer than they may be narrow: not the tips of corners. */
    private Region large(Region parts) {
        return Region.of(parts.polygons().stream()
                .map(Region::of)
                .filter(part -> part.bounds()
                        .filter(box -> Math.max(box.width(), box.height()) > narrow)
                        .isPresent())
                .toList());
    }
}
