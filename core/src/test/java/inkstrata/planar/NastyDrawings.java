package inkstrata.planar;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.artwork.TranslucentGroup;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Drawings made to cause trouble, from a seed: vertices a hair apart, collinear runs, self-crossing stars, slivers, spikes,
 * islands, touching corners, both fill rules, copies of copies, tiny canvases and large ones, clips and translucent shapes.
 */
public final class NastyDrawings {
    private static final int[] CANVASES = {12, 40, 300, 4000, 200_000, 4_000_000};

    private final Random random;
    private final int canvas;
    private final int left;
    private final int low;
    private final List<int[]> points = new ArrayList<>();

    private NastyDrawings(Random random) {
        this.random = random;
        this.canvas = CANVASES[random.nextInt(CANVASES.length)];
        this.left = random.nextBoolean() ? 0 : random.nextInt(canvas);
        this.low = random.nextBoolean() ? 0 : random.nextInt(canvas);
    }

    /** Opaque shapes without clips. */
    public static Artwork opaque(long seed) {
        return drawing(seed, false, false);
    }

    /** Opaque shapes, some of them clipped. */
    public static Artwork clipped(long seed) {
        return drawing(seed, true, false);
    }

    /** Everything: clips, translucent shapes and groups. */
    public static Artwork translucent(long seed) {
        return drawing(seed, true, true);
    }

    private static Artwork drawing(long seed, boolean clips, boolean translucent) {
        return new NastyDrawings(new Random(seed * 0x9E3779B97F4A7C15L + 1))
                .draw("drawing " + seed, clips, translucent);
    }

    private Artwork draw(String name, boolean clips, boolean translucent) {
        int count = random.nextInt(8) == 0 ? 60 + random.nextInt(200) : 1 + random.nextInt(16);
        int colours = 1 + random.nextInt(random.nextBoolean() ? 3 : 12);
        List<Area> areas = new ArrayList<>();
        List<FlatShape> shapes = new ArrayList<>();
        List<Clip> windows = new ArrayList<>();
        if (clips) {
            for (int i = 0; i < 3; i++) {
                List<Area> parts = new ArrayList<>();
                for (int k = random.nextInt(3); k >= 0; k--) {
                    parts.add(area(areas));
                }
                windows.add(new Clip(parts));
            }
        }
        Optional<TranslucentGroup> group = Optional.empty();
        int groups = 0;
        for (int i = 0; i < count; i++) {
            if (translucent && random.nextInt(4) == 0) {
                group = switch (random.nextInt(3)) {
                    case 0 -> Optional.empty();
                    case 1 -> Optional.of(new TranslucentGroup(groups++, 0.5, Optional.empty()));
                    default -> Optional.of(new TranslucentGroup(groups++, 0.25, group));
                };
            }
            double opacity = translucent && random.nextInt(3) == 0 ? 0.5 : 1;
            List<Clip> own = new ArrayList<>();
            for (Clip window : windows) {
                if (random.nextInt(4) == 0) {
                    own.add(window);
                }
            }
            Rgb colour = Rgb.of(0x123457 * (1 + random.nextInt(colours)) & 0xffffff);
            shapes.add(new FlatShape(area(areas), colour, opacity, group, own, Source.UNKNOWN));
        }
        double step = Grid.STEP_MM;
        return new Artwork(name, new Frame(left * step, low * step, canvas * step, canvas * step), shapes, List.of());
    }

    private Area area(List<Area> earlier) {
        Area area;
        if (!earlier.isEmpty() && random.nextInt(5) == 0) {
            area = hairApart(earlier.get(random.nextInt(earlier.size())));
        } else {
            area = new Area(outline(), random.nextBoolean() ? FillRule.NONZERO : FillRule.EVENODD);
        }
        earlier.add(area);
        return area;
    }

    /** The same again, exactly or a step or two away. */
    private Area hairApart(Area area) {
        double dx = (random.nextInt(5) - 2) * Grid.STEP_MM * (random.nextBoolean() ? 1 : 0.4);
        double dy = (random.nextInt(5) - 2) * Grid.STEP_MM * (random.nextBoolean() ? 1 : 0.4);
        return random.nextInt(3) == 0 ? area : area.movedBy(dx, dy);
    }

    private Outline outline() {
        Outline.Builder outline = Outline.builder();
        for (int contours = random.nextInt(4) == 0 ? 3 : 1; contours > 0; contours--) {
            switch (random.nextInt(8)) {
                case 0 -> box(outline);
                case 1 -> star(outline);
                case 2 -> spike(outline);
                case 3 -> sliver(outline);
                case 4 -> curves(outline);
                case 5 -> staircase(outline);
                default -> scrawl(outline);
            }
        }
        return outline.build();
    }

    private void box(Outline.Builder outline) {
        int[] a = point();
        int[] b = point();
        polygon(outline, a[0], a[1], b[0], a[1], b[0], b[1], a[0], b[1]);
    }

    private void star(Outline.Builder outline) {
        int[] c = point();
        int n = 5 + 2 * random.nextInt(4);
        int skip = n / 2;
        double r = canvas * (0.1 + 0.6 * random.nextDouble());
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i * skip / n;
            xy[2 * i] = c[0] + r * Math.cos(angle);
            xy[2 * i + 1] = c[1] + r * Math.sin(angle);
        }
        polygon(outline, xy);
    }

    private void spike(Outline.Builder outline) {
        int[] a = point();
        int[] b = point();
        int[] c = point();
        polygon(outline, a[0], a[1], b[0], b[1], c[0], c[1], b[0], b[1]);
    }

    private void sliver(Outline.Builder outline) {
        int[] a = point();
        int[] b = point();
        polygon(outline, a[0], a[1], b[0], b[1], b[0] + random.nextInt(3) - 1, b[1] + 1, a[0] - 1, a[1]);
    }

    private void curves(Outline.Builder outline) {
        int[] a = point();
        int[] b = point();
        int[] c = point();
        double s = Grid.STEP_MM;
        outline.moveTo(a[0] * s, a[1] * s);
        outline.quadTo(b[0] * s, b[1] * s, c[0] * s, c[1] * s);
        outline.cubicTo(a[0] * s, c[1] * s, b[0] * s, a[1] * s, b[0] * s, c[1] * s);
    }

    private void staircase(Outline.Builder outline) {
        int[] a = point();
        int n = 2 + random.nextInt(6);
        int step = 1 + random.nextInt(Math.max(1, canvas / 8));
        double[] xy = new double[4 * n + 2];
        for (int i = 0; i < n; i++) {
            xy[4 * i] = a[0] + (double) i * step;
            xy[4 * i + 1] = a[1] + (double) i * step;
            xy[4 * i + 2] = a[0] + (double) (i + 1) * step;
            xy[4 * i + 3] = a[1] + (double) i * step;
        }
        xy[4 * n] = a[0];
        xy[4 * n + 1] = a[1] + (double) n * step;
        polygon(outline, xy);
    }

    private void scrawl(Outline.Builder outline) {
        int n = 3 + random.nextInt(10);
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            int[] p = point();
            xy[2 * i] = p[0];
            xy[2 * i + 1] = p[1];
        }
        polygon(outline, xy);
    }

    /** A new point, one that was used before, one a step from it, or one on the frame. */
    private int[] point() {
        int[] p;
        int kind = random.nextInt(10);
        if (kind < 3 && !points.isEmpty()) {
            p = points.get(random.nextInt(points.size()));
        } else if (kind == 3 && !points.isEmpty()) {
            int[] q = points.get(random.nextInt(points.size()));
            p = new int[] {q[0] + random.nextInt(3) - 1, q[1] + random.nextInt(3) - 1};
        } else if (kind == 4 && !points.isEmpty()) {
            int[] q = points.get(random.nextInt(points.size()));
            p = new int[] {q[0], low + random.nextInt(canvas + 1)};
        } else if (kind == 5) {
            p = new int[] {left + (random.nextBoolean() ? 0 : canvas), low + random.nextInt(canvas + 1)};
        } else {
            p = new int[] {
                left + (int) ((random.nextDouble() * 1.4 - 0.2) * canvas),
                low + (int) ((random.nextDouble() * 1.4 - 0.2) * canvas)
            };
        }
        points.add(p);
        return p;
    }

    private static void polygon(Outline.Builder outline, double... steps) {
        double s = Grid.STEP_MM;
        outline.moveTo(steps[0] * s, steps[1] * s);
        for (int i = 2; i < steps.length; i += 2) {
            outline.lineTo(steps[i] * s, steps[i + 1] * s);
        }
    }
}
