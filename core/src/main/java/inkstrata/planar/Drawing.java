package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * An artwork as numbers: shapes with the topmost as 0, the clips they share, and the outlines both need, numbered in the
 * order in which shapes need them from the top.
 *
 * <p>A shape covers a place where its own outline is wound and, of each of its clips, at least one part is. An outline
 * belongs to one shape or to one clip. Clips that let through all there is of a shape in the frame are left out.
 *
 * <p>On top may lie <em>marks</em>: areas that are no paint, and that say where a stack stands for another ({@link SeamMarks}).
 *
 * @param shapes topmost first
 * @param marks how many of the first shapes are marks
 * @param ownOutline for each shape its outline
 * @param clips for each shape the numbers of its clips, each once
 * @param owner for each outline the shape it belongs to, or {@code ~clip} for a part of a clip
 * @param clipCount clips are numbered from 0
 * @param areas of the outlines
 * @param evenOdd for each outline whether its fill rule says so
 */
record Drawing(
        List<FlatShape> shapes,
        int marks,
        int[] ownOutline,
        int[][] clips,
        int[] owner,
        int clipCount,
        List<Area> areas,
        boolean[] evenOdd) {
    private static final int[] NO_CLIPS = {};

    static Drawing of(Artwork artwork) {
        List<FlatShape> shapes = new ArrayList<>(artwork.shapes());
        Collections.reverse(shapes);
        Extent frame = Extent.of(Box.of(artwork.frame()));
        int[] own = new int[shapes.size()];
        int[][] clips = new int[shapes.size()][];
        Ints owner = new Ints(shapes.size());
        List<Area> areas = new ArrayList<>();
        IdentityHashMap<Clip, Optional<Extent>> windows = new IdentityHashMap<>();
        IdentityHashMap<Clip, Integer> numbers = new IdentityHashMap<>();
        for (int s = 0; s < own.length; s++) {
            FlatShape shape = shapes.get(s);
            clips[s] = NO_CLIPS;
            if (!shape.clips().isEmpty()) {
                Extent seen = Extent.of(shape.area().outline()).within(frame);
                clips[s] = shape.clips().stream()
                        .filter(clip -> !windows.computeIfAbsent(clip, Drawing::window)
                                .filter(window -> window.holds(seen))
                                .isPresent())
                        .mapToInt(clip -> numbers.computeIfAbsent(clip, c -> number(c, numbers.size(), owner, areas)))
                        .distinct()
                        .toArray();
            }
            own[s] = areas.size();
            owner.add(s);
            areas.add(shape.area());
        }
        boolean[] evenOdd = new boolean[areas.size()];
        for (int o = 0; o < evenOdd.length; o++) {
            evenOdd[o] = areas.get(o).rule() == FillRule.EVENODD;
        }
        return new Drawing(shapes, 0, own, clips, owner.toArray(), numbers.size(), areas, evenOdd);
    }

    /**
     * The same beneath marks, the topmost first. Their outlines come after all others, so that these keep their numbers, and so that
     * an edge along which a shape and a mark run is the shape's; they are filled nonzero.
     */
    Drawing under(int newMarks) {
        FlatShape mark =
                FlatShape.opaque(new Area(Outline.builder().build(), FillRule.NONZERO), Rgb.of(0), Source.UNKNOWN);
        List<FlatShape> allShapes = new ArrayList<>(Collections.nCopies(newMarks, mark));
        allShapes.addAll(shapes);
        List<Area> allAreas = new ArrayList<>(areas);
        allAreas.addAll(Collections.nCopies(newMarks, mark.area()));
        int[] own = new int[allShapes.size()];
        int[][] allClips = new int[own.length][];
        int[] allOwners = new int[allAreas.size()];
        for (int mk = 0; mk < newMarks; mk++) {
            own[mk] = areas.size() + mk;
            allClips[mk] = NO_CLIPS;
            allOwners[own[mk]] = mk;
        }
        System.arraycopy(ownOutline, 0, own, newMarks, ownOutline.length);
        System.arraycopy(clips, 0, allClips, newMarks, clips.length);
        for (int o = 0; o < owner.length; o++) {
            allOwners[o] = owner[o] < 0 ? owner[o] : owner[o] + newMarks;
        }
        return new Drawing(
                allShapes,
                newMarks,
                own,
                allClips,
                allOwners,
                clipCount,
                allAreas,
                Arrays.copyOf(evenOdd, allOwners.length));
    }

    /** The largest upright rectangle among a clip's parts. */
    private static Optional<Extent> window(Clip clip) {
        return clip.parts().stream()
                .flatMap(part -> Extent.ofRectangle(part.outline()).stream())
                .max(Comparator.comparingDouble(Extent::area));
    }

    private static int number(Clip clip, int number, Ints owner, List<Area> areas) {
        for (Area part : clip.parts()) {
            owner.add(~number);
            areas.add(part);
        }
        return number;
    }
}
