package inkstrata.planar;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.TranslucentGroup;
import inkstrata.colour.Rgb;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * An artwork without the shapes that show nowhere, so that none of them leaves a trace: no vertex on another's outline, no stack of its own.
 *
 * <p>All shapes are mapped once, each as a paint of its own. A shape shows where it lies on top, or where all that lies over it shines
 * through. Where outlines that are left out had bent others by less than a grid step, a shape may show no more once they are gone; so
 * this is repeated until nothing more is left out, a few times at most. Shapes of drawings of their own are always kept, and hide nothing.
 *
 * @param artwork the shapes that show, in their order
 * @param swallowed the contours, of all shapes, of which rounding to the grid left nothing
 */
public record Visible(Artwork artwork, List<Swallowed> swallowed) {
    /** Once is enough but for rounding. */
    private static final int MOST_ROUNDS = 4;

    public Visible {
        swallowed = List.copyOf(swallowed);
    }

    /**
     * Leaves out what shows nowhere.
     *
     * @param artwork on the sheet
     */
    public static Visible of(Artwork artwork, MapSettings settings) {
        Visible visible = round(artwork, settings);
        for (int round = 1; round < MOST_ROUNDS; round++) {
            Artwork rest = round(visible.artwork, settings).artwork;
            if (rest.shapes().size() == visible.artwork.shapes().size()) {
                break;
            }
            visible = new Visible(rest, visible.swallowed);
        }
        return visible;
    }

    private static Visible round(Artwork artwork, MapSettings settings) {
        List<FlatShape> picture = artwork.shapes().stream()
                .filter(shape -> shape.drawing().isEmpty())
                .toList();
        List<FlatShape> numbered = new ArrayList<>();
        for (FlatShape shape : picture) {
            numbered.add(new FlatShape(
                    shape.area(), Rgb.of(numbered.size()), 1, Optional.empty(), shape.clips(), shape.source()));
        }
        boolean isPlain = picture.stream().allMatch(FlatShape::isOpaque);
        PlanarMap map = PlanarMapper.map(
                artwork.withShapes(numbered),
                settings.withDepth(isPlain ? 1 : MapSettings.ALL),
                isPlain ? UnaryOperator.identity() : stack -> shining(stack, picture));
        BitSet shows = new BitSet(picture.size());
        map.stacks()
                .forEach(stack ->
                        stack.paints().forEach(paint -> shows.set(paint.colour().packed())));
        List<FlatShape> kept = new ArrayList<>();
        int number = 0;
        for (FlatShape shape : artwork.shapes()) {
            if (!shape.drawing().isEmpty() || shows.get(number++)) {
                kept.add(shape);
            }
        }
        return new Visible(artwork.withShapes(kept), map.swallowed());
    }

    /** Of shapes over each other, top first, those that are seen: down to the first that hides all beneath it. */
    private static int[] shining(int[] stack, List<FlatShape> picture) {
        Ints seen = new Ints(8);
        List<FlatShape> over = new ArrayList<>();
        for (int number : stack) {
            FlatShape shape = picture.get(number);
            if (over.stream().noneMatch(above -> hides(above, shape)) && !isClear(shape)) {
                seen.add(number);
            }
            over.add(shape);
            if (shape.isOpaque()) {
                break;
            }
        }
        return seen.toArray();
    }

    /** Whether a shape above hides one beneath it: if it is opaque itself, and the other lies in the group that it lies in. */
    private static boolean hides(FlatShape above, FlatShape beneath) {
        if (above.opacity() < 1) {
            return false;
        }
        if (above.group().isEmpty()) {
            return true;
        }
        int around = above.group().get().number();
        for (Optional<TranslucentGroup> group = beneath.group();
                group.isPresent();
                group = group.get().outer()) {
            if (group.get().number() == around) {
                return true;
            }
        }
        return false;
    }

    /** Whether it lies in a group of which nothing is seen. */
    private static boolean isClear(FlatShape shape) {
        for (Optional<TranslucentGroup> group = shape.group();
                group.isPresent();
                group = group.get().outer()) {
            if (group.get().opacity() == 0) {
                return true;
            }
        }
        return false;
    }
}
