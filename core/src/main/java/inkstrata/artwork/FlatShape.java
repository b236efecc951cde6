package inkstrata.artwork;

import inkstrata.colour.Rgb;
import java.util.List;
import java.util.Optional;

/**
 * One filled area of plain colour; a stroke, a marker or a letter is a shape of its own.
 *
 * @param area what it covers before clipping, in millimetres
 * @param colour its paint
 * @param opacity of this paint alone, more than 0 and at most 1
 * @param group the innermost group that shines through as a whole, if any
 * @param clips it shows only where all of them let it
 * @param source the element it came from
 * @param drawing the name of the drawing of its own that it belongs to; empty for the picture itself
 */
public record FlatShape(
        Area area,
        Rgb colour,
        double opacity,
        Optional<TranslucentGroup> group,
        List<Clip> clips,
        Source source,
        String drawing) {
    public FlatShape {
        clips = List.copyOf(clips);
        if (!(opacity > 0 && opacity <= 1)) {
            throw new IllegalArgumentException("opacity " + opacity + " is outside 0 (not included) to 1");
        }
    }

    /** A shape of the picture itself. */
    public FlatShape(
            Area area, Rgb colour, double opacity, Optional<TranslucentGroup> group, List<Clip> clips, Source source) {
        this(area, colour, opacity, group, clips, source, "");
    }

    /** The same, opaque, in a drawing of its own. */
    public FlatShape in(String newDrawing) {
        return new FlatShape(area, colour, 1, Optional.empty(), clips, source, newDrawing);
    }

    /** An opaque shape without clips. */
    public static FlatShape opaque(Area area, Rgb colour, Source source) {
        return new FlatShape(area, colour, 1, Optional.empty(), List.of(), source);
    }

    /** Whether what lies beneath it is hidden. */
    public boolean isOpaque() {
        return opacity == 1 && group.isEmpty();
    }
}
