package inkstrata.artwork;

import inkstrata.measure.Frame;
import java.util.Arrays;
import java.util.Optional;

/**
 * Closed contours of lines and Bézier curves, in millimetres; immutable and compact.
 *
 * <p>Contours may cross themselves and each other; which places they enclose is for a {@link FillRule} to say. Each
 * contour is closed with a straight line when its last point is not its first. Curves are numbered from 0 through all
 * contours in order, closing lines not counted, move-tos counted (so that a number is also a position in the list of
 * commands).
 */
public final class Outline {
    private static final byte MOVE = 0;
    private static final byte LINE = 1;
    private static final byte QUAD = 2;
    private static final byte CUBIC = 3;

    private final byte[] commands;
    private final double[] coordinates;

    private Outline(byte[] commands, double[] coordinates) {
        this.commands = commands;
        this.coordinates = coordinates;
    }

    public static Builder builder() {
        return new Builder();
    }

    /** An upright rectangle. */
    public static Outline rectangle(double x, double y, double width, double height) {
        Builder builder = builder();
        builder.moveTo(x, y);
        builder.lineTo(x + width, y);
        builder.lineTo(x + width, y + height);
        builder.lineTo(x, y + height);
        return builder.build();
    }

    /** How many commands, move-tos included. */
    public int commandCount() {
        return commands.length;
    }

    public boolean isEmpty() {
        return commands.length == 0;
    }

    /** Hands over all contours in order. */
    public void sendTo(CurveSink sink) {
        double[] c = coordinates;
        int at = 0;
        for (byte command : commands) {
            switch (command) {
                case MOVE -> sink.moveTo(c[at], c[at + 1]);
                case LINE -> sink.lineTo(c[at], c[at + 1]);
                case QUAD -> sink.quadTo(c[at], c[at + 1], c[at + 2], c[at + 3]);
                default -> sink.cubicTo(c[at], c[at + 1], c[at + 2], c[at + 3], c[at + 4], c[at + 5]);
            }
            at += command == CUBIC ? 6 : command == QUAD ? 4 : 2;
        }
    }

    /** The smallest upright frame around all control points; none if there are none, or if they lie on one level or upright line. */
    public Optional<Frame> controlBox() {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < coordinates.length; i += 2) {
            left = Math.min(left, coordinates[i]);
            right = Math.max(right, coordinates[i]);
            top = Math.min(top, coordinates[i + 1]);
            bottom = Math.max(bottom, coordinates[i + 1]);
        }
        return left < right && top < bottom
                ? Optional.of(new Frame(left, top, right - left, bottom - top))
                : Optional.empty();
    }

    /** Moved, in millimetres. */
    public Outline movedBy(double dx, double dy) {
        double[] moved = coordinates.clone();
        for (int i = 0; i < moved.length; i += 2) {
            moved[i] += dx;
            moved[i + 1] += dy;
        }
        return new Outline(commands, moved);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline that
                && Arrays.equals(commands, that.commands)
                && Arrays.equals(coordinates, that.coordinates);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(commands) + Arrays.hashCode(coordinates);
    }

    /** Collects contours; not for use by several threads. */
    public static final class Builder implements CurveSink {
        private byte[] commands = new byte[16];
        private double[] coordinates = new double[64];
        private int commandCount;
        private int coordinateCount;

        @Override
        public void moveTo(double x, double y) {
            command(MOVE);
            point(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            command(LINE);
            point(x, y);
        }

        @Override
        public void quadTo(double x1, double y1, double x, double y) {
            command(QUAD);
            point(x1, y1);
            point(x, y);
        }

        @Override
        public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
            command(CUBIC);
            point(x1, y1);
            point(x2, y2);
            point(x, y);
        }

        public Outline build() {
            return new Outline(Arrays.copyOf(commands, commandCount), Arrays.copyOf(coordinates, coordinateCount));
        }

        private void command(byte command) {
            if (commandCount == 0 && command != MOVE) {
                throw new IllegalStateException("an outline starts with moveTo");
            }
            if (commandCount == commands.length) {
                commands = Arrays.copyOf(commands, commandCount * 2);
            }
            commands[commandCount++] = command;
        }

        private void point(double x, double y) {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException("point " + x + ", " + y + " is not finite");
            }
            if (coordinateCount + 2 > coordinates.length) {
                coordinates = Arrays.copyOf(coordinates, coordinateCount * 2);
            }
            coordinates[coordinateCount++] = x;
            coordinates[coordinateCount++] = y;
        }
    }
}
