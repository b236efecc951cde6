package inkstrata.artwork.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.artwork.stroke.StrokeStyle.Cap;
import inkstrata.artwork.stroke.StrokeStyle.Join;
import inkstrata.colour.Rgb;
import inkstrata.house.HowMany;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.planar.StackSet;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Strokes of generated paths with cusps, loops, tight bends and handles without length cover what SVG 2, section 13.5.8,
 * says to 2 µm and nothing else, and fall into no specks.
 */
class StrokeLawsTest {
    /** A place counts only if all places around it, so far away, agree about it; in millimetres. */
    private static final double SURE = 0.002;

    private static final int FROM = Integer.getInteger("strokes.from", 0);
    private static final int PATHS = Integer.getInteger("strokes.paths", 4000);

    /** A path and how it is drawn. */
    private record Drawn(List<double[]> legs, boolean closed, StrokeStyle style) {
        Path2D.Double path() {
            Path2D.Double path = new Path2D.Double();
            path.moveTo(legs.get(0)[0], legs.get(0)[1]);
            for (double[] c : legs) {
                path.curveTo(c[2], c[3], c[4], c[5], c[6], c[7]);
            }
            if (closed) {
                path.closePath();
            }
            return path;
        }

        @Override
        public String toString() {
            StringBuilder text = new StringBuilder("M" + legs.get(0)[0] + " " + legs.get(0)[1]);
            for (double[] c : legs) {
                text.append("C");
                for (int i = 2; i < 8; i++) {
                    text.append(c[i]).append(' ');
                }
            }
            return text + (closed ? "z " : " ") + style;
        }
    }

    @Test
    void strokesCoverWhatTheyShould() {
        for (int seed = 0; seed < HowMany.of(10); seed++) {
            check(seed);
        }
    }

    @Test
    @Tag("long")
    void manyStrokesCoverWhatTheyShould() {
        List<String> faults = new ArrayList<>();
        for (int seed = FROM; seed < FROM + PATHS; seed++) {
            try {
                check(seed);
            } catch (AssertionError fault) {
                faults.add(fault.getMessage());
            }
        }
        assertThat(faults).isEmpty();
    }

    private static void check(int seed) {
        Random random = new Random(seed);
        Drawn drawn = drawn(random);
        Path2D.Double outline = Stroker.outline(drawn.path(), drawn.style(), 1);
        TrueStroke truth = new TrueStroke(drawn.legs(), drawn.closed(), drawn.style());
        int sure = 0;
        for (double[] place : places(drawn, truth, outline, random)) {
            boolean covered = truth.covers(place[0], place[1]);
            if (isSure(truth, place, covered)) {
                sure++;
                assertThat(outline.contains(place[0], place[1]))
                        .as("%s, %s in stroke %d: %s", place[0], place[1], seed, drawn)
                        .isEqualTo(covered);
            }
        }
        assertThat(sure).as("places of stroke %d: %s", seed, drawn).isGreaterThan(30);
        assertThat(specks(outline, truth))
                .as("specks of stroke %d: %s", seed, drawn)
                .isEmpty();
    }

    private static boolean isSure(TrueStroke truth, double[] place, boolean covered) {
        for (int i = 0; i < 8; i++) {
            double x = place[0] + SURE * Math.cos(i * Math.PI / 4);
            double y = place[1] + SURE * Math.sin(i * Math.PI / 4);
            if (truth.covers(x, y) != covered) {
                return false;
            }
        }
        return true;
    }

    /** Near the ends of the pen, near what was drawn, and anywhere. */
    private static List<double[]> places(Drawn drawn, TrueStroke truth, Path2D.Double outline, Random random) {
        List<double[]> places = new ArrayList<>();
        double half = drawn.style().width() / 2;
        for (int leg = 0; leg < drawn.legs().size(); leg++) {
            for (int i = 0; i < 20; i++) {
                double side = random.nextBoolean() ? 1 : -1;
                double off = half + (random.nextBoolean() ? 1 : -1) * SURE * (1.5 + 3 * random.nextDouble());
                places.add(truth.beside(leg, random.nextDouble(), side * off));
            }
        }
        double[] c = new double[6];
        int count = 0;
        for (PathIterator at = outline.getPathIterator(null); !at.isDone() && count < 80; at.next()) {
            if (at.currentSegment(c) != PathIterator.SEG_CLOSE) {
                count++;
                double angle = 2 * Math.PI * random.nextDouble();
                double off = SURE * (1.5 + 3 * random.nextDouble());
                places.add(new double[] {c[0] + off * Math.cos(angle), c[1] + off * Math.sin(angle)});
            }
        }
        Rectangle2D box = outline.getBounds2D();
        for (int i = 0; i < 30; i++) {
            places.add(new double[] {
                box.getX() + box.getWidth() * random.nextDouble(), box.getY() + box.getHeight() * random.nextDouble()
            });
        }
        return places;
    }

    /**
     * Parts and holes that are there by mistake: thinner than a micrometre and larger than one square micrometre, where the
     * truth says otherwise.
     */
    private static List<String> specks(Path2D.Double outline, TrueStroke truth) {
        Rectangle2D box = outline.getBounds2D();
        Outline.Builder flat = Outline.builder();
        double[] c = new double[6];
        AffineTransform toSheet = AffineTransform.getTranslateInstance(5 - box.getX(), 5 - box.getY());
        for (PathIterator at = outline.getPathIterator(toSheet); !at.isDone(); at.next()) {
            switch (at.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> flat.moveTo(c[0], c[1]);
                case PathIterator.SEG_LINETO -> flat.lineTo(c[0], c[1]);
                case PathIterator.SEG_CUBICTO -> flat.cubicTo(c[0], c[1], c[2], c[3], c[4], c[5]);
                default -> {}
            }
        }
        Frame frame = new Frame(0, 0, box.getWidth() + 10, box.getHeight() + 10);
        Artwork artwork = new Artwork(
                "stroke",
                frame,
                List.of(FlatShape.opaque(
                        new Area(flat.build(), FillRule.NONZERO), Rgb.parse("#102030"), Source.UNKNOWN)),
                List.of());
        PlanarMap map = PlanarMapper.map(artwork, MapSettings.DEFAULT);
        StackSet inked = StackSet.of(IntStream.range(0, map.stacks().size())
                .filter(i -> !map.stacks().get(i).isBare()));
        List<String> specks = new ArrayList<>();
        for (Region.Polygon polygon : map.dissolve(inked).polygons()) {
            speck(polygon.shell(), false, box, truth, specks);
            polygon.holes().forEach(hole -> speck(hole, true, box, truth, specks));
        }
        return specks;
    }

    private static void speck(Ring ring, boolean isHole, Rectangle2D box, TrueStroke truth, List<String> specks) {
        double area = 0;
        double around = 0;
        for (int i = 0; i < ring.size(); i++) {
            int next = (i + 1) % ring.size();
            area += ((double) ring.x(i) * ring.y(next) - (double) ring.x(next) * ring.y(i)) / 2;
            around += Math.hypot(ring.x(next) - ring.x(i), ring.y(next) - ring.y(i));
        }
        area = Math.abs(area) * Grid.STEP_MM * Grid.STEP_MM;
        around *= Grid.STEP_MM;
        if (area > 1e-6 && area < 0.0005 * around) {
            double[] inside = inside(ring, box);
            if (truth.covers(inside[0], inside[1]) == isHole) {
                specks.add(String.format(
                        Locale.ROOT, "%.3g mm² in %.3g mm at %.5f, %.5f", area, around, inside[0], inside[1]));
            }
        }
    }

    /** The middle of a corner that lies inside. */
    private static double[] inside(Ring ring, Rectangle2D box) {
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i < ring.size(); i++) {
            if (i == 0) {
                path.moveTo(ring.x(i), ring.y(i));
            } else {
                path.lineTo(ring.x(i), ring.y(i));
            }
        }
        path.closePath();
        for (int i = 0; i < ring.size(); i++) {
            int b = (i + 1) % ring.size();
            int c = (i + 2) % ring.size();
            double x = (ring.x(i) + ring.x(b) + ring.x(c)) / 3.0;
            double y = (ring.y(i) + ring.y(b) + ring.y(c)) / 3.0;
            if (path.contains(x, y)) {
                return new double[] {x * Grid.STEP_MM + box.getX() - 5, y * Grid.STEP_MM + box.getY() - 5};
            }
        }
        throw new IllegalStateException("every ring has a corner that lies inside");
    }

    private static Drawn drawn(Random random) {
        int count = random.nextInt(3) == 0 ? 2 + random.nextInt(3) : 1;
        List<double[]> legs = new ArrayList<>();
        double[] from = point(random, 20);
        double[] start = from;
        for (int i = 0; i < count; i++) {
            double[] leg = leg(from, random);
            legs.add(leg);
            from = new double[] {leg[6], leg[7]};
        }
        boolean closed = random.nextInt(3) == 0 && Math.hypot(from[0] - start[0], from[1] - start[1]) > 0.01;
        if (closed) {
            legs.add(line(from[0], from[1], start[0], start[1]));
        }
        double width = Math.exp(Math.log(0.1) + Math.log(120) * random.nextDouble());
        StrokeStyle style = new StrokeStyle(
                width,
                List.of(Cap.BUTT, Cap.ROUND, Cap.SQUARE).get(random.nextInt(3)),
                List.of(Join.MITER, Join.ROUND, Join.BEVEL).get(random.nextInt(3)),
                random.nextBoolean() ? 4 : 1 + 9 * random.nextDouble(),
                List.of(),
                0);
        return new Drawn(legs, closed, style);
    }

    private static double[] point(Random random, double size) {
        return new double[] {size * random.nextDouble(), size * random.nextDouble()};
    }

    private static double[] line(double x, double y, double toX, double toY) {
        return new double[] {
            x, y, x + (toX - x) / 3, y + (toY - y) / 3, x + 2 * (toX - x) / 3, y + 2 * (toY - y) / 3, toX, toY
        };
    }

    private static double[] leg(double[] from, Random random) {
        double size = random.nextInt(4) == 0 ? 1 : 20;
        double[] a = point(random, size);
        double[] b = point(random, size);
        double[] c = point(random, size);
        double x = from[0];
        double y = from[1];
        double[] leg = {x, y, a[0], a[1], b[0], b[1], c[0], c[1]};
        switch (random.nextInt(12)) {
            case 0 -> leg = line(x, y, c[0], c[1]);
            case 1 -> {
                leg[2] = x;
                leg[3] = y;
            }
            case 2 -> {
                leg[4] = c[0];
                leg[5] = c[1];
            }
            case 3 -> {
                leg[4] = a[0];
                leg[5] = a[1];
            }
            case 4 -> cusp(leg, 0);
            case 5 -> cusp(leg, Math.pow(10, -1 - 7 * random.nextDouble()));
            case 6 -> round(leg, 1);
            case 7 -> round(leg, 100);
            case 8 -> {
                // There and back on a line.
                double along = random.nextDouble() * 2 - 0.5;
                double back = random.nextDouble() * 2 - 0.5;
                leg = new double[] {
                    x, y, x + 8 * Math.rint(16 * along) / 16, y, x + 8 * Math.rint(16 * back) / 16, y, x + 8, y
                };
            }
            case 9 -> {
                // A hook: handles much longer than the way.
                leg[6] = x + 0.3;
                leg[7] = y + 0.05;
            }
            default -> {}
        }
        return leg;
    }

    /** Moves the last point so that the path stands still half way, all but for some millimetres. */
    private static void cusp(double[] leg, double off) {
        for (int axis = 0; axis < 2; axis++) {
            // Eighths, so that nothing is rounded.
            for (int i = axis; i < 8; i += 2) {
                leg[i] = i < 2 ? leg[i] : Math.rint(8 * (leg[i] - leg[axis])) / 8 + leg[axis];
            }
            leg[6 + axis] = leg[axis] + leg[2 + axis] - leg[4 + axis];
        }
        leg[7] += off;
    }

    private static void round(double[] leg, double to) {
        for (int i = 2; i < 8; i++) {
            leg[i] = Math.rint(leg[i] * to) / to;
        }
    }
}
