package inkstrata.positive;

import static inkstrata.planar.RegionExample.polygon;
import static inkstrata.planar.RegionExample.rectangle;
import static inkstrata.planar.RegionExample.ring;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.planar.Region.Polygon;
import inkstrata.planar.RegionExample;
import inkstrata.planar.Ring;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RegionPathTest {
    private static final SheetSide FRONT = new SheetSide(false, 2_000_000);
    private static final SheetSide BACK = new SheetSide(true, 2_000_000);

    @Test
    void uprightLinesAreShort() throws IOException {
        assertThat(written(RegionExample.of(
                        polygon(rectangle(1, 2, 10.5, 4), ring(8000, 12000, 9000, 13001, 10000, 13002)))))
                .isEqualTo("<path d=\"M1 2H11.5V6H1ZM2 3L2.25 3.25025 2.5 3.2505Z\"/>\n");
    }

    @Test
    void anEmptyRegionHasNoPath() throws IOException {
        assertThat(written(Region.EMPTY)).isEmpty();
    }

    @Test
    void everyVertexIsReadBackOnItsGridPoint() throws IOException {
        long seed = 20260101;
        Random random = new Random(seed);
        for (int drawing = 0; drawing < 500; drawing++) {
            Region region = anything(random);
            assertThat(readBack(region, FRONT, RegionPathTest.LONG))
                    .as("drawing %d of seed %d", drawing, seed)
                    .containsExactlyElementsOf(vertices(region, false));
        }
    }

    @Test
    void mirroringKeepsTheOrderOfVerticesAndIsExact() throws IOException {
        Region region = anything(new Random(7));
        assertThat(readBack(region, BACK, LONG)).containsExactlyElementsOf(vertices(region, true));
    }

    @Test
    void longRegionsAreSplitBetweenPolygonsAndLoseNothing() throws IOException {
        Random random = new Random(11);
        Polygon[] many = new Polygon[2000];
        for (int i = 0; i < many.length; i++) {
            many[i] = polygon(any(random), any(random));
        }
        Region region = RegionExample.of(many);
        String text = film(region, FRONT, 10_000);
        List<String> paths = FilmReader.paths(text);
        assertThat(paths)
                .hasSizeGreaterThan(10)
                .allSatisfy(path -> assertThat(path).hasSizeLessThan(11_500));
        assertThat(FilmReader.rings(text)).containsExactlyElementsOf(vertices(region, false));
    }

    @Test
    void nearlyAMillionVerticesPassInSmallPieces() throws IOException {
        int[] saw = new int[2 * 876_000];
        for (int i = 0; i < 876_000; i++) {
            saw[2 * i] = 4_000 + i % 1_800_000;
            saw[2 * i + 1] = 400_000 + i % 2 * 4_001 + i % 7;
        }
        int[] longest = {0};
        long[] all = {0};
        RegionPath.write(RegionExample.of(polygon(ring(saw))), FRONT, new Appendable() {
            @Override
            public Appendable append(CharSequence piece) {
                longest[0] = Math.max(longest[0], piece.length());
                all[0] += piece.length();
                return this;
            }

            @Override
            public Appendable append(CharSequence piece, int start, int end) {
                return append(piece.subSequence(start, end));
            }

            @Override
            public Appendable append(char c) {
                all[0]++;
                return this;
            }
        });
        assertThat(longest[0]).isLessThan(9_000);
        assertThat(all[0]).isGreaterThan(10_000_000);
    }

    private static final int LONG = 1_000_000;

    private static String written(Region region) throws IOException {
        StringBuilder text = new StringBuilder();
        RegionPath.write(region, FRONT, text);
        return text.toString();
    }

    private static String film(Region region, SheetSide side, int longest) throws IOException {
        StringBuilder text = new StringBuilder("<g id=\"picture\">\n");
        RegionPath.write(region, side, longest, text);
        return text.append("</g>").toString();
    }

    private static List<int[]> readBack(Region region, SheetSide side, int longest) throws IOException {
        return FilmReader.rings(film(region, side, longest));
    }

    private static List<int[]> vertices(Region region, boolean mirrored) {
        List<int[]> rings = new ArrayList<>();
        for (Polygon polygon : region.polygons()) {
            rings.add(vertices(polygon.shell(), mirrored));
            polygon.holes().forEach(hole -> rings.add(vertices(hole, mirrored)));
        }
        return rings;
    }

    private static int[] vertices(Ring ring, boolean mirrored) {
        int[] xy = new int[2 * ring.size()];
        for (int i = 0; i < ring.size(); i++) {
            xy[2 * i] = mirrored ? 2_000_000 - ring.x(i) : ring.x(i);
            xy[2 * i + 1] = ring.y(i);
        }
        return xy;
    }

    private static Region anything(Random random) {
        Polygon[] polygons = new Polygon[1 + random.nextInt(4)];
        for (int i = 0; i < polygons.length; i++) {
            Ring[] holes = new Ring[random.nextInt(3)];
            for (int j = 0; j < holes.length; j++) {
                holes[j] = any(random);
            }
            polygons[i] = polygon(any(random), holes);
        }
        return RegionExample.of(polygons);
    }

    /** Vertices anywhere within 1.5 m, some straight above or beside the one before. */
    private static Ring any(Random random) {
        int[] xy = new int[2 * (3 + random.nextInt(20))];
        for (int i = 0; i < xy.length; i++) {
            xy[i] = i >= 2 && random.nextInt(4) == 0 ? xy[i - 2] : random.nextInt(1500 * Grid.STEPS_PER_MM);
        }
        return ring(xy);
    }
}
