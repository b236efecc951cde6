package inkstrata.positive.page;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.DataBufferByte;
import java.awt.image.MultiPixelPackedSampleModel;
import java.awt.image.Raster;
import java.awt.image.RenderedImage;
import java.awt.image.SampleModel;
import java.awt.image.WritableRaster;
import java.util.Vector;

/** Rows of pixels for ImageIO, made while they are asked for: full rows, best from the top down. */
final class PixelImage implements RenderedImage {
    /** Rows that go into one strip of a file: enough for the compression to look back, few enough to keep in memory. */
    private static final int STRIP = 256;

    private final PixelRows rows;
    private final ColorModel colours = new BufferedImage(1, 1, BufferedImage.TYPE_BYTE_BINARY).getColorModel();

    PixelImage(PixelRows rows) {
        this.rows = rows;
    }

    @Override
    public Raster getData(Rectangle asked) {
        if (asked.x != 0 || asked.width != rows.width()) {
            throw new IllegalArgumentException("rows are made whole, not " + asked);
        }
        if (asked.y < rows.done()) {
            rows.rewind();
        }
        while (rows.done() < asked.y) {
            rows.next();
        }
        int bytes = (rows.width() + 7) / 8;
        byte[] data = new byte[bytes * asked.height];
        for (int i = 0; i < asked.height; i++) {
            System.arraycopy(rows.next(), 0, data, i * bytes, bytes);
        }
        return Raster.createPackedRaster(
                new DataBufferByte(data, data.length), asked.width, asked.height, 1, new Point(0, asked.y));
    }

    @Override
    public int getWidth() {
        return rows.width();
    }

    @Override
    public int getHeight() {
        return rows.height();
    }

    @Override
    public ColorModel getColorModel() {
        return colours;
    }

    /** Of one strip: one of the whole image may have more pixels than an array. */
    @Override
    public SampleModel getSampleModel() {
        return new MultiPixelPackedSampleModel(java.awt.image.DataBuffer.TYPE_BYTE, rows.width(), STRIP, 1);
    }

    @Override
    public Vector<RenderedImage> getSources() {
        return null;
    }

    @Override
    public Object getProperty(String name) {
        return java.awt.Image.UndefinedProperty;
    }

    @Override
    public String[] getPropertyNames() {
        return null;
    }

    @Override
    public int getMinX() {
        return 0;
    }

    @Override
    public int getMinY() {
        return 0;
    }

    @Override
    public int getNumXTiles() {
        return 1;
    }

    @Override
    public int getNumYTiles() {
        return (rows.height() + STRIP - 1) / STRIP;
    }

    @Override
    public int getMinTileX() {
        return 0;
    }

    @Override
    public int getMinTileY() {
        return 0;
    }

    @Override
    public int getTileWidth() {
        return rows.width();
    }

    @Override
    public int getTileHeight() {
        return STRIP;
    }

    @Override
    public int getTileGridXOffset() {
        return 0;
    }

    @Override
    public int getTileGridYOffset() {
        return 0;
    }

    @Override
    public Raster getTile(int tileX, int tileY) {
        int top = tileY * STRIP;
        return getData(new Rectangle(0, top, rows.width(), Math.min(STRIP, rows.height() - top)));
    }

    @Override
    public Raster getData() {
        return getData(new Rectangle(0, 0, rows.width(), rows.height()));
    }

    @Override
    public WritableRaster copyData(WritableRaster raster) {
        throw new UnsupportedOperationException("rows are made one after another");
    }
}
