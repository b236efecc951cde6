package inkstrata.positive.page.read;

import inkstrata.artwork.Area;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.film.Opacity;
import java.util.ArrayList;
import java.util.List;

/**
 * Pixels become shapes, row by row: one of all that prints, and over it one of what is neither black nor clear, in its commonest shade.
 *
 * <p>Shades are grey, 0 black to 255 clear.
 */
final class Tracing {
    /** Straightened outlines of a whole film; line art stays far below. */
    private static final int MOST_POINTS = 6_000_000;

    private static final int SHADES = 256;

    private final int width;
    private final long[] count = new long[SHADES];
    private final PixelContours printing;
    private final PixelContours darkStain;
    private final PixelContours lightStain;
    private final long[] prints;
    private final long[] dark;
    private final long[] light;
    private final boolean[] isPrinting = new boolean[SHADES];
    private final boolean[] isDark = new boolean[SHADES];
    private final boolean[] isLight = new boolean[SHADES];

    Tracing(int width) {
        this.width = width;
        int words = (width + 63) / 64;
        prints = new long[words];
        dark = new long[words];
        light = new long[words];
        printing = new PixelContours(width);
        darkStain = new PixelContours(width);
        lightStain = new PixelContours(width);
        for (int shade = 0; shade < SHADES; shade++) {
            Opacity opacity = Opacity.of(grey(shade));
            isPrinting[shade] = opacity.prints();
            isDark[shade] = opacity.isStain() && opacity.prints();
            isLight[shade] = opacity.isStain() && !opacity.prints();
        }
    }

    /** Where a place in the image, in pixels, comes to lie, in millimetres: x to a·x + c·y + e, y to b·x + d·y + f. */
    record Placing(double a, double b, double c, double d, double e, double f) {
        static Placing scaled(double xMm, double yMm) {
            return new Placing(xMm, 0, 0, yMm, 0, 0);
        }
    }

    /** Takes the next row: a shade for each pixel. */
    void shades(byte[] shades) {
        for (int word = 0; word < prints.length; word++) {
            long allPrints = 0;
            long allDark = 0;
            long allLight = 0;
            int from = word << 6;
            int to = Math.min(width, from + 64);
            for (int i = to - 1; i >= from; i--) {
                int shade = shades[i] & 0xff;
                count[shade]++;
                allPrints = allPrints << 1 | (isPrinting[shade] ? 1 : 0);
                allDark = allDark << 1 | (isDark[shade] ? 1 : 0);
                allLight = allLight << 1 | (isLight[shade] ? 1 : 0);
            }
            prints[word] = allPrints;
            dark[word] = allDark;
            light[word] = allLight;
        }
        printing.row(prints);
        darkStain.row(dark);
        lightStain.row(light);
    }

    /**
     * Takes the next row of one bit a pixel, the leftmost the highest bit of a byte.
     *
     * @param isBlack whether ones are black; else noughts are
     */
    void bits(byte[] bits, int offset, boolean isBlack) {
        for (int word = 0; word < prints.length; word++) {
            long packed = 0;
            int from = offset + 8 * word;
            int most = offset + (width + 7) / 8;
            for (int i = 0; i < 8; i++) {
                packed = packed << 8 | (from + i < most ? bits[from + i] & 0xff : 0);
            }
            long leftLowest = Long.reverse(isBlack ? packed : ~packed);
            int left = width - (word << 6);
            prints[word] = left >= 64 ? leftLowest : leftLowest & ((1L << left) - 1);
        }
        printing.row(prints);
    }

    /** Ends the image. */
    List<FlatShape> shapes(Placing placing) {
        List<FlatShape> shapes = new ArrayList<>();
        add(printing, Rgb.BLACK, placing, shapes);
        add(darkStain, commonest(isDark), placing, shapes);
        add(lightStain, commonest(isLight), placing, shapes);
        return shapes;
    }

    /** What prints, in a paint of its own. */
    Area stencil(Placing placing) {
        return new Area(outline(printing, placing), FillRule.NONZERO);
    }

    private static void add(PixelContours contours, Rgb colour, Placing placing, List<FlatShape> shapes) {
        Outline outline = outline(contours, placing);
        if (!outline.isEmpty()) {
            shapes.add(FlatShape.opaque(new Area(outline, FillRule.NONZERO), colour, Source.UNKNOWN));
        }
    }

    private static Outline outline(PixelContours contours, Placing placing) {
        Outline.Builder outline = Outline.builder();
        CurveSink placed = new CurveSink() {
            private int points;

            @Override
            public void moveTo(double x, double y) {
                counted();
                outline.moveTo(placedX(x, y), placedY(x, y));
            }

            @Override
            public void lineTo(double x, double y) {
                counted();
                outline.lineTo(placedX(x, y), placedY(x, y));
            }

            @Override
            public void quadTo(double x1, double y1, double x, double y) {
                throw new IllegalStateException("pixels have no curves");
            }

            @Override
            public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
                throw new IllegalStateException("pixels have no curves");
            }

            private void counted() {
                if (++points > MOST_POINTS) {
                    throw new PixelContours.TooManyException();
                }
            }

            private double placedX(double x, double y) {
                return placing.a() * x + placing.c() * y + placing.e();
            }

            private double placedY(double x, double y) {
                return placing.b() * x + placing.d() * y + placing.f();
            }
        };
        contours.end(corners -> StraightSteps.draw(corners, placed));
        return outline.build();
    }

    private Rgb commonest(boolean[] asked) {
        int best = 0;
        for (int shade = 0; shade < SHADES; shade++) {
            if (asked[shade] && (!asked[best] || count[shade] > count[best])) {
                best = shade;
            }
        }
        return grey(best);
    }

    static Rgb grey(int shade) {
        return new Rgb(shade, shade, shade);
    }
}
