package inkstrata.positive.page.read;

import inkstrata.measure.Frame;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * A page's size and place (ISO 32000-1, 14.11.2 and table 30): its crop box, turned as it asks, in millimetres.
 *
 * @param frame of the page, from 0, 0
 * @param trim what is meant of it: its trim box, or all of it
 * @param toMm from its user space to millimetres from its upper left corner, y down
 */
record PdfPage(Frame frame, Frame trim, AffineTransform toMm) {
    private static final double MM_PER_POINT = 25.4 / 72;

    static PdfPage of(PDPage page) {
        PDRectangle box = page.getCropBox();
        double k = MM_PER_POINT * page.getUserUnit();
        AffineTransform toMm = new AffineTransform();
        toMm.scale(k, k);
        switch (Math.floorMod(page.getRotation(), 360)) {
            case 90 -> toMm.concatenate(new AffineTransform(0, 1, 1, 0, -box.getLowerLeftY(), -box.getLowerLeftX()));
            case 180 -> toMm.concatenate(new AffineTransform(-1, 0, 0, 1, box.getUpperRightX(), -box.getLowerLeftY()));
            case 270 -> toMm.concatenate(new AffineTransform(0, -1, -1, 0, box.getUpperRightY(), box.getUpperRightX()));
            default -> toMm.concatenate(new AffineTransform(1, 0, 0, -1, -box.getLowerLeftX(), box.getUpperRightY()));
        }
        Frame frame = frame(box, toMm);
        PDRectangle trim = page.getTrimBox();
        return new PdfPage(
                new Frame(0, 0, frame.width(), frame.height()),
                trim.getWidth() > 0 && trim.getHeight() > 0 ? frame(trim, toMm) : frame,
                toMm);
    }

    private static Frame frame(PDRectangle box, AffineTransform toMm) {
        Rectangle2D there = toMm.createTransformedShape(new Rectangle2D.Double(
                        box.getLowerLeftX(), box.getLowerLeftY(), box.getWidth(), box.getHeight()))
                .getBounds2D();
        return new Frame(there.getX(), there.getY(), there.getWidth(), there.getHeight());
    }
}
