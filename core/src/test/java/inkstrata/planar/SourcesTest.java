package inkstrata.planar;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Edges know their curves: the curve at an edge's parameters is where the edge's ends are. */
class SourcesTest {
    /** The flatness, the rounding of a chord's ends and the snapping of a vertex, with a little room. */
    private static final double WITHIN_MM = 0.006;

    private static final Frame FRAME = new Frame(0, 0, 40, 40);
    private static final double[][] LOOP = {
        {10, 10, 18, 2, 38, 12, 30, 20}, {30, 20, 22, 28, 30, 32, 20, 30}, {20, 30, 4, 40, 2, 18, 10, 10}
    };

    @Test
    void curvesAtTheParametersOfAnEdgeAreWhereItsEndsAre() {
        Outline.Builder loop = Outline.builder();
        loop.moveTo(LOOP[0][0], LOOP[0][1]);
        for (double[] c : LOOP) {
            loop.cubicTo(c[2], c[3], c[4], c[5], c[6], c[7]);
        }
        PlanarMap map = map(Outline.rectangle(0, 5, 25, 30), loop.build());
        int curved = 0;
        for (int e = 0; e < map.edges().from().length; e++) {
            Sources.Part part = map.sources().of(e).orElse(null);
            if (part == null || part.outline() != 0) {
                continue;
            }
            curved++;
            double[] c = LOOP[part.command() - 1];
            assertThat(away(c, part.from(), map, map.edges().from()[e])).isLessThan(WITHIN_MM);
            assertThat(away(c, part.to(), map, map.edges().to()[e])).isLessThan(WITHIN_MM);
        }
        assertThat(curved).isGreaterThan(60);
    }

    /** The middle of the frame is the first tile line. */
    @Test
    void anEdgeOnATileLineNamesItsCommand() {
        Outline.Builder below = Outline.builder();
        below.moveTo(20, 10);
        below.lineTo(20, 30);
        below.lineTo(5, 30);
        below.lineTo(5, 10);
        PlanarMap map = map(below.build());
        int found = 0;
        for (int e = 0; e < map.edges().from().length; e++) {
            EdgeTable t = map.edges();
            if (t.x()[t.from()[e]] == Grid.steps(20) && t.x()[t.to()[e]] == Grid.steps(20)) {
                found++;
                assertThat(map.sources().of(e)).isPresent();
                Sources.Part part = map.sources().of(e).orElseThrow();
                assertThat(part.command()).isEqualTo(1);
                assertThat(Math.min(part.from(), part.to())).isZero();
                assertThat(Math.max(part.from(), part.to())).isEqualTo(1);
            }
        }
        assertThat(found).isEqualTo(1);
    }

    /** Topmost last. */
    private static PlanarMap map(Outline... outlines) {
        List<FlatShape> shapes = new ArrayList<>();
        for (Outline outline : outlines) {
            Rgb colour = new Rgb(10 * shapes.size(), 0, 0);
            shapes.add(FlatShape.opaque(new Area(outline, FillRule.NONZERO), colour, Source.UNKNOWN));
        }
        return PlanarMapper.map(
                new Artwork("sources", FRAME, shapes, List.of()), MapSettings.DEFAULT.withTilePieces(8));
    }

    /** In millimetres; the curve by its Bernstein polynomials. */
    private static double away(double[] c, double t, PlanarMap map, int vertex) {
        double[] w = {(1 - t) * (1 - t) * (1 - t), 3 * t * (1 - t) * (1 - t), 3 * t * t * (1 - t), t * t * t};
        double x = 0;
        double y = 0;
        for (int i = 0; i < 4; i++) {
            x += w[i] * c[2 * i];
            y += w[i] * c[2 * i + 1];
        }
        return Point2D.distance(
                x,
                y,
                Grid.millimetres(map.edges().x()[vertex]),
                Grid.millimetres(map.edges().y()[vertex]));
    }
}
