package inkstrata.positive.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Area;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import inkstrata.measure.Frame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PixelRowsTest {
    /** Pixels to the inch that are ten to the millimetre. */
    private static final int TEN_TO_THE_MM = 254;

    @Test
    void aPixelIsBlackWhereItsMiddleLiesWithin() {
        Page page = page(new Frame(0, 0, 1.2, 0.4), Outline.rectangle(0.149, 0.049, 0.902, 0.2));
        // Middles lie at 0.05, 0.15, ... both ways: those from 0.15 to 1.05 across, and from 0.05 to before 0.25 down.
        assertThat(picture(page)).isEqualTo("""
                .##########.
                .##########.
                ............
                ............
                """);
    }

    @Test
    void theFrameMayBeginAnywhere() {
        Page page = page(new Frame(-5, 7, 0.8, 0.2), Outline.rectangle(-4.8, 7, 0.3, 0.1));
        assertThat(picture(page)).isEqualTo("""
                ..###...
                ........
                """);
    }

    @Test
    void aWindowHidesWhatLiesBeyondIt() {
        Page.Group group = new Page.Group("all", List.of(item(Outline.rectangle(0, 0, 1, 1), FillRule.NONZERO)))
                .within(new Frame(0.3, 0.1, 0.4, 0.2));
        Page page = new Page("window", new Frame(0, 0, 1, 0.4), new Frame(0, 0, 1, 0.4), List.of(group));
        assertThat(picture(page)).isEqualTo("""
                ..........
                ...####...
                ...####...
                ..........
                """);
    }

    @Test
    void areasOverEachOtherAreBlackWhicheverTheirRule() {
        Outline.Builder twice = Outline.builder();
        Outline.rectangle(0, 0, 0.6, 0.2).sendTo(twice);
        Outline.rectangle(0.2, 0, 0.6, 0.2).sendTo(twice);
        Frame frame = new Frame(0, 0, 0.8, 0.1);
        assertThat(picture(new Page("", frame, frame, List.of(group(item(twice.build(), FillRule.NONZERO))))))
                .isEqualTo("########\n");
        assertThat(picture(new Page("", frame, frame, List.of(group(item(twice.build(), FillRule.EVENODD))))))
                .isEqualTo("##....##\n");
        assertThat(picture(new Page(
                        "",
                        frame,
                        frame,
                        List.of(group(
                                item(Outline.rectangle(0, 0, 0.6, 0.2), FillRule.EVENODD),
                                item(Outline.rectangle(0.2, 0, 0.6, 0.2), FillRule.EVENODD))))))
                .isEqualTo("########\n");
    }

    /** Each column and row of a shape's outline is off by half a pixel at most. */
    @Test
    void blackPixelsMeasureWhatTheAreaDoes() {
        long seed = 20261128;
        Random random = new Random(seed);
        for (int drawing = 0; drawing < 200; drawing++) {
            double radius = 0.2 + 20 * random.nextDouble();
            double x = 25 + random.nextDouble();
            double y = 25 + random.nextDouble();
            Page disc = page(new Frame(0, 0, 50, 50), disc(x, y, radius));
            double most = 0.5 * 0.1 * 2 * Math.PI * radius;
            assertThat(black(disc) / 100.0)
                    .as("disc %d of seed %d", drawing, seed)
                    .isCloseTo(Math.PI * radius * radius, within(most));
            double width = 0.1 + 40 * random.nextDouble();
            double height = 0.1 + 40 * random.nextDouble();
            Page box = page(
                    new Frame(0, 0, 50, 50),
                    Outline.rectangle(5 + random.nextDouble(), 5 + random.nextDouble(), width, height));
            assertThat(black(box) / 100.0)
                    .as("box %d of seed %d", drawing, seed)
                    .isCloseTo(width * height, within(0.5 * 0.1 * 2 * (width + height)));
        }
    }

    /**
     * A sheet cut into any number of areas by curves that run through a few common points: every pixel is black on just one
     * film, whichever way the areas' outlines run along what they share.
     */
    @Test
    void areasThatFillASheetShareOutItsPixels() {
        long seed = 4711;
        Random random = new Random(seed);
        for (int drawing = 0; drawing < 40; drawing++) {
            List<Page> films = sheet(random);
            int[] times = new int[500 * 500];
            for (Page film : films) {
                PixelRows rows = new PixelRows(film, TEN_TO_THE_MM);
                for (int y = 0; y < 500; y++) {
                    byte[] row = rows.next();
                    for (int x = 0; x < 500; x++) {
                        times[500 * y + x] += isBlack(row, x) ? 1 : 0;
                    }
                }
            }
            assertThat(Arrays.stream(times).allMatch(count -> count == 1))
                    .as(
                            "drawing %d of seed %d: %d pixels are not",
                            drawing,
                            seed,
                            Arrays.stream(times).filter(count -> count != 1).count())
                    .isTrue();
        }
    }

    /** Strips between curves that wander down the sheet, each cut in two by a level curve; drawn to and fro. */
    private static List<Page> sheet(Random random) {
        int strips = 2 + random.nextInt(6);
        double[][][] sides = new double[strips + 1][][];
        for (int i = 0; i <= strips; i++) {
            double x = 50.0 * i / strips;
            boolean isEdge = i == 0 || i == strips;
            double sway = isEdge ? 0 : 20.0 / strips;
            double middle = x + (random.nextDouble() - 0.5) * sway;
            sides[i] = new double[][] {
                {
                    x,
                    0,
                    x + sway * random.nextDouble() - sway / 2,
                    8,
                    middle,
                    16,
                    middle,
                    20 + (isEdge ? 0 : random.nextDouble())
                },
                null
            };
            double at = sides[i][0][7];
            sides[i][1] = new double[] {middle, at, middle, 30, x + sway * random.nextDouble() - sway / 2, 40, x, 50};
        }
        List<Page> films = new ArrayList<>();
        for (int i = 0; i < strips; i++) {
            double[] from = {sides[i][0][6], sides[i][0][7]};
            double[] to = {sides[i + 1][0][6], sides[i + 1][0][7]};
            double[] level = {from[0], from[1], from[0] + 2, 25, to[0] - 2, 15, to[0], to[1]};
            films.add(film(random, sides[i][0], level, reversed(sides[i + 1][0])));
            films.add(film(
                    random,
                    sides[i][1],
                    new double[] {sides[i][1][6], 50, sides[i + 1][1][6], 50},
                    reversed(sides[i + 1][1]),
                    reversed(level)));
        }
        return films;
    }

    private static Page film(Random random, double[]... pieces) {
        boolean back = random.nextBoolean();
        Outline.Builder outline = Outline.builder();
        double[][] way = pieces.clone();
        if (back) {
            for (int i = 0; i < pieces.length; i++) {
                way[i] = reversed(pieces[pieces.length - 1 - i]);
            }
        }
        outline.moveTo(way[0][0], way[0][1]);
        for (double[] c : way) {
            if (c.length == 4) {
                outline.lineTo(c[2], c[3]);
            } else {
                outline.cubicTo(c[2], c[3], c[4], c[5], c[6], c[7]);
            }
        }
        Frame frame = new Frame(0, 0, 50, 50);
        return new Page("", frame, frame, List.of(group(item(outline.build(), FillRule.EVENODD))));
    }

    private static double[] reversed(double[] c) {
        double[] r = new double[c.length];
        for (int i = 0; i < c.length; i += 2) {
            r[i] = c[c.length - 2 - i];
            r[i + 1] = c[c.length - 1 - i];
        }
        return r;
    }

    private static Outline disc(double x, double y, double r) {
        double q = r * 4 / 3 * (Math.sqrt(2) - 1);
        Outline.Builder disc = Outline.builder();
        disc.moveTo(x + r, y);
        disc.cubicTo(x + r, y + q, x + q, y + r, x, y + r);
        disc.cubicTo(x - q, y + r, x - r, y + q, x - r, y);
        disc.cubicTo(x - r, y - q, x - q, y - r, x, y - r);
        disc.cubicTo(x + q, y - r, x + r, y - q, x + r, y);
        return disc.build();
    }

    private static Page page(Frame frame, Outline outline) {
        return new Page("", frame, frame, List.of(group(item(outline, FillRule.NONZERO))));
    }

    private static Page.Group group(Page.Item... items) {
        return new Page.Group("all", Optional.empty(), List.of(items));
    }

    private static Page.Item item(Outline outline, FillRule rule) {
        return new Page.Item(new Area(outline, rule));
    }

    private static int black(Page page) {
        PixelRows rows = new PixelRows(page, TEN_TO_THE_MM);
        int black = 0;
        for (int y = 0; y < rows.height(); y++) {
            byte[] row = rows.next();
            for (int x = 0; x < rows.width(); x++) {
                black += isBlack(row, x) ? 1 : 0;
            }
        }
        return black;
    }

    private static boolean isBlack(byte[] row, int x) {
        return (row[x >> 3] >> (7 - (x & 7)) & 1) == 0;
    }

    private static String picture(Page page) {
        PixelRows rows = new PixelRows(page, TEN_TO_THE_MM);
        StringBuilder picture = new StringBuilder();
        for (int y = 0; y < rows.height(); y++) {
            byte[] row = rows.next();
            for (int x = 0; x < rows.width(); x++) {
                picture.append(isBlack(row, x) ? '#' : '.');
            }
            picture.append('\n');
        }
        return picture.toString();
    }
}
