package inkstrata.planar;

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

/** Drawings whose shapes were meant to meet, and miss each other. */
public final class SeamDrawings {
    /** Dark and light ones in turn. */
    private static final Rgb[] COLOURS = {
        new Rgb(200, 30, 30), new Rgb(250, 200, 40), new Rgb(20, 60, 160), new Rgb(120, 200, 120), new Rgb(40, 40, 40)
    };

    private static final Frame FRAME = new Frame(0, 0, 60, 60);

    private SeamDrawings() {}

    public static final List<String> KINDS = List.of("bricks", "sectors", "rings", "cells", "noise");

    /**
     * One of them.
     *
     * @param decimals to which coordinates are rounded, in millimetres; 9 for hardly
     * @param gap left between neighbours, in millimetres
     */
    public static Artwork of(String kind, int decimals, double gap, long seed) {
        Random random = new Random(seed);
        Pen pen = new Pen(Math.pow(10, decimals), gap);
        switch (kind) {
            case "bricks" -> bricks(pen, random);
            case "sectors" -> sectors(pen, random);
            case "rings" -> rings(pen, random);
            case "cells" -> cells(pen, random);
            default -> noise(pen, random, 6, 8.0, 0.02);
        }
        return new Artwork(kind + " " + decimals + " " + gap + " " + seed, FRAME, pen.shapes, List.of());
    }

    /** Traced: n x n cells whose common borders are traced twice, apart from each other by up to so much. */
    public static Artwork traced(int n, double cell, double most, long seed) {
        Pen pen = new Pen(1000, 0);
        noise(pen, new Random(seed), n, cell, most);
        return new Artwork("traced", new Frame(0, 0, n * cell + 4, n * cell + 4), pen.shapes, List.of());
    }

    /** Draws shapes with rounded coordinates. */
    private static final class Pen {
        private final List<FlatShape> shapes = new ArrayList<>();
        private final double perMm;
        private final double gap;

        Pen(double perMm, double gap) {
            this.perMm = perMm;
            this.gap = gap;
        }

        double round(double v) {
            return Math.rint(v * perMm) / perMm;
        }

        void polygon(int colour, double... p) {
            Outline.Builder outline = Outline.builder();
            outline.moveTo(round(p[0]), round(p[1]));
            for (int i = 2; i < p.length; i += 2) {
                outline.lineTo(round(p[i]), round(p[i + 1]));
            }
            add(colour, outline);
        }

        void add(int colour, Outline.Builder outline) {
            shapes.add(FlatShape.opaque(
                    new Area(outline.build(), FillRule.NONZERO), COLOURS[colour % COLOURS.length], Source.UNKNOWN));
        }
    }

    private static void bricks(Pen pen, Random random) {
        double y = 5.003 + random.nextDouble();
        for (int row = 0; row < 4; row++) {
            double height = 6 + 3 * random.nextDouble();
            double x = 4 + 3 * random.nextDouble();
            for (int column = 0; column < 4; column++) {
                double width = 7 + 5 * random.nextDouble();
                double g = pen.gap / 2;
                pen.polygon(
                        row * 2 + column,
                        x + g,
                        y + g,
                        x + width - g,
                        y + g,
                        x + width - g,
                        y + height - g,
                        x + g,
                        y + height - g);
                x += width;
            }
            y += height;
        }
    }

    private static void sectors(Pen pen, Random random) {
        int n = 5 + random.nextInt(4);
        double turn = random.nextDouble();
        double r = 20;
        for (int i = 0; i < n; i++) {
            double a = 2 * Math.PI * (i + turn) / n;
            double b = 2 * Math.PI * (i + 1 + turn) / n;
            double half = pen.gap / 2;
            double tip = half / Math.sin((b - a) / 2);
            double m = (a + b) / 2;
            double da = half / r;
            Outline.Builder o = Outline.builder();
            o.moveTo(pen.round(30 + tip * Math.cos(m)), pen.round(30 + tip * Math.sin(m)));
            o.lineTo(pen.round(30 + r * Math.cos(a + da)), pen.round(30 + r * Math.sin(a + da)));
            double k = 4.0 / 3 * Math.tan((b - a - 2 * da) / 4) * r;
            o.cubicTo(
                    30 + r * Math.cos(a + da) - k * Math.sin(a + da),
                    30 + r * Math.sin(a + da) + k * Math.cos(a + da),
                    30 + r * Math.cos(b - da) + k * Math.sin(b - da),
                    30 + r * Math.sin(b - da) - k * Math.cos(b - da),
                    pen.round(30 + r * Math.cos(b - da)),
                    pen.round(30 + r * Math.sin(b - da)));
            pen.add(i, o);
        }
    }

    /** Polygons of 64 corners inside rings of arcs. */
    private static void rings(Pen pen, Random random) {
        double inner = 6 + random.nextDouble();
        double middle = inner + 5;
        double outer = middle + 6;
        ring(pen, 0, inner - pen.gap, 0);
        ring(pen, 1, middle - pen.gap, inner);
        ring(pen, 2, outer, middle);
    }

    private static void ring(Pen pen, int colour, double outer, double inner) {
        Outline.Builder o = Outline.builder();
        for (int i = 0; i < 64; i++) {
            double a = 2 * Math.PI * i / 64;
            double x = pen.round(30 + outer * Math.cos(a));
            double y = pen.round(30 + outer * Math.sin(a));
            if (i == 0) {
                o.moveTo(x, y);
            } else {
                o.lineTo(x, y);
            }
        }
        if (inner > 0) {
            double k = 4.0 / 3 * (Math.sqrt(2) - 1) * inner;
            o.moveTo(30 + inner, 30);
            o.cubicTo(30 + inner, 30 - k, 30 + k, 30 - inner, 30, 30 - inner);
            o.cubicTo(30 - k, 30 - inner, 30 - inner, 30 - k, 30 - inner, 30);
            o.cubicTo(30 - inner, 30 + k, 30 - k, 30 + inner, 30, 30 + inner);
            o.cubicTo(30 + k, 30 + inner, 30 + inner, 30 + k, 30 + inner, 30);
        }
        pen.add(colour, o);
    }

    /** Cells of a plane cut by lines, each shrunk towards the inside by half the gap. */
    private static void cells(Pen pen, Random random) {
        List<double[]> cells = new ArrayList<>(List.of(new double[] {6, 6, 54, 6, 54, 54, 6, 54}));
        for (int i = 0; i < 7; i++) {
            double px = 15 + 30 * random.nextDouble();
            double py = 15 + 30 * random.nextDouble();
            double a = 2 * Math.PI * random.nextDouble();
            List<double[]> next = new ArrayList<>();
            for (double[] cell : cells) {
                double[] one = cut(cell, px, py, Math.cos(a), Math.sin(a));
                double[] other = cut(cell, px, py, -Math.cos(a), -Math.sin(a));
                if (one.length >= 6) {
                    next.add(one);
                }
                if (other.length >= 6) {
                    next.add(other);
                }
            }
            cells = next;
        }
        int colour = 0;
        for (double[] cell : cells) {
            double[] shrunk = cell;
            for (int i = 0; i < cell.length; i += 2) {
                int k = (i + 2) % cell.length;
                double dx = cell[k] - cell[i];
                double dy = cell[k + 1] - cell[i + 1];
                double size = Math.hypot(dx, dy);
                double nx = -dy / size;
                double ny = dx / size;
                double side = 0;
                for (int j = 0; j < cell.length; j += 2) {
                    side += (cell[j] - cell[i]) * nx + (cell[j + 1] - cell[i + 1]) * ny;
                }
                double sign = Math.signum(side);
                shrunk = cut(
                        shrunk,
                        cell[i] + sign * nx * pen.gap / 2,
                        cell[i + 1] + sign * ny * pen.gap / 2,
                        sign * nx,
                        sign * ny);
                if (shrunk.length < 6) {
                    break;
                }
            }
            if (shrunk.length >= 6) {
                pen.polygon(colour++, shrunk);
            }
        }
    }

    /** The part of a convex polygon on the side of a line to which n points. */
    private static double[] cut(double[] p, double px, double py, double nx, double ny) {
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < p.length; i += 2) {
            int k = (i + 2) % p.length;
            double a = (p[i] - px) * nx + (p[i + 1] - py) * ny;
            double b = (p[k] - px) * nx + (p[k + 1] - py) * ny;
            if (a >= 0) {
                out.add(p[i]);
                out.add(p[i + 1]);
            }
            if ((a > 0 && b < 0) || (a < 0 && b > 0)) {
                out.add(p[i] + (p[k] - p[i]) * a / (a - b));
                out.add(p[i + 1] + (p[k + 1] - p[i + 1]) * a / (a - b));
            }
        }
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void noise(Pen pen, Random random, int n, double cell, double most) {
        double[][][] across = new double[n + 1][n][];
        double[][][] down = new double[n][n + 1][];
        double[][][] corners = new double[n + 1][n + 1][];
        for (int i = 0; i <= n; i++) {
            for (int k = 0; k <= n; k++) {
                corners[i][k] = new double[] {
                    2 + cell * k + cell / 4 * (random.nextDouble() - 0.5),
                    2 + cell * i + cell / 4 * (random.nextDouble() - 0.5)
                };
            }
        }
        for (int i = 0; i <= n; i++) {
            for (int k = 0; k <= n; k++) {
                if (k < n) {
                    across[i][k] = line(corners[i][k], corners[i][k + 1], random);
                }
                if (i < n) {
                    down[i][k] = line(corners[i][k], corners[i + 1][k], random);
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                List<Double> p = new ArrayList<>();
                trace(p, across[i][k], true, 0, 1, most, pen.gap, random);
                trace(p, down[i][k + 1], true, -1, 0, most, pen.gap, random);
                trace(p, across[i + 1][k], false, 0, -1, most, pen.gap, random);
                trace(p, down[i][k], false, 1, 0, most, pen.gap, random);
                pen.polygon(
                        i * 2 + k, p.stream().mapToDouble(Double::doubleValue).toArray());
            }
        }
    }

    private static double[] line(double[] from, double[] to, Random random) {
        int pieces = 8;
        double[] p = new double[2 * pieces + 2];
        double size = Math.hypot(to[0] - from[0], to[1] - from[1]);
        for (int i = 0; i <= pieces; i++) {
            double off = i == 0 || i == pieces ? 0 : 0.03 * size * random.nextGaussian();
            p[2 * i] = from[0] + (to[0] - from[0]) * i / pieces - off * (to[1] - from[1]) / size;
            p[2 * i + 1] = from[1] + (to[1] - from[1]) * i / pieces + off * (to[0] - from[0]) / size;
        }
        return p;
    }

    /** Adds a line but for its last point, each point moved to the inside by half the gap and by up to {@code most} / 2. */
    private static void trace(
            List<Double> p,
            double[] line,
            boolean forward,
            double nx,
            double ny,
            double most,
            double gap,
            Random random) {
        for (int i = 0; i + 2 < line.length; i += 2) {
            int at = forward ? i : line.length - 2 - i;
            double by = gap / 2 + most / 2 * random.nextDouble();
            p.add(line[at] + nx * by);
            p.add(line[at + 1] + ny * by);
        }
    }
}
