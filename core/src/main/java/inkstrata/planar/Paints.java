package inkstrata.planar;

import inkstrata.artwork.FlatShape;
import inkstrata.colour.Rgb;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The colours of a drawing's shapes, numbered, and which shapes hide what lies beneath them. */
final class Paints {
    private final int[] colourOf;
    private final boolean[] opaque;
    private final boolean allOpaque;
    private final int[] packed;

    /** Topmost shape first, as in {@link Drawing}. */
    Paints(List<FlatShape> shapes) {
        colourOf = new int[shapes.size()];
        opaque = new boolean[shapes.size()];
        Map<Rgb, Integer> numbers = new HashMap<>();
        List<Rgb> colours = new ArrayList<>();
        boolean all = true;
        for (int s = 0; s < colourOf.length; s++) {
            FlatShape shape = shapes.get(s);
            Integer number = numbers.putIfAbsent(shape.colour(), colours.size());
            if (number == null) {
                number = colours.size();
                colours.add(shape.colour());
            }
            colourOf[s] = number;
            opaque[s] = shape.isOpaque();
            all &= opaque[s];
        }
        allOpaque = all;
        packed = colours.stream().mapToInt(Rgb::packed).toArray();
    }

    int colourOf(int shape) {
        return colourOf[shape];
    }

    boolean isOpaque(int shape) {
        return opaque[shape];
    }

    boolean allOpaque() {
        return allOpaque;
    }

    int colourCount() {
        return packed.length;
    }

    /** A colour as packed sRGB. */
    int packed(int number) {
        return packed[number];
    }
}
