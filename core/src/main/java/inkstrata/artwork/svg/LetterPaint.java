package inkstrata.artwork.svg;

import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Transparency;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ColorModel;

/**
 * Carries a flat paint through Batik's text painting, which hands it on untouched; Batik's own colours hold 8 bits of
 * opacity only and know no {@code rgba()}.
 *
 * @param flat for {@link ShapeRecorder}'s listener
 */
record LetterPaint(FlatPaint flat) implements Paint {
    @Override
    public PaintContext createContext(
            ColorModel model,
            Rectangle deviceBounds,
            Rectangle2D userBounds,
            AffineTransform transform,
            RenderingHints hints) {
        throw new UnsupportedOperationException("letters are recorded, not drawn in pixels");
    }

    @Override
    public int getTransparency() {
        return flat.opacity() < 1 ? Transparency.TRANSLUCENT : Transparency.OPAQUE;
    }
}
