package inkstrata.positive.page;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import inkstrata.measure.Frame;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * The operators that fill a page's areas (ISO 32000-1, 8.5), in millimetres from the frame's top left corner, y down; the same
 * digits as in SVG.
 */
final class PdfContent implements CurveSink {
    /** PDF counts in 1/72 inch (ISO 32000-1, 8.3.2.3). */
    static final double POINTS_PER_MM = 72 / 25.4;

    private static final int PIECE = 8_000;

    private final OutputStream out;
    private final StringBuilder ahead = new StringBuilder();
    private boolean isOpen;
    private double x;
    private double y;

    private PdfContent(OutputStream out) {
        this.out = out;
    }

    /**
     * Fills everything on a page with the colour that is set.
     *
     * @param frame of the PDF's page
     * @param colour operators that set it
     */
    static void write(Page page, Frame frame, String colour, OutputStream out) throws IOException {
        PdfContent content = new PdfContent(out);
        content.ahead.append(String.format(
                Locale.ROOT,
                "q\n%s\n%.8f 0 0 %.8f %.6f %.6f cm\n",
                colour,
                POINTS_PER_MM,
                -POINTS_PER_MM,
                -frame.x() * POINTS_PER_MM,
                frame.bottom() * POINTS_PER_MM));
        for (Page.Group group : page.groups()) {
            content.group(group);
        }
        content.ahead.append("Q\n");
        content.flush();
    }

    private void group(Page.Group group) throws IOException {
        ahead.append("q\n");
        if (group.window().isPresent()) {
            Frame window = group.window().get();
            number(window.x()).number(window.y()).number(window.width()).number(window.height());
            ahead.append("re W n\n");
        }
        for (Page.Item item : group.items()) {
            Outline outline = item.area().outline();
            if (!outline.isEmpty()) {
                outline.sendTo(this);
                close();
                ahead.append(item.area().rule() == FillRule.EVENODD ? "f*\n" : "f\n");
                flush();
            }
        }
        ahead.append("Q\n");
    }

    @Override
    public void moveTo(double toX, double toY) {
        close();
        number(toX).number(toY).operator('m');
        isOpen = true;
        at(toX, toY);
    }

    private void close() {
        if (isOpen) {
            ahead.append("h\n");
            isOpen = false;
        }
    }

    @Override
    public void lineTo(double toX, double toY) {
        number(toX).number(toY).operator('l');
        at(toX, toY);
    }

    /** As the cubic it is. */
    @Override
    public void quadTo(double x1, double y1, double toX, double toY) {
        cubicTo(
                x + 2 * (x1 - x) / 3,
                y + 2 * (y1 - y) / 3,
                toX + 2 * (x1 - toX) / 3,
                toY + 2 * (y1 - toY) / 3,
                toX,
                toY);
    }

    @Override
    public void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        number(x1).number(y1).number(x2).number(y2).number(toX).number(toY).operator('c');
        at(toX, toY);
    }

    private void at(double toX, double toY) {
        x = toX;
        y = toY;
    }

    private PdfContent number(double millimetres) {
        MmText.append(ahead, millimetres);
        ahead.append(' ');
        return this;
    }

    private void operator(char name) {
        ahead.append(name).append('\n');
    }

    private void flush() throws IOException {
        for (int from = 0; from < ahead.length(); from += PIECE) {
            String piece = ahead.substring(from, Math.min(ahead.length(), from + PIECE));
            out.write(piece.getBytes(StandardCharsets.US_ASCII));
        }
        ahead.setLength(0);
    }
}
