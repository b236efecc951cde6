package inkstrata.artwork.svg;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.net.URL;

/** Pictures drawn by jsvg, a renderer that shares no code with ours. */
final class JsvgPicture {
    private JsvgPicture() {}

    /** On white and without smoothing, so that every pixel has a colour of the drawing. */
    static int[] pixels(URL svg, int width) throws Verdict.OtherPicture.CannotRead {
        SVGDocument document = new SVGLoader().load(svg);
        if (document == null) {
            throw new Verdict.OtherPicture.CannotRead();
        }
        double ratio = document.size().getHeight() / document.size().getWidth();
        int height = (int) Math.round(width * ratio);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        document.render(null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] &= 0xffffff;
        }
        return pixels;
    }
}
