package inkstrata.samples;

import static java.nio.charset.StandardCharsets.UTF_8;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * A random drawing of overlapping, self-crossing, clipped shapes, as the shop sees it and as an SVG file; one user unit is 1 mm.
 *
 * @param artwork as the reader would give it
 * @param svg the same as a file
 */
record GeneratedDrawing(Artwork artwork, byte[] svg) {
    private static final int SIDE = 80;

    static GeneratedDrawing of(long seed) {
        Random random = new Random(seed);
        List<Rgb> colours = new ArrayList<>();
        int inks = 2 + random.nextInt(7);
        for (int i = 0; i < inks; i++) {
            colours.add(i == 0 ? Rgb.WHITE : Rgb.of(random.nextInt(1 << 24)));
        }
        List<FlatShape> shapes = new ArrayList<>();
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns='http://www.w3.org/2000/svg' width='%dmm' height='%dmm' viewBox='0 0 %d %d'>",
                SIDE,
                SIDE,
                SIDE,
                SIDE));
        List<Clip> clips = clips(random, svg);
        int count = 1 + random.nextInt(40);
        for (int i = 0; i < count; i++) {
            Rgb colour = colours.get(random.nextInt(inks));
            List<Clip> worn = new ArrayList<>();
            for (int depth = random.nextInt(5) - 2; depth > 0; depth--) {
                int clip = random.nextInt(clips.size());
                worn.add(clips.get(clip));
                svg.append("<g clip-path='url(#clip").append(clip).append(")'>");
            }
            Area area = area(random, "fill='" + colour + "' fill-rule", true, svg);
            svg.append("</g>".repeat(worn.size())).append('\n');
            shapes.add(new FlatShape(area, colour, 1, Optional.empty(), worn, Source.UNKNOWN));
        }
        svg.append("</svg>");
        Artwork artwork = new Artwork("generated-" + seed + ".svg", new Frame(0, 0, SIDE, SIDE), shapes, List.of());
        return new GeneratedDrawing(artwork, svg.toString().getBytes(UTF_8));
    }

    /** With straight lines alone: jsvg cuts by {@link java.awt.geom.Area}, which takes minutes over crossing curves. */
    private static List<Clip> clips(Random random, StringBuilder svg) {
        List<Clip> clips = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            List<Area> parts = new ArrayList<>();
            svg.append("<clipPath id='clip").append(i).append("'>");
            for (int j = random.nextInt(2); j >= 0; j--) {
                parts.add(area(random, "clip-rule", false, svg));
            }
            svg.append("</clipPath>\n");
            clips.add(new Clip(parts));
        }
        return clips;
    }

    /** Contours under either fill rule; {@code rule} is what the rule's attribute is called, with others before it. */
    private static Area area(Random random, String rule, boolean curved, StringBuilder svg) {
        FillRule fill = random.nextBoolean() ? FillRule.NONZERO : FillRule.EVENODD;
        svg.append("<path ").append(rule).append(fill == FillRule.EVENODD ? "='evenodd' d='" : "='nonzero' d='");
        Outline.Builder outline = Outline.builder();
        for (int contours = 1 + random.nextInt(3); contours > 0; contours--) {
            contour(random, curved, outline, svg);
        }
        svg.append("'/>");
        return new Area(outline.build(), fill);
    }

    private static void contour(Random random, boolean curved, Outline.Builder outline, StringBuilder svg) {
        double size = Math.pow(10, random.nextDouble() * 2);
        double left = random.nextDouble() * (SIDE + 20) - 10 - size / 2;
        double top = random.nextDouble() * (SIDE + 20) - 10 - size / 2;
        int pieces = 2 + random.nextInt(6);
        double[] p = new double[2 + pieces * 6];
        for (int i = 0; i < p.length; i++) {
            double place = (i % 2 == 0 ? left : top) + random.nextDouble() * size;
            // Three decimals, so that file and outline hold the same numbers; some of them whole, to meet each other.
            p[i] = random.nextInt(5) == 0 ? Math.rint(place) : Math.rint(place * 1000) / 1000;
        }
        outline.moveTo(p[0], p[1]);
        svg.append('M').append(p[0]).append(' ').append(p[1]);
        for (int i = 0; i < pieces; i++) {
            int at = 2 + 6 * i;
            if (curved && random.nextInt(3) == 0) {
                outline.cubicTo(p[at], p[at + 1], p[at + 2], p[at + 3], p[at + 4], p[at + 5]);
                svg.append('C');
                for (int j = at; j < at + 6; j++) {
                    svg.append(' ').append(p[j]);
                }
            } else {
                outline.lineTo(p[at], p[at + 1]);
                svg.append('L').append(p[at]).append(' ').append(p[at + 1]);
            }
        }
        svg.append('Z');
    }
}
