package inkstrata.positive;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.positive.Tiling.Tile;
import inkstrata.positive.page.Page;
import inkstrata.positive.page.Page.Group;
import inkstrata.positive.page.Page.Item;
import java.util.ArrayList;
import java.util.List;

/** Tiles as pages, and the page that shows how they lie beside each other. */
final class TilePages {
    /** Of a tile's name below its window, in grid steps. */
    private static final int BASELINE = 6 * Grid.STEPS_PER_MM;

    /** The map of tiles is at most that wide and high. */
    private static final int MAP = 180 * Grid.STEPS_PER_MM;

    private static final int MAP_MARGIN = 15 * Grid.STEPS_PER_MM;

    /** Lines of the map. */
    private static final int THIN = Grid.STEPS_PER_MM / 4;

    private TilePages() {}

    static Page of(Film film, FilmSettings settings, Tiling tiling, Tile tile) {
        Frame window = tile.window().frame();
        List<Group> groups = new ArrayList<>();
        for (Group group : film.page(settings, window).groups()) {
            List<Item> seen = group.items().stream()
                    .filter(item -> Film.isSeen(item.area().outline(), window))
                    .toList();
            if (!seen.isEmpty()) {
                groups.add(new Group(group.id(), seen).within(window));
            }
        }
        groups.add(new Group(
                "join",
                tiling.crosses(tile).stream()
                        .map(centre -> new Item(RegisterMark.at(centre, Tiling.arm(), settings.stroke())))
                        .toList()));
        groups.add(new Group("cut", TrimMarks.crop(tile.window(), settings.stroke())));
        String name = "tile " + tile.name() + " \u00b7 " + film.title();
        groups.add(new Group(
                "name",
                List.of(Label.line(
                        new Spot(tile.window().centreX(), tile.window().bottom() + BASELINE),
                        Label.fitted(name, tile.sheet().width() * 3 / 4)))));
        return new Page(
                film.title() + ", tile " + tile.name(),
                tile.sheet().frame(),
                tile.sheet().frame(),
                groups);
    }

    /** Where each tile belongs, as a small drawing. */
    static Page map(String title, Tiling tiling) {
        Box film = tiling.film();
        double scale = Math.min(1, (double) MAP / Math.max(film.width(), film.height()));
        List<Item> lines = new ArrayList<>();
        List<Item> names = new ArrayList<>();
        lines.add(outlined(small(film, film, scale)));
        for (Tile tile : tiling.tiles()) {
            Box box = small(tile.window(), film, scale);
            lines.add(outlined(box));
            names.add(Label.line(new Spot(box.centreX(), box.centreY()), tile.name()));
        }
        int width = (int) (film.width() * scale);
        int height = (int) (film.height() * scale);
        names.add(Label.line(
                new Spot(width / 2, height + 2 * BASELINE),
                Label.fitted(
                        title + " \u00b7 print tiles at 100 %, lay cross on cross, tape, cut margins away",
                        width + 2 * MAP_MARGIN)));
        Box page = new Box(-MAP_MARGIN, -MAP_MARGIN, width + MAP_MARGIN, height + 2 * MAP_MARGIN);
        return new Page(
                title + ", map of tiles",
                page.frame(),
                page.frame(),
                List.of(new Group("tiles", lines), new Group("names", names)));
    }

    private static Item outlined(Box box) {
        return new Item(new Shapes()
                .boxAround(box, new Box(box.left() + THIN, box.top() + THIN, box.right() - THIN, box.bottom() - THIN))
                .area());
    }

    private static Box small(Box box, Box film, double scale) {
        return new Box(
                (int) ((box.left() - film.left()) * scale),
                (int) ((box.top() - film.top()) * scale),
                (int) ((box.right() - film.left()) * scale),
                (int) ((box.bottom() - film.top()) * scale));
    }
}
