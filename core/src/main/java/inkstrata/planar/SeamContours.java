package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.CurveSink;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Which segments somebody drew in one go: those of one contour, of all strokes in one paint, or of one part of a mark.
 *
 * <p>What one such thing does to itself was drawn: a slit cut into a contour, a sharp inner corner, the inside of a curl, what is left
 * between two lines in one paint, be they one element or two. Different
 * contours of a filled path may have been meant to meet, as programs that trace write all of one colour as one path.
 */
final class SeamContours {
    /** The picture's edge. */
    static final int FRAME = -1;

    private final int[] contours;

    private SeamContours(int[] contours) {
        this.contours = contours;
    }

    static SeamContours of(Drawing drawing, Segments segments) {
        int[] contours = new int[segments.size()];
        int paths = drawing.areas().size() - drawing.marks();
        Paints paints = new Paints(drawing);
        Map<Integer, Integer> lines = new HashMap<>();
        int next = 0;
        int s = 0;
        while (s < contours.length) {
            int outline = segments.outline(s);
            int end = s + 1;
            while (end < contours.length && segments.outline(end) == outline) {
                end++;
            }
            int shape = drawing.owner()[outline];
            if (outline >= paths) {
                next = numberParts(segments, s, end, next, contours);
            } else if (shape >= 0 && drawing.areas().get(outline).drawnByPen()) {
                Integer known = lines.putIfAbsent(paints.colourOf(shape), next);
                Arrays.fill(contours, s, end, known == null ? next++ : known);
            } else {
                next = number(drawing.areas().get(outline), segments, s, end, next, contours);
            }
            s = end;
        }
        return new SeamContours(contours);
    }

    /** The number of what a segment belongs to; {@link #FRAME} for none. */
    int of(int segment) {
        return segment < 0 ? FRAME : contours[segment];
    }

    private static int number(Area area, Segments segments, int first, int end, int next, int[] contours) {
        Moves moves = new Moves();
        area.outline().sendTo(moves);
        int contour = 0;
        for (int s = first; s < end; s++) {
            // The line that closes a contour has the number of the command after it.
            while (contour < moves.at.size() && moves.at.get(contour) < segments.command(s)) {
                contour++;
            }
            contours[s] = next + contour;
        }
        return next + moves.at.size() + 1;
    }

    /** A mark's segments name the part they belong to as their command. */
    private static int numberParts(Segments segments, int first, int end, int before, int[] contours) {
        int next = before;
        for (int s = first; s < end; s++) {
            if (s > first && segments.command(s) != segments.command(s - 1)) {
                next++;
            }
            contours[s] = next;
        }
        return next + 1;
    }

    /** Where contours begin. */
    private static final class Moves implements CurveSink {
        private final Ints at = new Ints(4);
        private int command;

        @Override
        public void moveTo(double x, double y) {
            at.add(command++);
        }

        @Override
        public void lineTo(double x, double y) {
            command++;
        }

        @Override
        public void quadTo(double x1, double y1, double x, double y) {
            command++;
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
            command++;
        }
    }
}
