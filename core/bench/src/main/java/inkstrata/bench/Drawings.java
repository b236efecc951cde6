package inkstrata.bench;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Drawings made from a seed, in twelve colours on a canvas of 250 mm. */
final class Drawings {
    private static final double CANVAS_MM = 250;
    private static final int COLOURS = 12;

    private Drawings() {}

    /** Smooth polygons of 64 corners all over the canvas, on average three of them at each place. */
    static Artwork blobs(int count) {
        return smooth(count, Math.sqrt(3 * CANVAS_MM * CANVAS_MM / (Math.PI * count)));
    }

    /** The same polygons, each as large as 250 spread over the canvas would be: the more, the deeper. */
    static Artwork deep(int count) {
        return smooth(count, Math.sqrt(3 * CANVAS_MM * CANVAS_MM / (Math.PI * 250)));
    }

    private static Artwork smooth(int count, double radius) {
        Random random = new Random(count);
        List<FlatShape> shapes = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            double cx = random.nextDouble() * CANVAS_MM;
            double cy = random.nextDouble() * CANVAS_MM;
            double phase = random.nextDouble() * 2 * Math.PI;
            double wave = 0.25 * random.nextDouble();
            Outline.Builder outline = Outline.builder();
            for (int k = 0; k < 64; k++) {
                double angle = 2 * Math.PI * k / 64;
                double r = radius * (1 + wave * Math.sin(3 * angle + phase));
                corner(outline, k, cx + r * Math.cos(angle), cy + r * Math.sin(angle));
            }
            shapes.add(shape(outline.build(), random.nextInt(COLOURS)));
        }
        return artwork("blobs", shapes);
    }

    /**
     * A map of counties: jittered cells that share rough borders, vertex by vertex.
     *
     * @param side cells along one side of the canvas
     * @param perEdge vertices on each border
     */
    static Artwork counties(int side, int perEdge) {
        double[][] x = new double[side + 1][side + 1];
        double[][] y = new double[side + 1][side + 1];
        Random random = new Random(side);
        double cell = CANVAS_MM / side;
        for (int i = 0; i <= side; i++) {
            for (int j = 0; j <= side; j++) {
                x[i][j] = (i + (i % side == 0 ? 0 : 0.3 * (random.nextDouble() - 0.5))) * cell;
                y[i][j] = (j + (j % side == 0 ? 0 : 0.3 * (random.nextDouble() - 0.5))) * cell;
            }
        }
        List<FlatShape> shapes = new ArrayList<>();
        for (int i = 0; i < side; i++) {
            for (int j = 0; j < side; j++) {
                Outline.Builder outline = Outline.builder();
                int[][] corners = {{i, j}, {i + 1, j}, {i + 1, j + 1}, {i, j + 1}};
                int k = 0;
                for (int c = 0; c < 4; c++) {
                    int[] a = corners[c];
                    int[] b = corners[(c + 1) % 4];
                    for (int s = 0; s < perEdge; s++) {
                        double[] p = onBorder(x, y, a, b, s, perEdge);
                        corner(outline, k++, p[0], p[1]);
                    }
                }
                shapes.add(shape(outline.build(), (i * 7 + j * 5) % COLOURS));
            }
        }
        return artwork("counties", shapes);
    }

    private static double[] onBorder(double[][] x, double[][] y, int[] a, int[] b, int s, int perEdge) {
        boolean forward = a[0] < b[0] || (a[0] == b[0] && a[1] < b[1]);
        int[] from = forward ? a : b;
        int[] to = forward ? b : a;
        double t = (forward ? s : perEdge - s) / (double) perEdge;
        double dx = x[to[0]][to[1]] - x[from[0]][from[1]];
        double dy = y[to[0]][to[1]] - y[from[0]][from[1]];
        long seed = from[0] * 7919L + from[1] * 104729L + (to[0] - from[0]) * 31L;
        double rough = 0.06
                * (Math.sin(Math.PI * t) * Math.sin(37 * t + seed)
                        + 0.4 * Math.sin(Math.PI * t) * Math.sin(211 * t + 3 * seed));
        boolean rim = (from[0] == to[0] && from[0] % (x.length - 1) == 0)
                || (from[1] == to[1] && from[1] % (x.length - 1) == 0);
        double off = rim ? 0 : rough;
        return new double[] {
            x[from[0]][from[1]] + t * dx - off * dy, y[from[0]][from[1]] + t * dy + off * dx,
        };
    }

    /** Long thin bars through one point: every bar crosses every other. */
    static Artwork sunburst(int bars) {
        List<FlatShape> shapes = new ArrayList<>();
        for (int i = 0; i < bars; i++) {
            double angle = Math.PI * i / bars;
            double cos = Math.cos(angle);
            double sin = Math.sin(angle);
            double middle = CANVAS_MM / 2;
            double length = 0.48 * CANVAS_MM;
            double half = 0.1;
            Outline.Builder outline = Outline.builder();
            corner(outline, 0, middle - length * cos - half * sin, middle - length * sin + half * cos);
            corner(outline, 1, middle + length * cos - half * sin, middle + length * sin + half * cos);
            corner(outline, 2, middle + length * cos + half * sin, middle + length * sin - half * cos);
            corner(outline, 3, middle - length * cos + half * sin, middle - length * sin - half * cos);
            shapes.add(shape(outline.build(), i % COLOURS));
        }
        return artwork("sunburst", shapes);
    }

    private static void corner(Outline.Builder outline, int k, double x, double y) {
        if (k == 0) {
            outline.moveTo(x, y);
        } else {
            outline.lineTo(x, y);
        }
    }

    private static FlatShape shape(Outline outline, int colour) {
        return FlatShape.opaque(new Area(outline, FillRule.NONZERO), Rgb.of(0x101010 * (colour + 1)), Source.UNKNOWN);
    }

    private static Artwork artwork(String name, List<FlatShape> shapes) {
        return new Artwork(name, new Frame(0, 0, CANVAS_MM, CANVAS_MM), shapes, List.of());
    }
}
