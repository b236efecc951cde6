package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * An artwork as numbers: shapes with the topmost as 0, and the outlines they need, numbered in the order in which shapes
 * need them from the top.
 *
 * <p>A shape covers a place where its own outline is wound and, of each of its clips, at least one part is. Without clips shape
 * and outline numbers are the same.
 *
 * @param shapes topmost first
 * @param ownOutline for each shape its outline
 * @param clips for each shape its clips, each a list of outlines of which one must be wound; null for no clips
 * @param areas of the outlines
 */
record Drawing(List<FlatShape> shapes, int[] ownOutline, int[][][] clips, List<Area> areas) {
    static Drawing of(Artwork artwork) {
        List<FlatShape> shapes = new ArrayList<>(artwork.shapes());
        Collections.reverse(shapes);
        int[] own = new int[shapes.size()];
        int[][][] clips = new int[shapes.size()][][];
        List<Area> areas = new ArrayList<>();
        IdentityHashMap<Clip, int[]> numbered = new IdentityHashMap<>();
        for (int s = 0; s < own.length; s++) {
            FlatShape shape = shapes.get(s);
            if (!shape.clips().isEmpty()) {
                clips[s] = shape.clips().stream()
                        .map(clip -> numbered.computeIfAbsent(clip, c -> number(c, areas)))
                        .toArray(int[][]::new);
            }
            own[s] = areas.size();
            areas.add(shape.area());
        }
        return new Drawing(shapes, own, clips, areas);
    }

    boolean evenOdd(int outline) {
        return areas.get(outline).rule() == FillRule.EVENODD;
    }

    private static int[] number(Clip clip, List<Area> areas) {
        int[] parts = new int[clip.parts().size()];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = areas.size();
            areas.add(clip.parts().get(i));
        }
        return parts;
    }
}
