package inkstrata.positive.page.read;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
import java.awt.image.MultiPixelPackedSampleModel;
import java.awt.image.Raster;

/** The shades of an image's pixels, as seen on white. */
final class PixelShades {
    private static final int WHITE = 255;

    private PixelShades() {}

    /** Hands over all rows of a band. */
    static void send(BufferedImage band, Tracing to, String name) {
        if (isPlainBits(band)) {
            bits(band, to);
            return;
        }
        Raster raster = band.getRaster();
        int[] shadeOf = band.getColorModel() instanceof IndexColorModel colours ? palette(colours) : null;
        int bands = raster.getNumBands();
        int bits = raster.getSampleModel().getSampleSize(0);
        if ((shadeOf == null && bits != 8 && bits != 16) || bands > 4) {
            throw new ArtworkException(
                    name,
                    Source.UNKNOWN,
                    "its pixels of " + bits + " bits in " + bands + " channels are nothing that a film is made of.",
                    "Output it with one bit a pixel.");
        }
        byte[] row = new byte[band.getWidth()];
        int[] samples = new int[band.getWidth() * bands];
        for (int y = 0; y < band.getHeight(); y++) {
            raster.getPixels(raster.getMinX(), raster.getMinY() + y, band.getWidth(), 1, samples);
            for (int x = 0; x < row.length; x++) {
                row[x] = (byte) (shadeOf == null ? shade(samples, x * bands, bands, bits - 8) : shadeOf[samples[x]]);
            }
            to.shades(row);
        }
    }

    /** Of grey, grey with opacity, red green blue, or these with opacity. */
    private static int shade(int[] samples, int at, int bands, int shift) {
        boolean isGrey = bands < 3;
        int grey = isGrey
                ? samples[at] >> shift
                : Shade.of(samples[at] >> shift, samples[at + 1] >> shift, samples[at + 2] >> shift);
        return bands % 2 == 1 ? grey : on(grey, samples[at + bands - 1] >> shift);
    }

    private static int[] palette(IndexColorModel colours) {
        int[] shades = new int[colours.getMapSize()];
        for (int i = 0; i < shades.length; i++) {
            shades[i] = on(Shade.of(colours.getRed(i), colours.getGreen(i), colours.getBlue(i)), colours.getAlpha(i));
        }
        return shades;
    }

    private static int on(int shade, int opacity) {
        return WHITE - (WHITE - shade) * opacity / WHITE;
    }

    /** One bit a pixel, one of them black and the other clear, packed as they lie. */
    private static boolean isPlainBits(BufferedImage band) {
        if (!(band.getColorModel() instanceof IndexColorModel colours)
                || colours.getMapSize() != 2
                || !(band.getSampleModel() instanceof MultiPixelPackedSampleModel packed)
                || packed.getPixelBitStride() != 1
                || packed.getDataBitOffset() != 0
                || !(band.getRaster().getDataBuffer() instanceof DataBufferByte)) {
            return false;
        }
        int[] shades = palette(colours);
        return Math.min(shades[0], shades[1]) == 0 && Math.max(shades[0], shades[1]) == WHITE;
    }

    private static void bits(BufferedImage band, Tracing to) {
        MultiPixelPackedSampleModel packed = (MultiPixelPackedSampleModel) band.getSampleModel();
        byte[] bits = ((DataBufferByte) band.getRaster().getDataBuffer()).getData();
        boolean isOneBlack = palette((IndexColorModel) band.getColorModel())[1] == 0;
        for (int y = 0; y < band.getHeight(); y++) {
            to.bits(bits, y * packed.getScanlineStride(), isOneBlack);
        }
    }
}
