package inkstrata.artwork.svg;

import inkstrata.artwork.stroke.StrokeStyle;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Paint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/** A canvas without pixels: tells which shapes text painting fills, in its units, in order. */
final class ShapeRecorder extends AbstractGraphics2D {
    private final double unitMm;
    private final Listener listener;

    /** Told about every shape that is filled. */
    interface Listener {
        /**
         * Hears of one filled shape.
         *
         * @param alpha 0 to 1, of the shape as a whole
         */
        void filled(Shape shape, Paint paint, double alpha);
    }

    /**
     * Records for one listener.
     *
     * @param unitMm one unit in millimetres on the sheet
     */
    ShapeRecorder(double unitMm, Listener listener) {
        super(true);
        this.unitMm = unitMm;
        this.listener = listener;
        this.gc = new GraphicContext();
        // Batik fills outlines instead of hinted glyphs only under these two.
        setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    private ShapeRecorder(ShapeRecorder original) {
        super(original);
        this.unitMm = original.unitMm;
        this.listener = original.listener;
    }

    @Override
    public void fill(Shape shape) {
        tell(shape);
    }

    @Override
    public void draw(Shape shape) {
        BasicStroke stroke = (BasicStroke) getStroke();
        float[] dashes = stroke.getDashArray();
        List<Double> lengths = new ArrayList<>();
        for (int i = 0; dashes != null && i < dashes.length; i++) {
            lengths.add((double) dashes[i]);
        }
        StrokeStyle style = new StrokeStyle(
                stroke.getLineWidth(),
                cap(stroke.getEndCap()),
                join(stroke.getLineJoin()),
                stroke.getMiterLimit(),
                lengths,
                stroke.getDashPhase());
        if (style.width() > 0) {
            tell(Strokes.outline(new Path2D.Double(shape), style, unitMm));
        }
    }

    private static StrokeStyle.Cap cap(int cap) {
        return switch (cap) {
            case BasicStroke.CAP_ROUND -> StrokeStyle.Cap.ROUND;
            case BasicStroke.CAP_SQUARE -> StrokeStyle.Cap.SQUARE;
            default -> StrokeStyle.Cap.BUTT;
        };
    }

    private static StrokeStyle.Join join(int join) {
        return switch (join) {
            case BasicStroke.JOIN_ROUND -> StrokeStyle.Join.ROUND;
            case BasicStroke.JOIN_BEVEL -> StrokeStyle.Join.BEVEL;
            default -> StrokeStyle.Join.MITER;
        };
    }

    private void tell(Shape shape) {
        double alpha = getComposite() instanceof AlphaComposite composite
                ? Double.parseDouble(Float.toString(composite.getAlpha()))
                : 1;
        Paint paint = getPaint();
        if (paint != null) {
            listener.filled(new Path2D.Double(shape, getTransform()), paint, alpha);
        }
    }

    @Override
    public Graphics create() {
        return new ShapeRecorder(this);
    }

    @Override
    public void dispose() {}

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        throw unexpected("a device");
    }

    @Override
    public void drawString(String text, float x, float y) {
        throw unexpected("plain text");
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        throw unexpected("plain text");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw unexpected("an image");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw unexpected("an image");
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform transform) {
        throw unexpected("an image");
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform transform) {
        throw unexpected("an image");
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw unexpected("an image");
    }

    @Override
    public void setXORMode(Color colour) {
        throw unexpected("XOR");
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
        return image.createGraphics().getFontMetrics(font);
    }

    private static UnsupportedOperationException unexpected(String what) {
        return new UnsupportedOperationException(
                String.format(Locale.ROOT, "text layout drew %s where only outlines were expected", what));
    }
}
