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
    /** Of the first of a tile's two lines of words below what it shows, in grid steps. */
    private static final int BASELINE = 3 * Grid.STEPS_PER_MM;

    /** The bar on every tile is at most that long. */
    private static final int LONGEST_BAR = 50 * Grid.STEPS_PER_MM;

    /** What the bar's figures take beyond both its ends. */
    private static final int FIGURES = 8 * Grid.STEPS_PER_MM;

    /** Around the map of tiles, on a sheet as large as a tile's. */
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
        int middle = tile.window().centreX();
        int width = tiling.betweenCrosses();
        String mesh = Label.mesh(film.ink()).map(words -> words + Label.BETWEEN).orElse("");
        if (settings.bar()) {
            int centimetre = 10 * Grid.STEPS_PER_MM;
            int length = Math.min(LONGEST_BAR, (width - FIGURES) / centimetre * centimetre);
            Spot corner = new Spot(middle - length / 2, tile.window().top() - Tiling.STRIP);
            groups.add(new Group("tile-bar", ScaleBar.at(corner, length, Label.TRUE_SIZE)));
        }
        groups.add(new Group(
                "name",
                Label.at(
                        List.of(
                                Label.fitted("tile " + tile.name() + " \u00b7 " + film.title(), width),
                                Label.fitted(mesh + Label.side(film.side().mirrored()), width)),
                        new Spot(middle, tile.window().bottom() + BASELINE))));
        return new Page(
                film.title() + ", tile " + tile.name(),
                tile.sheet().frame(),
                tile.sheet().frame(),
                groups);
    }

    /** Where each tile belongs, as a small drawing on a sheet as large as theirs. */
    static Page map(String title, Tiling tiling) {
        Box film = tiling.film();
        int width = tiling.width() - 2 * MAP_MARGIN;
        List<String> words = Label.wrapped(
                Label.fitted(title, width)
                        + " \u00b7 print tiles at 100 %, lay cross on cross, tape the ends, cut both margins away, tape the joint",
                width);
        int height = tiling.height() - 2 * MAP_MARGIN - Label.height(words.size());
        double scale = Math.min(1, Math.min((double) width / film.width(), (double) height / film.height()));
        Small small = new Small(film, scale, (width - (int) (film.width() * scale)) / 2);
        List<Item> lines = new ArrayList<>();
        List<Item> names = new ArrayList<>();
        lines.add(outlined(small.box(film)));
        for (Tile tile : tiling.tiles()) {
            Box box = small.box(tile.window());
            lines.add(outlined(box));
            names.add(Label.line(new Spot(box.centreX(), box.centreY()), tile.name()));
        }
        names.addAll(Label.at(words, new Spot(width / 2, small.box(film).bottom() + 2 * Label.FIRST_BASELINE)));
        Box page = new Box(-MAP_MARGIN, -MAP_MARGIN, tiling.width() - MAP_MARGIN, tiling.height() - MAP_MARGIN);
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

    /** Boxes of a film as they lie on its map, moved to the right so that it stands in the middle. */
    private record Small(Box film, double scale, int dx) {
        Box box(Box box) {
            return new Box(
                    dx + (int) ((box.left() - film.left()) * scale),
                    (int) ((box.top() - film.top()) * scale),
                    dx + (int) ((box.right() - film.left()) * scale),
                    (int) ((box.bottom() - film.top()) * scale));
        }
    }
}
