package inkstrata.artwork.svg;

import java.util.function.Consumer;

/**
 * Reads path data: the whole grammar of SVG 2, section 9.3.9, in 64-bit numbers.
 *
 * <p>At the first mistake reading ends, and what stands before it is drawn (section 9.5.4).
 */
final class PathData {
    private static final String COMMANDS = "MmZzLlHhVvCcSsQqTtAa";

    private final NumberScanner scanner;
    private final PathPen pen = new PathPen();
    private double controlX;
    private double controlY;
    private char previous = 'M';

    private PathData(String text) {
        scanner = new NumberScanner(text);
    }

    /**
     * @param complaint is told once, in one sentence, if the data is at fault
     */
    static LocalPath parse(String text, Consumer<String> complaint) {
        PathData data = new PathData(text);
        try {
            data.read();
        } catch (NumberScanner.Mistake mistake) {
            complaint.accept("path data is at fault at character " + (data.scanner.position() + 1) + ": "
                    + mistake.getMessage() + "; the path is drawn up to there");
        }
        return data.pen.finish();
    }

    private void read() throws NumberScanner.Mistake {
        scanner.skipSpace();
        boolean first = true;
        while (!scanner.atEnd()) {
            char command = scanner.peek();
            if (COMMANDS.indexOf(command) < 0) {
                throw new NumberScanner.Mistake("'" + command + "' is no path command");
            }
            if (first && command != 'M' && command != 'm') {
                throw new NumberScanner.Mistake("a path starts with a move-to");
            }
            first = false;
            scanner.skip();
            scanner.skipSpace();
            repeat(command);
        }
    }

    private void repeat(char command) throws NumberScanner.Mistake {
        if (command == 'Z' || command == 'z') {
            pen.close();
            previous = 'Z';
            return;
        }
        char now = command;
        do {
            draw(now);
            previous = Character.toUpperCase(now);
            if (now == 'M') {
                now = 'L';
            } else if (now == 'm') {
                now = 'l';
            }
        } while (scanner.moreNumbers());
    }

    private void draw(char command) throws NumberScanner.Mistake {
        boolean relative = Character.isLowerCase(command);
        double x0 = relative ? pen.x() : 0;
        double y0 = relative ? pen.y() : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                double x = x0 + scanner.number();
                pen.moveTo(x, y0 + scanner.number());
            }
            case 'L' -> {
                double x = x0 + scanner.number();
                pen.lineTo(x, y0 + scanner.number());
            }
            case 'H' -> pen.lineTo(x0 + scanner.number(), pen.y());
            case 'V' -> pen.lineTo(pen.x(), y0 + scanner.number());
            case 'C' -> {
                double x1 = x0 + scanner.number();
                double y1 = y0 + scanner.number();
                cubic(x1, y1, x0, y0);
            }
            case 'S' -> {
                boolean smooth = previous == 'C' || previous == 'S';
                cubic(reflectedX(smooth), reflectedY(smooth), x0, y0);
            }
            case 'Q' -> {
                double x1 = x0 + scanner.number();
                double y1 = y0 + scanner.number();
                quadratic(x1, y1, x0, y0);
            }
            case 'T' -> {
                boolean smooth = previous == 'Q' || previous == 'T';
                quadratic(reflectedX(smooth), reflectedY(smooth), x0, y0);
            }
            default -> {
                double rx = scanner.number();
                double ry = scanner.number();
                double rotation = scanner.number();
                boolean large = scanner.flag();
                boolean sweep = scanner.flag();
                double x = x0 + scanner.number();
                pen.arcTo(rx, ry, rotation, large, sweep, x, y0 + scanner.number());
            }
        }
    }

    private void cubic(double x1, double y1, double x0, double y0) throws NumberScanner.Mistake {
        double x2 = x0 + scanner.number();
        double y2 = y0 + scanner.number();
        double x = x0 + scanner.number();
        pen.cubicTo(x1, y1, x2, y2, x, y0 + scanner.number());
        controlX = x2;
        controlY = y2;
    }

    private void quadratic(double x1, double y1, double x0, double y0) throws NumberScanner.Mistake {
        double x = x0 + scanner.number();
        pen.quadTo(x1, y1, x, y0 + scanner.number());
        controlX = x1;
        controlY = y1;
    }

    private double reflectedX(boolean smooth) {
        return smooth ? 2 * pen.x() - controlX : pen.x();
    }

    private double reflectedY(boolean smooth) {
        return smooth ? 2 * pen.y() - controlY : pen.y();
    }
}
