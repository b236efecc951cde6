package inkstrata.positive;

import inkstrata.measure.Grid;
import java.io.IOException;

/**
 * A bar 100 mm long by which a printmaker finds out whether a film has its true size.
 *
 * <p>Two rows of blocks of 10 mm, black and clear in turn, so that every ruling is an edge and no line width blurs the
 * length: the bar ends where its outermost black ends.
 */
final class ScaleBar {
    static final int LENGTH = 100 * Grid.STEPS_PER_MM;

    /** What the bar and its figures take, from top to bottom. */
    static final int ROW = 9 * Grid.STEPS_PER_MM;

    /** Clear space above the bar. */
    static final int HEADROOM = 3 * Grid.STEPS_PER_MM;

    private static final int BLOCK = LENGTH / 10;
    private static final int BLOCK_HEIGHT = Grid.STEPS_PER_MM;
    private static final int FIGURES = 5_600 * Grid.STEPS_PER_MM / 1000;

    private ScaleBar() {}

    /** Draws it with that top left corner. */
    static void write(Spot corner, Appendable out) throws IOException {
        out.append("<g id=\"bar\">\n<path d=\"");
        for (int block = 0; block < 10; block++) {
            int left = corner.x() + block * BLOCK;
            int top = corner.y() + block % 2 * BLOCK_HEIGHT;
            out.append("M%s %sH%sV%sH%sZ"
                    .formatted(
                            GridText.of(left),
                            GridText.of(top),
                            GridText.of(left + BLOCK),
                            GridText.of(top + BLOCK_HEIGHT),
                            GridText.of(left)));
        }
        out.append("\"/>\n");
        figure(corner, 0, "0", out);
        figure(corner, LENGTH / 2, "50", out);
        figure(corner, LENGTH, "100 mm", out);
        out.append("</g>\n");
    }

    private static void figure(Spot corner, int along, String words, Appendable out) throws IOException {
        Label.line(new Spot(corner.x() + along, corner.y() + FIGURES), words, out);
    }
}
