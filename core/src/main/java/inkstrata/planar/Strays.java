package inkstrata.planar;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Finds the parts of what an area gains that share no edge with what they spread from and do not meet it in a point of
 * contact: corridors reach across whatever lies in their way.
 */
final class Strays {
    private final EdgeTable edges;
    private final SpreadStacks stacks;
    private final Set<Contact> contacts;
    private final int area;
    private final Borderlines lines;

    private Strays(EdgeTable edges, SpreadStacks stacks, Set<Contact> contacts, int area, Crew crew) {
        this.edges = edges;
        this.stacks = stacks;
        this.contacts = contacts;
        this.area = area;
        this.lines = Borderlines.of(edges, stacks.gained(area), crew);
    }

    /** The same edges; those around stray parts of what areas gain say that these do not spread there. */
    static EdgeTable leftOut(EdgeTable edges, SpreadStacks stacks, Set<Contact> contacts, int areas, Crew crew) {
        // What one area loses has no say in what another does.
        List<int[]> strays = crew
                .share(
                        areas,
                        (first, end) -> IntStream.range(first, end)
                                .mapToObj(area -> new Strays(edges, stacks, contacts, area, crew).halves(crew))
                                .toList())
                .stream()
                .flatMap(List::stream)
                .toList();
        if (strays.stream().allMatch(halves -> halves.length == 0)) {
            return edges;
        }
        EdgeTable rest = new EdgeTable(
                edges.x(),
                edges.y(),
                edges.from(),
                edges.to(),
                edges.left().clone(),
                edges.right().clone(),
                edges.source());
        for (int area = 0; area < areas; area++) {
            for (int half : strays.get(area)) {
                int[] side = side(rest, half);
                side[half >> 1] = stacks.without(side[half >> 1], area);
            }
        }
        return rest;
    }

    /** The half-edges of the table, 2e along edge e and 2e + 1 against it, that have a stray part of what the area gains on their left. */
    private int[] halves(Crew crew) {
        boolean[] isHeld = heldWalks();
        if (!areIn(isHeld)) {
            return new int[0];
        }
        boolean[] isPartHeld = heldInteriors(isHeld, crew);
        return IntStream.range(0, lines.size())
                .filter(h -> lines.kind(h) != Borderlines.NONE && !isPartHeld[lines.walkOf(h)])
                .map(h -> 2 * lines.edge(h) + (h & 1))
                .toArray();
    }

    /** For each walk whether it runs along something that it spreads from, or meets that in a point of contact. */
    private boolean[] heldWalks() {
        boolean[] isHeld = new boolean[lines.walkCount()];
        for (int h = 0; h < lines.size(); h++) {
            if (lines.kind(h) != Borderlines.NONE && !isHeld[lines.walkOf(h)]) {
                isHeld[lines.walkOf(h)] = isHeldAt(h);
            }
        }
        return isHeld;
    }

    private boolean isHeldAt(int half) {
        int edge = lines.edge(half);
        int beside = side(edges, half ^ 1)[edge];
        return stacks.spreadsOver(side(edges, half)[edge], area)
                .anyMatch(spread -> stacks.isFrom(spread, beside) || isContact(spread, lines.origin(half)));
    }

    private boolean isContact(int spread, int vertex) {
        return !contacts.isEmpty() && contacts.contains(new Contact(spread, lines.x(vertex), lines.y(vertex)));
    }

    /** Whether the outer walk around some part is not held; a walk around a hole in it may be. */
    private boolean areIn(boolean[] isHeld) {
        for (int walk = 0; walk < isHeld.length; walk++) {
            boolean isPart = lines.kind(lines.firstOfWalk(walk)) != Borderlines.NONE && lines.doubledArea(walk) > 0;
            if (isPart && !isHeld[walk]) {
                return true;
            }
        }
        return false;
    }

    /** For each walk whether any walk around the same part is held. */
    private boolean[] heldInteriors(boolean[] isHeld, Crew crew) {
        Interiors interiors = Interiors.of(lines, crew);
        boolean[] isPartHeld = new boolean[isHeld.length];
        for (int walk = 0; walk < isHeld.length; walk++) {
            isPartHeld[interiors.of(walk)] |= isHeld[walk];
        }
        for (int walk = 0; walk < isHeld.length; walk++) {
            isPartHeld[walk] = isPartHeld[interiors.of(walk)];
        }
        return isPartHeld;
    }

    /** The stacks on the left of half-edges that run as that one does along its edge. */
    private static int[] side(EdgeTable edges, int half) {
        return (half & 1) == 0 ? edges.left() : edges.right();
    }
}
