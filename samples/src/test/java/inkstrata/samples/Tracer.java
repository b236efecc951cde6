package inkstrata.samples;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import java.awt.AlphaComposite;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.io.ByteArrayInputStream;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/**
 * Takes down what jsvg draws, shape by shape: a second reader of drawings, which shares no code with the first.
 *
 * <p>Reads what the samples use; jsvg composites the members of a translucent group one by one.
 */
final class Tracer extends AbstractGraphics2D {
    private final List<FlatShape> shapes;

    private Tracer() {
        super(false);
        gc = new GraphicContext();
        shapes = new ArrayList<>();
    }

    private Tracer(Tracer parent) {
        super(parent);
        shapes = parent.shapes;
    }

    /** The drawing at that size, in millimetres. */
    static Artwork trace(String name, byte[] svg, Size size) {
        SVGDocument document = new SVGLoader()
                .load(
                        new ByteArrayInputStream(svg),
                        null,
                        LoaderContext.builder().build());
        if (document == null) {
            throw new IllegalArgumentException("jsvg can't read " + name);
        }
        Tracer tracer = new Tracer();
        document.render((Component) null, tracer, new ViewBox((float) size.width(), (float) size.height()));
        return new Artwork(name, new Frame(0, 0, size.width(), size.height()), tracer.shapes, List.of());
    }

    @Override
    public void fill(Shape shape) {
        add(getTransform().createTransformedShape(shape));
    }

    @Override
    public void draw(Shape shape) {
        add(getTransform().createTransformedShape(getStroke().createStrokedShape(shape)));
    }

    private void add(Shape shape) {
        Area area = area(shape);
        if (area.outline().isEmpty()) {
            return;
        }
        float composite = getComposite() instanceof AlphaComposite alpha ? alpha.getAlpha() : 1;
        Shape clip = getClip();
        shapes.add(new FlatShape(
                area,
                Rgb.of(getColor().getRGB() & 0xffffff),
                composite * (getColor().getAlpha() / 255.0),
                Optional.empty(),
                clip == null
                        ? List.of()
                        : List.of(new Clip(List.of(area(getTransform().createTransformedShape(clip))))),
                Source.UNKNOWN));
    }

    private static Area area(Shape shape) {
        Outline.Builder outline = Outline.builder();
        double[] c = new double[6];
        double startX = 0;
        double startY = 0;
        boolean open = false;
        PathIterator path = shape.getPathIterator(null);
        for (; !path.isDone(); path.next()) {
            int segment = path.currentSegment(c);
            if (!open && segment != PathIterator.SEG_MOVETO && segment != PathIterator.SEG_CLOSE) {
                outline.moveTo(startX, startY);
            }
            open = segment != PathIterator.SEG_CLOSE;
            switch (segment) {
                case PathIterator.SEG_MOVETO -> {
                    startX = c[0];
                    startY = c[1];
                    outline.moveTo(startX, startY);
                }
                case PathIterator.SEG_LINETO -> outline.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO -> outline.quadTo(c[0], c[1], c[2], c[3]);
                case PathIterator.SEG_CUBICTO -> outline.cubicTo(c[0], c[1], c[2], c[3], c[4], c[5]);
                default -> {}
            }
        }
        FillRule rule = path.getWindingRule() == PathIterator.WIND_EVEN_ODD ? FillRule.EVENODD : FillRule.NONZERO;
        return new Area(outline.build(), rule);
    }

    @Override
    public Graphics create() {
        return new Tracer(this);
    }

    @Override
    public void dispose() {}

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB)
                .createGraphics()
                .getDeviceConfiguration();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw new UnsupportedOperationException("an image");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw new UnsupportedOperationException("an image");
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform transform) {
        throw new UnsupportedOperationException("an image");
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform transform) {
        throw new UnsupportedOperationException("an image");
    }

    @Override
    public void drawString(String text, float x, float y) {
        throw new UnsupportedOperationException("text");
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        throw new UnsupportedOperationException("text");
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        throw new UnsupportedOperationException("text");
    }

    @Override
    public void setXORMode(java.awt.Color colour) {
        throw new UnsupportedOperationException("exclusive or");
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw new UnsupportedOperationException("copied pixels");
    }
}
