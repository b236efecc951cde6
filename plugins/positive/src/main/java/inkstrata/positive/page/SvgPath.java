package inkstrata.positive.page;

import inkstrata.artwork.CurveSink;
import inkstrata.artwork.Outline;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * An outline as the data of a path element: absolute commands, closed contours.
 *
 * <p>Written piece by piece, so that the memory needed does not depend on how large the outline is.
 */
final class SvgPath implements CurveSink {
    private static final int PIECE = 8_000;

    private final Appendable out;
    private final StringBuilder ahead = new StringBuilder();
    private char command;
    private double x;
    private double y;

    private SvgPath(Appendable out) {
        this.out = out;
    }

    static void write(Outline outline, Appendable out) throws IOException {
        SvgPath path = new SvgPath(out);
        try {
            outline.sendTo(path);
            path.close();
            path.flush();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    @Override
    public void moveTo(double toX, double toY) {
        close();
        command('M');
        pair(toX, toY);
        at(toX, toY);
    }

    private void close() {
        if (command != 0) {
            ahead.append('Z');
            command = 0;
        }
    }

    @Override
    public void lineTo(double toX, double toY) {
        if (MmText.areEqual(toY, y)) {
            ahead.append('H');
            command = 'H';
            MmText.append(ahead, toX);
        } else if (MmText.areEqual(toX, x)) {
            ahead.append('V');
            command = 'V';
            MmText.append(ahead, toY);
        } else {
            command('L');
            pair(toX, toY);
        }
        at(toX, toY);
    }

    @Override
    public void quadTo(double x1, double y1, double toX, double toY) {
        command('Q');
        pair(x1, y1);
        ahead.append(' ');
        pair(toX, toY);
        at(toX, toY);
    }

    @Override
    public void cubicTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        command('C');
        pair(x1, y1);
        ahead.append(' ');
        pair(x2, y2);
        ahead.append(' ');
        pair(toX, toY);
        at(toX, toY);
    }

    /** A letter that is the same as the one before is left out. */
    private void command(char next) {
        ahead.append(command == next ? ' ' : next);
        command = next;
    }

    private void pair(double px, double py) {
        MmText.append(ahead, px);
        ahead.append(' ');
        MmText.append(ahead, py);
    }

    private void at(double px, double py) {
        x = px;
        y = py;
        if (ahead.length() > PIECE) {
            flush();
        }
    }

    private void flush() {
        try {
            out.append(ahead);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        ahead.setLength(0);
    }
}
