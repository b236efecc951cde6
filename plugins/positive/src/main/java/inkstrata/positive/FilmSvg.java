package inkstrata.positive;

import inkstrata.planar.Region;
import java.io.IOException;
import java.util.List;

/**
 * One film as SVG 1.1: black on clear, one user unit for each millimetre of the sheet, no style sheet, no script.
 *
 * @param title the file's title
 * @param label lines of text
 * @param region what is black in the picture, as seen from the front
 * @param side how the picture lies on the film
 * @param layout where the marks are
 */
record FilmSvg(String title, List<String> label, Region region, SheetSide side, FilmLayout layout) {
    FilmSvg {
        label = List.copyOf(label);
    }

    void write(int stroke, Appendable out) throws IOException {
        Box film = layout.film();
        String width = GridText.of(film.width());
        String height = GridText.of(film.height());
        String corner = GridText.of(film.left()) + " " + GridText.of(film.top());
        out.append("""
                <?xml version="1.0" encoding="UTF-8"?>
                <svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="%smm" height="%smm" viewBox="%s %s %s" fill="#000000">
                <title>%s</title>
                <g id="picture" fill-rule="evenodd">
                """.formatted(width, height, corner, width, height, XmlText.escaped(title)));
        RegionPath.write(region, side, out);
        out.append("""
                </g>
                <g id="marks">
                """);
        if (!layout.marks().isEmpty()) {
            RegisterMark.write(layout.marks(), stroke, out);
        }
        if (layout.bar().isPresent()) {
            ScaleBar.write(layout.bar().get(), out);
        }
        Label.write(label, layout.label(), out);
        out.append("""
                </g>
                </svg>
                """);
    }
}
