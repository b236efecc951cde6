package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.PaperSize;
import inkstrata.plan.Side;
import inkstrata.positive.Tiling.Tile;
import inkstrata.positive.page.Page;
import inkstrata.positive.page.Page.Group;
import inkstrata.positive.page.Page.Item;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What lies around a tile's part of a film, for the smallest sheets and for large ones. */
class TilePagesTest {
    private static final FilmSettings SETTINGS = FilmSettings.of(new Positive(), Job.DEFAULT);

    private static final Set<String> AROUND = Set.of("join", "cut", "tile-bar", "name");

    /** What printers leave blank at a sheet's edges, in millimetres (common practice, no source). */
    private static final double BLANK = 5;

    @ParameterizedTest
    @ValueSource(strings = {"A5", "A4", "A3", "148 x 148 mm", "150 x 600 mm"})
    void whatIsAroundATileIsNeitherOnItsPictureNorAtItsEdgeNorOnEachOther(String paper) {
        for (Side side : List.of(Side.FRONT, Side.BACK)) {
            Film film = film(side, 1);
            Tiling tiling = Tiling.of(film.layout().film(), PaperSize.parse(paper));
            for (Tile tile : tiling.tiles()) {
                Page page = TilePages.of(film, SETTINGS, tiling, tile);
                Frame window = tile.window().frame();
                List<Group> around = page.groups().stream()
                        .filter(group -> AROUND.contains(group.id()))
                        .toList();
                assertThat(around).hasSize(AROUND.size());
                for (Group group : around) {
                    for (Frame box : boxes(group)) {
                        assertThat(distance(box, window))
                                .as("%s of %s", group.id(), tile.name())
                                .isPositive();
                        assertThat(blank(box, page.frame()))
                                .as("%s of %s", group.id(), tile.name())
                                .isGreaterThanOrEqualTo(BLANK);
                        around.stream()
                                .filter(other -> !other.equals(group))
                                .flatMap(other -> boxes(other).stream())
                                .forEach(other -> assertThat(distance(box, other))
                                        .as("%s of %s", group.id(), tile.name())
                                        .isPositive());
                    }
                }
            }
        }
    }

    @Test
    void linesAtTheCornersSayWhereToCut() {
        Film film = film(Side.FRONT, 0);
        Tiling tiling = Tiling.of(film.layout().film(), PaperSize.parse("A4"));
        Tile tile = tiling.tiles().get(4);
        Frame window = tile.window().frame();
        List<Frame> lines = boxes(group(TilePages.of(film, SETTINGS, tiling, tile), "cut"));
        assertThat(lines).hasSize(8);
        for (double x : List.of(window.x(), window.right())) {
            assertThat(lines.stream().filter(line -> line.height() > line.width() && middleX(line) == x))
                    .hasSize(2);
        }
        for (double y : List.of(window.y(), window.bottom())) {
            assertThat(lines.stream().filter(line -> line.width() > line.height() && middleY(line) == y))
                    .hasSize(2);
        }
    }

    @Test
    void everyTileHasABarOf50MmAndSaysHowItIsUsed() {
        Film film = film(Side.BACK, 2);
        Tiling tiling = Tiling.of(film.layout().film(), PaperSize.parse("A4"));
        for (Tile tile : tiling.tiles()) {
            Page page = TilePages.of(film, SETTINGS, tiling, tile);
            Frame blocks = boxes(group(page, "tile-bar")).get(0);
            assertThat(blocks.width()).isCloseTo(50, within(1e-9));
            assertThat(group(page, "name").items().stream().map(Item::words))
                    .containsExactly(
                            "tile " + tile.name() + " \u00b7 tide-mill, pull 3 of 3: night",
                            "mesh 77-48 \u00b7 emulsion side up, mirrored for the back of the sheet");
            assertThat(group(page, "tile-bar").items().stream().map(Item::words))
                    .containsExactly("", "0", "print at 100 %", "50 mm");
        }
    }

    @Test
    void theMapIsAsLargeAsTheTilesAndShowsThemAll() {
        Film film = film(Side.FRONT, 0);
        Tiling tiling = Tiling.of(film.layout().film(), PaperSize.parse("A4"));
        Page map = TilePages.map("tide-mill", tiling);
        assertThat(map.frame().width()).isEqualTo(297);
        assertThat(map.frame().height()).isEqualTo(210);
        List<Frame> boxes = boxes(group(map, "tiles"));
        assertThat(boxes).hasSize(1 + tiling.tiles().size());
        Frame whole = boxes.get(0);
        Frame shown = film.layout().film().frame();
        double scale = whole.width() / shown.width();
        for (int i = 0; i < tiling.tiles().size(); i++) {
            Frame window = tiling.tiles().get(i).window().frame();
            Frame drawn = boxes.get(i + 1);
            assertThat(drawn.x()).isCloseTo(whole.x() + (window.x() - shown.x()) * scale, within(0.01));
            assertThat(drawn.bottom()).isCloseTo(whole.y() + (window.bottom() - shown.y()) * scale, within(0.01));
        }
        map.groups().stream()
                .flatMap(group -> boxes(group).stream())
                .forEach(box -> assertThat(blank(box, map.frame())).isGreaterThanOrEqualTo(BLANK));
    }

    /** One of the poster's three films. */
    private static Film film(Side side, int pull) {
        return FilmSet.of(PrintExample.poster(side), Job.DEFAULT, SETTINGS)
                .films()
                .get(pull);
    }

    private static Group group(Page page, String id) {
        return page.groups().stream()
                .filter(group -> group.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<Frame> boxes(Group group) {
        return group.items().stream()
                .map(item -> item.area().outline().controlBox().orElseThrow())
                .toList();
    }

    /** Along the axis along which they are farther apart; negative if they overlap. */
    private static double distance(Frame a, Frame b) {
        return Math.max(
                Math.max(b.x() - a.right(), a.x() - b.right()), Math.max(b.y() - a.bottom(), a.y() - b.bottom()));
    }

    private static double blank(Frame box, Frame page) {
        return Math.min(
                Math.min(box.x() - page.x(), page.right() - box.right()),
                Math.min(box.y() - page.y(), page.bottom() - box.bottom()));
    }

    private static double middleX(Frame line) {
        return rounded(line.x() + line.width() / 2);
    }

    private static double middleY(Frame line) {
        return rounded(line.y() + line.height() / 2);
    }

    private static double rounded(double mm) {
        return Grid.millimetres(Grid.steps(mm));
    }
}
