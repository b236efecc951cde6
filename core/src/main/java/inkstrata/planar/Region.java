package inkstrata.planar;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where something prints: polygons with holes on the grid, none overlapping another; equal by value.
 *
 * <p>Valid in the sense of OGC Simple Features (06-103r4, section 6.1.11): rings are simple, touch one another in single
 * points at most, and each polygon's interior hangs together. Polygons and holes are in the order of their leftmost
 * vertices.
 *
 * <p>Operations give results on the grid: where two outlines cross, the crossing is rounded to it and both bend towards it
 * by less than a grid step, so areas are exact up to a step times the outlines' length. Vertices that no crossing comes near
 * stay where they are.
 */
public final class Region {
    public static final Region EMPTY = new Region(List.of());

    /** Square grid steps in a square millimetre, doubled. */
    private static final double DOUBLED_PER_MM2 = 2.0 * Grid.STEPS_PER_MM * Grid.STEPS_PER_MM;

    private final List<Polygon> polygons;

    Region(List<Polygon> polygons) {
        List<Polygon> ordered = new ArrayList<>(polygons);
        ordered.sort((one, other) -> Ring.compare(one.shell, other.shell));
        this.polygons = List.copyOf(ordered);
    }

    /**
     * One piece: a shell and the holes in it.
     *
     * @param shell runs with positive cross products inside: clockwise as seen on the sheet
     * @param holes run the other way, in the order of their leftmost vertices
     */
    public record Polygon(Ring shell, List<Ring> holes) {
        /** Takes rings in any direction and order. */
        public Polygon {
            shell = shell.doubledArea() > 0 ? shell : shell.reversed();
            List<Ring> ordered = new ArrayList<>(holes.size());
            for (Ring hole : holes) {
                ordered.add(hole.doubledArea() < 0 ? hole : hole.reversed());
            }
            ordered.sort(Ring::compare);
            holes = List.copyOf(ordered);
        }

        private Polygon movedBy(int dx, int dy) {
            return new Polygon(
                    shell.movedBy(dx, dy),
                    holes.stream().map(hole -> hole.movedBy(dx, dy)).toList());
        }
    }

    /** One of a region's polygons alone. */
    public static Region of(Polygon polygon) {
        return new Region(List.of(polygon));
    }

    /** Regions that share no edge and do not overlap, as one. */
    public static Region of(List<Region> apart) {
        return new Region(
                apart.stream().flatMap(region -> region.polygons.stream()).toList());
    }

    public List<Polygon> polygons() {
        return polygons;
    }

    public boolean isEmpty() {
        return polygons.isEmpty();
    }

    /** In square millimetres; the nearest {@code double} to the exact area. */
    public double areaMm2() {
        return millimetres2(doubledArea());
    }

    /** Shells and holes together, in millimetres. */
    public double perimeterMm() {
        return rings().stream().mapToDouble(Ring::length).sum() * Grid.STEP_MM;
    }

    /** The smallest upright rectangle around it; none around an empty region. */
    public Optional<Frame> bounds() {
        if (isEmpty()) {
            return Optional.empty();
        }
        int left = Integer.MAX_VALUE;
        int top = Integer.MAX_VALUE;
        int right = Integer.MIN_VALUE;
        int bottom = Integer.MIN_VALUE;
        for (Polygon polygon : polygons) {
            for (int i = 0; i < polygon.shell.size(); i++) {
                left = Math.min(left, polygon.shell.x(i));
                right = Math.max(right, polygon.shell.x(i));
                top = Math.min(top, polygon.shell.y(i));
                bottom = Math.max(bottom, polygon.shell.y(i));
            }
        }
        return Optional.of(new Frame(
                Grid.millimetres(left),
                Grid.millimetres(top),
                Grid.millimetres(right - left),
                Grid.millimetres(bottom - top)));
    }

    /** Whether a place lies inside or on the outline. Looks at every edge. */
    public boolean covers(Place place) {
        return !isEmpty() && RegionMeasures.covers(this, place);
    }

    /**
     * A place on its largest part: the middle of its corners if that lies within, else a corner.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Place somewhere() {
        Ring shell = polygons.stream()
                .map(Polygon::shell)
                .max(Comparator.comparingLong(Ring::doubledArea))
                .orElseThrow(() -> new IllegalArgumentException("an empty region has no place"));
        double x = 0;
        double y = 0;
        for (int i = 0; i < shell.size(); i++) {
            x += Grid.millimetres(shell.x(i)) / shell.size();
            y += Grid.millimetres(shell.y(i)) / shell.size();
        }
        Place middle = new Place(x, y);
        return covers(middle) ? middle : new Place(Grid.millimetres(shell.x(0)), Grid.millimetres(shell.y(0)));
    }

    public Region union(Region other) {
        return union(List.of(this, other));
    }

    /** What lies in at least one of them. */
    public static Region union(List<Region> regions) {
        List<Region> some = regions.stream().filter(region -> !region.isEmpty()).toList();
        return switch (some.size()) {
            case 0 -> EMPTY;
            case 1 -> some.get(0);
            default -> RegionOverlay.union(some);
        };
    }

    /**
     * This with something small added, then something small taken away. Polygons and holes of which the patches stay clear keep all their
     * vertices, the others those that no crossing comes near.
     */
    public Region patched(Region added, Region taken) {
        Region more = added.isEmpty() ? this : RegionPatch.union(this, added);
        return taken.isEmpty() ? more : RegionPatch.difference(more, taken);
    }

    /** What lies in both. */
    public Region intersection(Region other) {
        return isEmpty() || other.isEmpty() ? EMPTY : RegionOverlay.intersection(this, other);
    }

    /** What does not lie in the other. */
    public Region minus(Region other) {
        return isEmpty() || other.isEmpty() ? this : RegionOverlay.difference(this, other);
    }

    /**
     * How much lies in one of the two alone, in square millimetres; 0 if they cover the same, or if all that sets them apart
     * is thinner than a grid step.
     */
    public double differenceMm2(Region other) {
        return equals(other) ? 0 : minus(other).areaMm2() + other.minus(this).areaMm2();
    }

    /**
     * All places at most that far from this region.
     *
     * @param millimetres 0 or more; less than a grid step does nothing
     * @param corners arcs are followed to a grid step
     * @throws IllegalArgumentException if the result would leave the grid
     * @throws IllegalStateException if the result fails its checks
     */
    public Region grown(double millimetres, Corners corners) {
        return isEmpty() ? this : RegionOffset.grown(this, millimetres, corners);
    }

    /**
     * All places inside this region at least that far from its outline; what is thinner than twice that vanishes.
     *
     * @param millimetres 0 or more; less than a grid step does nothing
     * @throws IllegalStateException if the result fails its checks
     */
    public Region shrunk(double millimetres) {
        return isEmpty() ? this : RegionOffset.shrunk(this, millimetres);
    }

    /**
     * The shortest way from one to the other, in millimetres; 0 if they touch or overlap.
     *
     * @throws IllegalArgumentException if one of them is empty
     */
    public double distanceMm(Region other) {
        if (isEmpty() || other.isEmpty()) {
            throw new IllegalArgumentException("an empty region has no distance from another");
        }
        return RegionMeasures.distanceMm(this, other);
    }

    /** Moved by whole grid steps, exactly. */
    public Region movedBy(int dx, int dy) {
        return new Region(
                polygons.stream().map(polygon -> polygon.movedBy(dx, dy)).toList());
    }

    /** Twice the area in square grid steps, exactly. */
    long doubledArea() {
        return rings().stream().mapToLong(Ring::doubledArea).sum();
    }

    static double millimetres2(long doubledSteps2) {
        return doubledSteps2 / DOUBLED_PER_MM2;
    }

    List<Ring> rings() {
        List<Ring> rings = new ArrayList<>();
        for (Polygon polygon : polygons) {
            rings.add(polygon.shell);
            rings.addAll(polygon.holes);
        }
        return rings;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Region that && polygons.equals(that.polygons);
    }

    @Override
    public int hashCode() {
        return polygons.hashCode();
    }

    @Override
    public String toString() {
        return polygons.toString();
    }
}
