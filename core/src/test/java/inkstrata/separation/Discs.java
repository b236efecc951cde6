package inkstrata.separation;

import inkstrata.artwork.Outline;
import inkstrata.colour.Rgb;
import inkstrata.plan.Ink;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/** Drawings of many discs, three deep on the average, of the same density whatever their number: for tests of cost. */
public final class Discs {
    private Discs() {}

    /** From light to dark. */
    public static Ink[] inks(int number) {
        return IntStream.range(0, number)
                .mapToObj(i -> new Ink(
                        "ink " + i, new Rgb(250 - 20 * i, 240 - 19 * i, 220 - 15 * i), 0.9, Optional.empty(), false))
                .toArray(Ink[]::new);
    }

    public static FlatDrawing drawing(int discs, Ink... inks) {
        Random random = new Random(discs);
        double side = Math.sqrt(discs / 3.0 * Math.PI) * 8;
        FlatDrawing drawing = new FlatDrawing(side, side);
        for (int i = 0; i < discs; i++) {
            drawing.fill(
                    inks[random.nextInt(inks.length)],
                    circle(side * random.nextDouble(), side * random.nextDouble(), 2 + 10 * random.nextDouble()));
        }
        return drawing;
    }

    public static Outline circle(double x, double y, double r) {
        double k = 0.5522847498307936 * r;
        Outline.Builder c = Outline.builder();
        c.moveTo(x + r, y);
        c.cubicTo(x + r, y + k, x + k, y + r, x, y + r);
        c.cubicTo(x - k, y + r, x - r, y + k, x - r, y);
        c.cubicTo(x - r, y - k, x - k, y - r, x, y - r);
        c.cubicTo(x + k, y - r, x + r, y - k, x + r, y);
        return c.build();
    }
}
