package inkstrata.planar;

import inkstrata.artwork.Artwork;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Areas of a map that have grown into others along the edges they share, and around the points in which they only meet: by a
 * width, within what they grow into and may lie over, without what is cut off from there, such as parts reached across
 * something else.
 *
 * <p>All areas are mapped once more together with a {@link Corridor} along each border; so everything lies on the grid, work
 * grows as it does for a map, and neighbours share vertices. Vertices of the areas are kept; where a corridor's side comes
 * within half a grid step of an edge, or cuts it, that edge bends to the nearest point of the grid.
 */
public final class Spreading {
    private final List<StackSet> areas;
    private final SpreadStacks stacks;
    private final EdgeTable edges;
    private final double[] borderMm;
    private final boolean[] isAnywhere;
    private final int threads;

    private Spreading(
            List<StackSet> areas,
            SpreadStacks stacks,
            EdgeTable edges,
            double[] borderMm,
            boolean[] isAnywhere,
            int threads) {
        this.areas = areas;
        this.stacks = stacks;
        this.edges = edges;
        this.borderMm = borderMm;
        this.isAnywhere = isAnywhere;
        this.threads = threads;
    }

    /**
     * Spreads them all.
     *
     * @param areas may overlap
     * @param spreads no two of one area into the same stack
     * @param mitreLimit where corners are mitred, how many widths a corner may reach at most, 1 or more
     */
    public static Spreading of(
            PlanarMap map, List<StackSet> areas, List<Spread> spreads, Corners corners, double mitreLimit) {
        List<StackSet> sets = new ArrayList<>(areas);
        for (Spread spread : spreads) {
            sets.add(spread.from());
            sets.add(spread.into());
            sets.add(spread.over());
        }
        StackKinds kinds = StackKinds.of(map.stacks().size(), sets);
        try (Crew crew = new Crew(map.threads())) {
            Borderlines lines = Borderlines.of(map.edges(), kinds.kindOfStack(), crew);
            SpreadBorders borders = new SpreadBorders(lines, kinds, areas, spreads, crew);
            List<BorderChain> chains = borders.chains();
            double[] borderMm = new double[spreads.size()];
            chains.forEach(chain -> borderMm[chain.spread()] += chain.lengthMm());
            List<Contact> contacts = borders.contacts();
            boolean[] isAnywhere = new boolean[spreads.size()];
            chains.forEach(chain -> isAnywhere[chain.spread()] = true);
            contacts.forEach(contact -> isAnywhere[contact.spread()] = true);
            Artwork drawing =
                    SpreadDrawing.of(map.frame(), lines, kinds.count(), chains, contacts, spreads, corners, mitreLimit);
            PlanarMap mapped = PlanarMapper.map(
                    drawing,
                    MapSettings.DEFAULT.withThreads(map.threads()),
                    SpreadStacks.meaning(kinds, areas, spreads));
            SpreadStacks stacks = new SpreadStacks(mapped.stacks(), kinds, areas, spreads);
            EdgeTable edges = Strays.leftOut(mapped.edges(), stacks, Set.copyOf(contacts), areas.size(), crew);
            return new Spreading(List.copyOf(areas), stacks, edges, borderMm, isAnywhere, map.threads());
        }
    }

    /** How long the edges are along which something spreads. */
    public double borderMm(int spread) {
        return borderMm[spread];
    }

    /** Whether it spreads anywhere: along edges, or around points in which it only meets what it spreads into. */
    public boolean isAnywhere(int spread) {
        return isAnywhere[spread];
    }

    /** An area with all it has gained. */
    public Region grown(int area) {
        try (Crew crew = new Crew(threads)) {
            return Dissolving.dissolve(edges, stacks.grown(area, areas.get(area)), 1, crew)
                    .get(0);
        }
    }
}
