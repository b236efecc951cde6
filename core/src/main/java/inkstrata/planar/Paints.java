package inkstrata.planar;

import inkstrata.artwork.FlatShape;
import inkstrata.colour.Rgb;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The paints of a drawing's shapes, numbered, and which shapes hide what lies beneath them.
 *
 * <p>A paint is packed into an int: sRGB in the low 24 bits, above it the number of its drawing, 0 for the picture itself. A mark of a
 * {@link Drawing} is packed into an int below 0 and is no paint: it hides nothing and does not count in how deep stacks are.
 */
final class Paints {
    private static final int COLOUR_BITS = 24;
    private static final int COLOUR = (1 << COLOUR_BITS) - 1;
    private static final int MOST_DRAWINGS = 127;

    private final int marks;
    private final int[] colourOf;
    private final boolean[] opaque;
    private final boolean allOpaque;
    private final int[] packed;
    private final List<String> drawings = new ArrayList<>();

    /** Of a drawing's shapes. */
    Paints(Drawing drawing) {
        List<FlatShape> shapes = drawing.shapes();
        marks = drawing.marks();
        colourOf = new int[shapes.size()];
        opaque = new boolean[shapes.size()];
        Map<Integer, Integer> numbers = new HashMap<>();
        Ints distinct = new Ints(16);
        drawings.add("");
        boolean all = true;
        for (int s = 0; s < colourOf.length; s++) {
            FlatShape shape = shapes.get(s);
            int paint = s < marks ? ~s : packed(shape);
            Integer number = numbers.putIfAbsent(paint, distinct.size());
            if (number == null) {
                number = distinct.size();
                distinct.add(paint);
            }
            colourOf[s] = number;
            opaque[s] = shape.isOpaque();
            all &= opaque[s];
        }
        allOpaque = all;
        packed = distinct.toArray();
    }

    /** How many of the topmost shapes are marks. */
    int marks() {
        return marks;
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

    /** A paint in one int. */
    int packed(int number) {
        return packed[number];
    }

    /** What an int stands for. */
    Paint paint(int packedPaint) {
        return new Paint(Rgb.of(packedPaint & COLOUR), drawings.get(packedPaint >>> COLOUR_BITS));
    }

    /** A paint of the drawing in one int. */
    int packed(Paint paint) {
        return drawings.indexOf(paint.drawing()) << COLOUR_BITS | paint.colour().packed();
    }

    private int packed(FlatShape shape) {
        int drawing = drawings.indexOf(shape.drawing());
        if (drawing < 0) {
            drawing = drawings.size();
            drawings.add(shape.drawing());
        }
        if (drawing > MOST_DRAWINGS) {
            throw new IllegalArgumentException("more than " + MOST_DRAWINGS + " drawings of their own in one artwork");
        }
        return drawing << COLOUR_BITS | shape.colour().packed();
    }
}
