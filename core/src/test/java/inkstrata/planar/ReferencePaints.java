package inkstrata.planar;

import inkstrata.artwork.FlatShape;
import inkstrata.artwork.TranslucentGroup;
import inkstrata.colour.Rgb;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The paints at one place, from the shapes there: source-over compositing written down plainly (Compositing and Blending
 * Level 1, section 5.1), groups first on their own and then as one.
 */
final class ReferencePaints {
    private ReferencePaints() {}

    /**
     * Each shape that stands alone and each outermost group adds the colour that results; of equal ones the topmost counts.
     *
     * @param shapes lowest first
     */
    static PaintStack of(List<FlatShape> shapes, Rgb backdrop) {
        double[] canvas = {backdrop.red(), backdrop.green(), backdrop.blue(), 1};
        List<Paint> paints = new ArrayList<>();
        for (List<FlatShape> layer : layers(shapes, 0)) {
            lay(layer, 0, canvas);
            paints.add(new Paint(new Rgb(eightBits(canvas[0]), eightBits(canvas[1]), eightBits(canvas[2]))));
        }
        Collections.reverse(paints);
        return new PaintStack(paints.stream().distinct().toList());
    }

    /** Lays one layer, a shape or a group, on a canvas with premultiplied colours. */
    private static void lay(List<FlatShape> layer, int depth, double[] canvas) {
        List<TranslucentGroup> around = around(layer.get(0));
        if (around.size() == depth) {
            FlatShape shape = layer.get(0);
            Rgb colour = shape.colour();
            over(new double[] {colour.red(), colour.green(), colour.blue(), 1}, shape.opacity(), canvas);
            return;
        }
        double[] group = new double[4];
        for (List<FlatShape> inner : layers(layer, depth + 1)) {
            lay(inner, depth + 1, group);
        }
        over(group, around.get(depth).opacity(), canvas);
    }

    private static void over(double[] source, double opacity, double[] canvas) {
        double rest = 1 - source[3] * opacity;
        for (int i = 0; i < 4; i++) {
            canvas[i] = source[i] * opacity + canvas[i] * rest;
        }
    }

    /** Runs of shapes in the same group at that depth; a shape not in one stands alone. */
    private static List<List<FlatShape>> layers(List<FlatShape> shapes, int depth) {
        List<List<FlatShape>> layers = new ArrayList<>();
        int before = -1;
        for (FlatShape shape : shapes) {
            List<TranslucentGroup> around = around(shape);
            int group = around.size() > depth ? around.get(depth).number() : -1;
            if (group < 0 || group != before) {
                layers.add(new ArrayList<>());
            }
            layers.get(layers.size() - 1).add(shape);
            before = group;
        }
        return layers;
    }

    private static List<TranslucentGroup> around(FlatShape shape) {
        List<TranslucentGroup> groups = new ArrayList<>();
        for (Optional<TranslucentGroup> g = shape.group();
                g.isPresent();
                g = g.get().outer()) {
            groups.add(0, g.get());
        }
        return groups;
    }

    private static int eightBits(double channel) {
        return (int) Math.floor(channel + 0.5);
    }
}
