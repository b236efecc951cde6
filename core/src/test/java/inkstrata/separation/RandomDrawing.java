package inkstrata.separation;

import static inkstrata.plan.PlanningExample.ink;

import inkstrata.artwork.Outline;
import inkstrata.colour.Lab;
import inkstrata.colour.Rgb;
import inkstrata.plan.Ink;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Drawings at random, knocked out light to dark: some shapes of random colours, white among them, on 12 x 12 mm, many thinner than a
 * trap, many alongside others.
 */
public final class RandomDrawing {
    /** Sorted from light to dark. */
    public static final List<Ink> INKS = List.of(
            ink("straw", "#f2dc8c"),
            ink("rose", "#e39a9a"),
            ink("moss", "#7d8f4a"),
            ink("rust", "#b4512d"),
            ink("night", "#1d2440"));

    private static final double SIDE_MM = 12;

    private RandomDrawing() {}

    /** The drawing of that number, always the same. */
    public static Separation of(long number, int threads) {
        return drawing(number).withThreads(threads).knockedOut(lightFirst());
    }

    /** Likewise, but white is an ink like the others; it prints first. */
    public static Separation withWhite(long number, Ink white) {
        List<Ink> order = new ArrayList<>(List.of(white));
        order.addAll(List.of(lightFirst()));
        return drawing(number).withThreads(1).knockedOut(order.toArray(Ink[]::new));
    }

    /** Likewise, printed dark to light. */
    public static Separation darkFirst(long number) {
        List<Ink> order = new ArrayList<>(List.of(lightFirst()));
        Collections.reverse(order);
        return drawing(number).withThreads(1).knockedOut(order.toArray(Ink[]::new));
    }

    /** Printed light to dark, of each three inks that lie over each other those that are lighter than the topmost run on beneath it. */
    public static Separation runningOn(long number) {
        List<Ink> order = List.of(lightFirst());
        return drawing(number)
                .withThreads(1)
                .separated(
                        (ink, row) -> {
                            int paint = row.inks().indexOf(Optional.of(ink));
                            return paint >= 0
                                    && paint < 3
                                    && row.inks().subList(0, paint).stream().allMatch(Optional::isPresent)
                                    && order.indexOf(ink)
                                            <= order.indexOf(row.top().orElseThrow());
                        },
                        lightFirst());
    }

    private static Ink[] lightFirst() {
        return INKS.stream()
                .sorted(Comparator.comparingDouble(ink -> -Lab.of(ink.swatch()).lightness()))
                .toArray(Ink[]::new);
    }

    private static FlatDrawing drawing(long number) {
        Random random = new Random(number * 7919 + 17);
        FlatDrawing drawing = new FlatDrawing(SIDE_MM, SIDE_MM);
        int shapes = 3 + random.nextInt(8);
        for (int i = 0; i < shapes; i++) {
            int colour = random.nextInt(INKS.size() + 1);
            Rgb swatch = colour == INKS.size() ? Rgb.WHITE : INKS.get(colour).swatch();
            drawing.fill(swatch, outline(random));
        }
        return drawing;
    }

    private static Outline outline(Random random) {
        double x = SIDE_MM * random.nextDouble();
        double y = SIDE_MM * random.nextDouble();
        switch (random.nextInt(4)) {
            case 0 -> {
                return Outline.rectangle(x, y, 0.05 + random.nextInt(12) * 0.25, 0.05 + random.nextInt(12) * 0.25);
            }
            case 1 -> {
                double radius = 0.1 + 3 * random.nextDouble();
                double[] xy = new double[2 * 36];
                Arrays.setAll(
                        xy,
                        i -> i % 2 == 0
                                ? x + radius * Math.cos(Math.PI * i / 36)
                                : y + radius * Math.sin(Math.PI * (i - 1) / 36));
                return FlatDrawing.polygon(xy);
            }
            case 2 -> {
                double lean = random.nextDouble();
                return FlatDrawing.polygon(
                        x, y, x + 6, y + lean, x + 6, y + lean + 0.3, x, y + 0.6 * random.nextDouble());
            }
            default -> {
                double[] xy = new double[2 * (3 + random.nextInt(6))];
                Arrays.setAll(xy, i -> SIDE_MM * random.nextDouble());
                return FlatDrawing.polygon(xy);
            }
        }
    }
}
