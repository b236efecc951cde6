package inkstrata.artwork.svg;

import java.awt.geom.Path2D;
import java.util.BitSet;

/**
 * A path in the user units of its element.
 *
 * @param path lines and curves
 * @param inner positions of segments whose end is no vertex of the drawing, because one arc became several curves
 */
record LocalPath(Path2D.Double path, BitSet inner) {
    static LocalPath of(Path2D.Double path) {
        return new LocalPath(path, new BitSet(0));
    }

    boolean isEmpty() {
        return path.getCurrentPoint() == null;
    }
}
