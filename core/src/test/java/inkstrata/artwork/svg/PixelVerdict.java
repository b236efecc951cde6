package inkstrata.artwork.svg;

import java.util.Locale;

/**
 * Whether two pictures of one drawing are the same but for how edges are smoothed.
 *
 * <p>Renderers agree on a pixel that one colour covers, and differ on one that an edge runs through: by how finely they
 * sample it, and by what shimmers through where two shapes meet. So every pixel has to lie, channel by channel, between the
 * least and the greatest of the 3 x 3 pixels around it in the expected picture, give or take {@link #ROUNDING}; where those
 * are of one colour it has to have that colour. Of the other pixels, those by edges, few may be farther than {@link #SAMPLING}
 * from the expected pixel.
 */
final class PixelVerdict {
    static final String SAME = "the same picture";

    /** Renderers round what shines through after each layer, we at the end. */
    static final int ROUNDING = 2;

    /** What averaged pixels may be off by at an edge: a sixth of the whole scale, as if sampled six times each way. */
    private static final int SAMPLING = 40;

    /** Of the pixels by edges: where two edges meet in a pixel, shares multiply in one picture and not in the other. */
    private static final double MOST_SAMPLED = 0.04;

    private PixelVerdict() {}

    /** {@link #SAME}, or how many pixels differ and where the first of them lies. */
    static String of(SmoothPicture picture, SmoothPicture expected) {
        if (picture.width() != expected.width() || picture.height() != expected.height()) {
            return "is " + picture.width() + " x " + picture.height() + " pixels, not " + expected.width() + " x "
                    + expected.height();
        }
        int wrong = 0;
        int edges = 0;
        int sampled = 0;
        String first = "";
        for (int y = 0; y < expected.height(); y++) {
            for (int x = 0; x < expected.width(); x++) {
                int at = y * expected.width() + x;
                int beyond = 0;
                int range = 0;
                int off = 0;
                for (int shift = 0; shift <= 16; shift += 8) {
                    int[] around = around(expected, x, y, shift);
                    int value = picture.rgb()[at] >> shift & 0xff;
                    range = Math.max(range, around[1] - around[0]);
                    beyond = Math.max(beyond, Math.max(around[0] - value, value - around[1]));
                    off = Math.max(off, Math.abs(value - (expected.rgb()[at] >> shift & 0xff)));
                }
                edges += range > ROUNDING ? 1 : 0;
                sampled += range > ROUNDING && off > SAMPLING ? 1 : 0;
                if (beyond > ROUNDING) {
                    wrong++;
                    if (first.isEmpty()) {
                        first = String.format(
                                Locale.ROOT,
                                ", first at %d, %d: #%06x, not #%06x",
                                x,
                                y,
                                picture.rgb()[at],
                                expected.rgb()[at]);
                    }
                }
            }
        }
        if (wrong > 0) {
            return wrong + " pixels differ" + first;
        }
        return sampled > MOST_SAMPLED * edges ? sampled + " of " + edges + " pixels by edges differ" : SAME;
    }

    /** The least and the greatest of a channel among a pixel and its neighbours. */
    private static int[] around(SmoothPicture picture, int x, int y, int shift) {
        int least = 255;
        int greatest = 0;
        for (int row = Math.max(0, y - 1); row <= Math.min(picture.height() - 1, y + 1); row++) {
            for (int column = Math.max(0, x - 1); column <= Math.min(picture.width() - 1, x + 1); column++) {
                int value = picture.rgb()[row * picture.width() + column] >> shift & 0xff;
                least = Math.min(least, value);
                greatest = Math.max(greatest, value);
            }
        }
        return new int[] {least, greatest};
    }
}
