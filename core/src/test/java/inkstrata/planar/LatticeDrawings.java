package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Drawings that aim at the seams, from a seed: most points lie on the frame, on the lines along which it is cut into tiles, or a
 * step beside one; frames start at a single step; some points lie very far outside.
 */
final class LatticeDrawings {
    private static final int[] SIZES = {1, 2, 3, 7, 63, 64, 65, 66, 127, 128, 129, 130, 257, 512, 1000, 1024, 4097};

    private final Random random;
    private final int left;
    private final int low;
    private final int width;
    private final int height;
    private final List<double[]> used = new ArrayList<>();

    private LatticeDrawings(Random random) {
        this.random = random;
        this.left = random.nextInt(3) == 0 ? random.nextInt(100) - 50 : 0;
        this.low = random.nextInt(3) == 0 ? random.nextInt(100) - 50 : 0;
        this.width = SIZES[random.nextInt(SIZES.length)];
        this.height = random.nextInt(3) == 0 ? SIZES[random.nextInt(SIZES.length)] : width;
    }

    static Artwork of(long seed) {
        return new LatticeDrawings(new Random(seed * 0x9E3779B97F4A7C15L + 7)).draw("lattice drawing " + seed);
    }

    private Artwork draw(String name) {
        int count = 1 + random.nextInt(random.nextInt(6) == 0 ? 40 : 8);
        int colours = 1 + random.nextInt(4);
        boolean translucent = random.nextInt(4) == 0;
        List<Clip> clips = random.nextInt(3) > 0 ? List.of() : List.of(new Clip(List.of(area(), area())));
        List<FlatShape> shapes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            shapes.add(new FlatShape(
                    area(),
                    Rgb.of(0x345678 * (1 + random.nextInt(colours)) & 0xffffff),
                    translucent && random.nextInt(3) == 0 ? 0.5 : 1,
                    Optional.empty(),
                    random.nextInt(3) == 0 ? clips : List.of(),
                    Source.UNKNOWN));
        }
        double step = Grid.STEP_MM;
        return new Artwork(name, new Frame(left * step, low * step, width * step, height * step), shapes, List.of());
    }

    private Area area() {
        Outline.Builder outline = Outline.builder();
        for (int contours = random.nextInt(4) == 0 ? 2 : 1; contours > 0; contours--) {
            contour(outline);
        }
        return new Area(outline.build(), random.nextBoolean() ? FillRule.NONZERO : FillRule.EVENODD);
    }

    private void contour(Outline.Builder outline) {
        double[] first = point();
        outline.moveTo(first[0], first[1]);
        double[] before = first;
        for (int n = 2 + random.nextInt(6); n > 0; n--) {
            double[] p = point();
            switch (random.nextInt(8)) {
                case 0 -> outline.lineTo(before[0], p[1]);
                case 1 -> outline.lineTo(p[0], before[1]);
                case 2 -> {
                    double[] q = point();
                    outline.quadTo(q[0], q[1], p[0], p[1]);
                }
                case 3 -> {
                    outline.lineTo(p[0], before[1]);
                    outline.lineTo(p[0], p[1]);
                    outline.lineTo(before[0], p[1]);
                }
                default -> outline.lineTo(p[0], p[1]);
            }
            before = p;
        }
    }

    /** In millimetres. */
    private double[] point() {
        if (!used.isEmpty() && random.nextInt(4) == 0) {
            return used.get(random.nextInt(used.size()));
        }
        double[] p = {
            coordinate(left, width) * Grid.STEP_MM, coordinate(low, height) * Grid.STEP_MM,
        };
        used.add(p);
        return p;
    }

    private double coordinate(int from, int size) {
        return switch (random.nextInt(12)) {
            case 0 -> from;
            case 1 -> from + size;
            case 2 -> from - 1 - random.nextInt(size + 1);
            case 3 -> from + size + 1 + random.nextInt(size + 1);
            case 4 -> from + random.nextInt(size + 1) + (random.nextInt(4) == 0 ? 0.5 : 0);
            case 5 -> random.nextInt(10) == 0 ? from + (random.nextBoolean() ? 1e13 : -1e9) : from;
            default -> cut(from, size) + (random.nextInt(3) == 0 ? random.nextInt(3) - 1 : 0);
        };
    }

    /** A line along which tiles are cut, as the mapper finds it: the middle of a half of a half. */
    private int cut(int from, int size) {
        int at = from;
        int rest = size;
        for (int depth = random.nextInt(6); depth > 0 && rest > 1; depth--) {
            int half = rest / 2;
            if (random.nextBoolean()) {
                at += half;
                rest -= half;
            } else {
                rest = half;
            }
        }
        return at + rest / 2;
    }
}
