package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.PaperSize;
import inkstrata.measure.Size;
import inkstrata.positive.Tiling.Tile;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TilingTest {
    private static final Size A4 = PaperSize.parse("A4");

    /** By hand: a sheet has room for 184 x 271 mm, so 490 mm take 3 columns of 170 mm, 530 mm 2 rows of 270 mm. */
    @Test
    void aPosterTakesSixSheetsOfA4() {
        Tiling tiling = Tiling.of(mm(0, 0, 490, 530), A4);
        assertThat(tiling.tiles().stream().map(Tile::name)).containsExactly("A1", "A2", "A3", "B1", "B2", "B3");
        assertThat(tiling.tiles().get(1).window()).isEqualTo(mm(160, 0, 330, 270));
        assertThat(tiling.tiles().get(4).window()).isEqualTo(mm(160, 260, 330, 530));
        assertThat(tiling.tiles().get(4).sheet()).isEqualTo(Box.of(new Frame(140, 246.5, 210, 297)));
        assertThat(tiling.tiles().get(5).window()).isEqualTo(mm(320, 260, 490, 530));
    }

    @Test
    void sheetsLieWhereThatTakesFewer() {
        Tiling tiling = Tiling.of(mm(0, 0, 270, 180), A4);
        assertThat(tiling.tiles()).hasSize(1);
        assertThat(tiling.width()).isEqualTo(297 * Grid.STEPS_PER_MM);
        // Upright 3 x 3, lying 2 x 4.
        assertThat(Tiling.of(mm(0, 0, 500, 700), A4).tiles()).hasSize(8);
    }

    @Test
    void aFilmThatASheetHoldsIsNotCut() {
        assertThat(isNeeded(mm(0, 0, 210, 297), 5)).isFalse();
        assertThat(isNeeded(mm(-10, 0, 287, 210), 5)).isFalse();
        assertThat(isNeeded(mm(0, 0, 211, 200), 5)).isFalse();
        assertThat(isNeeded(mm(0, 0, 211, 211), 5)).isTrue();
        assertThat(isNeeded(mm(0, 0, 100, 298), 5)).isTrue();
    }

    @Test
    void whatAPrinterLeavesBlankIsNotHeld() {
        assertThat(isNeeded(mm(0, 0, 210, 297), 4)).isTrue();
        assertThat(isNeeded(mm(0, 0, 202, 289), 0)).isTrue();
        assertThat(isNeeded(mm(0, 0, 200, 287), 0)).isFalse();
        assertThat(Tiling.isNeeded(mm(0, 0, 210, 297), mm(5, 5, 206, 292), A4)).isTrue();
    }

    /** A film that is used but for so many millimetres all round. */
    private static boolean isNeeded(Box film, int inside) {
        int k = inside * Grid.STEPS_PER_MM;
        return Tiling.isNeeded(film, new Box(film.left() + k, film.top() + k, film.right() - k, film.bottom() - k), A4);
    }

    @Test
    void tilesCoverTheFilmOverlapAndShareTheirCrosses() {
        long seed = 99;
        Random random = new Random(seed);
        for (int drawing = 0; drawing < 200; drawing++) {
            Box film =
                    mm(-random.nextInt(30), -random.nextInt(30), 50 + random.nextInt(1500), 50 + random.nextInt(1500));
            Tiling tiling = Tiling.of(film, new Size(148 + random.nextInt(500), 148 + random.nextInt(700)));
            List<Tile> tiles = tiling.tiles();
            for (int i = 0; i < tiles.size(); i++) {
                Tile tile = tiles.get(i);
                boolean isLastColumn = (i + 1) % tiling.columns() == 0;
                boolean isLastRow = i + tiling.columns() >= tiles.size();
                assertThat(tile.sheet().width()).isEqualTo(tiling.width());
                if (isLastColumn) {
                    assertThat(tile.window().right())
                            .as("%d of seed %d", drawing, seed)
                            .isEqualTo(film.right());
                } else {
                    Tile next = tiles.get(i + 1);
                    assertThat(tile.window().right() - next.window().left()).isEqualTo(10 * Grid.STEPS_PER_MM);
                    int seam = next.window().left() + 5 * Grid.STEPS_PER_MM;
                    assertThat(onUprightSeam(tiling, tile, seam))
                            .hasSize(2)
                            .isEqualTo(onUprightSeam(tiling, next, seam));
                }
                if (isLastRow) {
                    assertThat(tile.window().bottom()).isEqualTo(film.bottom());
                } else {
                    assertThat(tile.window().bottom()
                                    - tiles.get(i + tiling.columns()).window().top())
                            .isEqualTo(10 * Grid.STEPS_PER_MM);
                }
                assertThat(tiling.crosses(tile)).allMatch(spot -> isInMargin(spot, tile));
            }
        }
    }

    private static List<Spot> onUprightSeam(Tiling tiling, Tile tile, int x) {
        return tiling.crosses(tile).stream().filter(spot -> spot.x() == x).toList();
    }

    private static boolean isInMargin(Spot spot, Tile tile) {
        Box sheet = tile.sheet();
        Box window = tile.window();
        int arm = Tiling.arm();
        int blank = 5 * Grid.STEPS_PER_MM;
        boolean isOnSheet = spot.x() - arm >= sheet.left() + blank
                && spot.x() + arm <= sheet.right() - blank
                && spot.y() - arm >= sheet.top() + blank
                && spot.y() + arm <= sheet.bottom() - blank;
        boolean isClear = spot.x() + arm <= window.left()
                || spot.x() - arm >= window.right()
                || spot.y() + arm <= window.top()
                || spot.y() - arm >= window.bottom();
        return isOnSheet && isClear;
    }

    private static Box mm(int left, int top, int right, int bottom) {
        int k = Grid.STEPS_PER_MM;
        return new Box(left * k, top * k, right * k, bottom * k);
    }
}
