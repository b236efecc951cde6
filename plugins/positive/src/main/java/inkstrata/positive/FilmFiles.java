package inkstrata.positive;

import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.positive.FilmFormats.Kind;
import inkstrata.positive.page.MmText;
import inkstrata.positive.page.Page;
import inkstrata.positive.page.PdfFile;
import inkstrata.positive.page.PixelFile;
import inkstrata.positive.page.SvgFile;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes a set's films in all formats asked for: whole, and in tiles where they are larger than a tile.
 *
 * @param set the films
 * @param settings what lies around the pictures
 * @param formats which files
 * @param ledger where they are written down
 */
record FilmFiles(FilmSet set, FilmSettings settings, FilmFormats formats, Ledger ledger) {
    /** One page and the file it goes to, but for the ending. */
    private record Named(String name, Page page, Map<String, Object> facts) {}

    void write() throws IOException {
        write(films(), "films.pdf");
        if (formats.has(Kind.PDF_INKS)) {
            List<PdfFile.Plate> plates = set.plates().stream()
                    .map(plate -> new PdfFile.Plate(
                            plate.name(),
                            plate.film().ink().swatch(),
                            plate.film().page(settings)))
                    .toList();
            PdfFile.writePlates(set.title(), plates, ledger.create("inks.pdf", size("inks", PdfFile.frame(plates))));
        }
        if (formats.tile().isPresent()) {
            List<Named> tiles = tiles(formats.tile().get());
            if (!tiles.isEmpty()) {
                write(tiles, "tiles.pdf");
            }
        }
    }

    /** The file that holds a film in the first format asked for. */
    static String first(String name, FilmFormats formats) {
        Kind kind = formats.kinds().iterator().next();
        return switch (kind) {
            case PDF -> "films.pdf";
            case PDF_INKS -> "inks.pdf";
            case SVG, TIFF, PNG -> name + "." + kind.ending();
        };
    }

    private List<Named> films() {
        List<Named> films = new ArrayList<>();
        for (int i = 0; i < set.films().size(); i++) {
            Page page = set.films().get(i).page(settings);
            films.add(new Named(set.names().get(i), page, facts("film", i, page.frame())));
        }
        return films;
    }

    private List<Named> tiles(Size sheet) {
        List<Named> tiles = new ArrayList<>();
        for (int i = 0; i < set.films().size(); i++) {
            Film film = set.films().get(i);
            Box box = film.layout().film();
            if (!Tiling.isNeeded(box, film.used(settings), sheet)) {
                continue;
            }
            Tiling tiling = Tiling.of(box, sheet);
            if (tiles.isEmpty()) {
                Page map = TilePages.map(set.title(), tiling);
                tiles.add(new Named("tiles/map", map, size("map of tiles", map.frame())));
            }
            for (Tiling.Tile tile : tiling.tiles()) {
                Page page = TilePages.of(film, settings, tiling, tile);
                Map<String, Object> facts = facts("tile", i, page.frame());
                facts.put("tile", tile.name());
                tiles.add(new Named("tiles/" + set.names().get(i) + "-" + tile.name(), page, facts));
            }
        }
        return tiles;
    }

    private void write(List<Named> pages, String pdf) throws IOException {
        for (Kind kind : formats.kinds()) {
            switch (kind) {
                case SVG -> {
                    for (Named one : pages) {
                        SvgFile.write(one.page(), ledger.create(one.name() + ".svg", one.facts()));
                    }
                }
                case PDF ->
                    PdfFile.write(
                            set.title(),
                            pages.stream().map(Named::page).toList(),
                            ledger.create(
                                    pdf,
                                    size(
                                            pdf.replace(".pdf", ""),
                                            pages.get(0).page().frame())));
                case TIFF, PNG -> {
                    PixelFile.Format format = PixelFile.Format.valueOf(kind.name());
                    for (Named one : pages) {
                        Map<String, Object> facts = new LinkedHashMap<>(one.facts());
                        facts.put("perInch", formats.perInch());
                        PixelFile.write(
                                one.page(),
                                formats.perInch(),
                                format,
                                ledger.create(one.name() + "." + kind.ending(), facts));
                    }
                }
                case PDF_INKS -> {
                    // All films on one page; written apart.
                }
            }
        }
    }

    private Map<String, Object> facts(String what, int pull, Frame frame) {
        Film film = set.films().get(pull);
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("what", what);
        facts.put("pull", pull + 1);
        facts.put("ink", film.ink().name());
        facts.put("side", film.side().mirrored() ? "back" : "front");
        facts.put("xMm", new BigDecimal(MmText.of(frame.x())));
        facts.put("yMm", new BigDecimal(MmText.of(frame.y())));
        facts.put("widthMm", new BigDecimal(MmText.of(frame.width())));
        facts.put("heightMm", new BigDecimal(MmText.of(frame.height())));
        return facts;
    }

    private static Map<String, Object> size(String what, Frame frame) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("what", what);
        facts.put("widthMm", new BigDecimal(MmText.of(frame.width())));
        facts.put("heightMm", new BigDecimal(MmText.of(frame.height())));
        return facts;
    }
}
