package inkstrata.planar;

import inkstrata.artwork.FlatShape;
import inkstrata.artwork.TranslucentGroup;
import inkstrata.colour.Rgb;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Stacks where shapes shine through: from the bottom up, each shape that stands alone and each outermost group adds the flat
 * colour that results when it is laid over all beneath it.
 *
 * <p>Shapes of drawings of their own stand for themselves and neither shine through nor are shone through.
 *
 * <p>Source-over in sRGB as coded (Compositing and Blending Level 1, section 5.1; SVG 2 renders in sRGB unless told otherwise);
 * within groups with premultiplied alpha. Doubles throughout, each colour rounded to 8 bits when it is added.
 */
final class TranslucentStacker implements Stacker {
    private final List<FlatShape> all;
    private final Paints paints;
    private final int depth;
    private final Rgb backdrop;

    TranslucentStacker(List<FlatShape> all, Paints paints, int depth, Rgb backdrop) {
        this.all = all;
        this.paints = paints;
        this.depth = depth;
        this.backdrop = backdrop;
    }

    @Override
    public int[] stack(int[] shapes, long[] covers) {
        List<Integer> results = new ArrayList<>();
        List<Integer> marks = new ArrayList<>();
        List<Layer> open = new ArrayList<>();
        open.add(Layer.opaque(backdrop));
        List<TranslucentGroup> groups = new ArrayList<>();
        for (int word = covers.length - 1; word >= 0; word--) {
            for (long rest = covers[word]; rest != 0; ) {
                int bit = 63 - Long.numberOfLeadingZeros(rest);
                rest &= ~(1L << bit);
                int number = shapes[word * 64 + bit];
                FlatShape shape = all.get(number);
                if (number < paints.marks()) {
                    marks.add(paints.packed(paints.colourOf(number)));
                    continue;
                }
                if (!shape.drawing().isEmpty()) {
                    results.add(paints.packed(paints.colourOf(number)));
                    continue;
                }
                enter(around(shape), groups, open, results);
                open.get(open.size() - 1).over(shape.colour(), shape.opacity());
                if (groups.isEmpty()) {
                    results.add(open.get(0).packed());
                }
            }
        }
        enter(List.of(), groups, open, results);
        Collections.reverse(results);
        Collections.reverse(marks);
        Set<Integer> distinct = new LinkedHashSet<>(results);
        return Stream.concat(marks.stream(), distinct.stream().limit(depth))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Closes groups that do not go on and opens those that begin. */
    private static void enter(
            List<TranslucentGroup> wanted, List<TranslucentGroup> groups, List<Layer> open, List<Integer> results) {
        int same = 0;
        while (same < groups.size()
                && same < wanted.size()
                && groups.get(same).number() == wanted.get(same).number()) {
            same++;
        }
        while (groups.size() > same) {
            TranslucentGroup closing = groups.remove(groups.size() - 1);
            Layer layer = open.remove(open.size() - 1);
            open.get(open.size() - 1).over(layer, closing.opacity());
            if (groups.isEmpty()) {
                results.add(open.get(0).packed());
            }
        }
        for (TranslucentGroup opening : wanted.subList(same, wanted.size())) {
            groups.add(opening);
            open.add(Layer.clear());
        }
    }

    /** The groups around a shape, outermost first. */
    private static List<TranslucentGroup> around(FlatShape shape) {
        List<TranslucentGroup> chain = new ArrayList<>();
        TranslucentGroup group = shape.group().orElse(null);
        while (group != null) {
            chain.add(group);
            group = group.outer().orElse(null);
        }
        Collections.reverse(chain);
        return chain;
    }

    /** A colour in the making, premultiplied: channels 0 to 255, so that halves come out exactly and round up; alpha 0 to 1. */
    private static final class Layer {
        private double red;
        private double green;
        private double blue;
        private double alpha;

        static Layer clear() {
            return new Layer();
        }

        static Layer opaque(Rgb colour) {
            Layer layer = new Layer();
            layer.over(colour, 1);
            return layer;
        }

        void over(Rgb colour, double opacity) {
            lay(colour.red() * opacity, colour.green() * opacity, colour.blue() * opacity, opacity);
        }

        void over(Layer group, double opacity) {
            lay(group.red * opacity, group.green * opacity, group.blue * opacity, group.alpha * opacity);
        }

        private void lay(double r, double g, double b, double a) {
            red = r + red * (1 - a);
            green = g + green * (1 - a);
            blue = b + blue * (1 - a);
            alpha = a + alpha * (1 - a);
        }

        int packed() {
            return eightBits(red) << 16 | eightBits(green) << 8 | eightBits(blue);
        }

        private static int eightBits(double channel) {
            return (int) Math.max(0, Math.min(255, Math.floor(channel + 0.5)));
        }
    }
}
