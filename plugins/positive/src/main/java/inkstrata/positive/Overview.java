package inkstrata.positive;

import inkstrata.artwork.Area;
import inkstrata.artwork.CurveSink;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.positive.page.ColourSheet;
import inkstrata.positive.page.ColourSheet.Painted;
import inkstrata.positive.page.Page.Item;
import java.util.ArrayList;
import java.util.List;

/** All films of a set, small, in print order, each with its ink's colour: a page to pin up beside the press. */
final class Overview {
    /** What a film may take, either way, in millimetres. */
    private static final double FILM_MM = 56;

    private static final double GAP_MM = 8;
    private static final double SWATCH_MM = 8;
    private static final double WORDS_MM = 12;
    private static final double TITLE_MM = 8;
    private static final double LINE_MM = 0.2;

    private static final Rgb INK = Rgb.of(0x202020);
    private static final Rgb LINE = Rgb.of(0xa0a0a0);

    private final List<Painted> painted = new ArrayList<>();

    private Overview() {}

    static ColourSheet of(FilmSet set) {
        int count = set.films().size();
        int columns = Math.max(2, (int) Math.ceil(Math.sqrt(count)));
        int rows = Math.max(1, (count + columns - 1) / columns);
        Box film = set.layout().film();
        double scale = FILM_MM / Grid.millimetres(Math.max(film.width(), film.height()));
        double cellWidth = Math.max(Grid.millimetres(film.width()) * scale, FILM_MM * 0.75) + GAP_MM;
        double cellHeight = Grid.millimetres(film.height()) * scale + WORDS_MM + GAP_MM;
        Overview overview = new Overview();
        overview.words(
                set.title() + " \u00b7 " + count + (count == 1 ? " film" : " films"),
                GAP_MM,
                TITLE_MM,
                columns * cellWidth);
        for (int i = 0; i < count; i++) {
            int row = i / columns;
            overview.film(
                    set.films().get(i),
                    i + 1,
                    scale,
                    GAP_MM + i % columns * cellWidth,
                    GAP_MM + TITLE_MM + row * cellHeight,
                    cellWidth - GAP_MM);
        }
        return new ColourSheet(
                set.title() + ", all films",
                new Frame(0, 0, columns * cellWidth + GAP_MM, TITLE_MM + rows * cellHeight + GAP_MM),
                overview.painted);
    }

    private void film(Film film, int number, double scale, double x, double y, double width) {
        Box box = film.layout().film();
        double height = Grid.millimetres(box.height()) * scale;
        Outline.Builder frame = Outline.builder();
        frame(x, y, Grid.millimetres(box.width()) * scale, height, frame);
        painted.add(new Painted("", new Area(frame.build(), FillRule.EVENODD), LINE));
        Outline.Builder picture = Outline.builder();
        Small small =
                new Small(scale, x - Grid.millimetres(box.left()) * scale, y - Grid.millimetres(box.top()) * scale);
        film.picture().forEach(outline -> small.draw(outline, picture));
        painted.add(new Painted("", new Area(picture.build(), FillRule.EVENODD), INK));
        double below = y + height + GAP_MM / 4;
        Outline.Builder swatch = Outline.builder();
        Outline.rectangle(x, below, SWATCH_MM, SWATCH_MM).sendTo(swatch);
        painted.add(new Painted(
                "", new Area(swatch.build(), FillRule.EVENODD), film.ink().swatch()));
        Outline.Builder edge = Outline.builder();
        frame(x, below, SWATCH_MM, SWATCH_MM, edge);
        painted.add(new Painted("", new Area(edge.build(), FillRule.EVENODD), LINE));
        double beside = x + SWATCH_MM + 2;
        words(number + "  " + film.ink().name(), beside, below + 3.2, width - SWATCH_MM - 2);
        String how = film.ink()
                        .mesh()
                        .map(mesh -> "mesh " + mesh)
                        .orElse(film.ink().swatch().hex())
                + (film.side().mirrored() ? " \u00b7 back" : "");
        words(how, beside, below + 7.4, width - SWATCH_MM - 2);
    }

    private static void frame(double x, double y, double width, double height, Outline.Builder outline) {
        Outline.rectangle(x, y, width, height).sendTo(outline);
        Outline.rectangle(x + LINE_MM, y + LINE_MM, width - 2 * LINE_MM, height - 2 * LINE_MM)
                .sendTo(outline);
    }

    private void words(String words, double left, double baseline, double width) {
        String fitted = Label.fitted(words, Grid.steps(width));
        Item line = Label.from(new Spot(Grid.steps(left), Grid.steps(baseline)), fitted);
        painted.add(new Painted(line.words(), line.area(), INK));
    }

    /**
     * Outlines made small: what is finer than a screen shows is left out.
     *
     * @param scale below 1
     * @param dx to the right, in millimetres
     * @param dy down
     */
    private record Small(double scale, double dx, double dy) {
        /** Contours smaller than this both ways are dust. */
        private static final double DUST_MM = 0.15;

        /** Curves that reach less far are lines. */
        private static final double SHORT_MM = 0.4;

        /** Points nearer to the one before are left out. */
        private static final double NEAR_MM = 0.06;

        private static final double ROUND_MM = 0.01;

        void draw(Outline outline, Outline.Builder to) {
            Frame box = outline.controlBox().orElse(null);
            if (box == null || Math.max(box.width(), box.height()) * scale < DUST_MM) {
                return;
            }
            outline.sendTo(new CurveSink() {
                private double lastX;
                private double lastY;

                @Override
                public void moveTo(double x, double y) {
                    at(x, y);
                    to.moveTo(lastX, lastY);
                }

                @Override
                public void lineTo(double x, double y) {
                    if (isFar(x, y, NEAR_MM)) {
                        at(x, y);
                        to.lineTo(lastX, lastY);
                    }
                }

                @Override
                public void quadTo(double x1, double y1, double x, double y) {
                    if (isFar(x1, y1, SHORT_MM) || isFar(x, y, SHORT_MM)) {
                        at(x, y);
                        to.quadTo(x(x1), y(y1), lastX, lastY);
                    } else {
                        lineTo(x, y);
                    }
                }

                @Override
                public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
                    if (isFar(x1, y1, SHORT_MM) || isFar(x2, y2, SHORT_MM) || isFar(x, y, SHORT_MM)) {
                        at(x, y);
                        to.cubicTo(x(x1), y(y1), x(x2), y(y2), lastX, lastY);
                    } else {
                        lineTo(x, y);
                    }
                }

                private boolean isFar(double x, double y, double reach) {
                    return Math.hypot(x(x) - lastX, y(y) - lastY) >= reach;
                }

                private void at(double x, double y) {
                    lastX = x(x);
                    lastY = y(y);
                }
            });
        }

        private double x(double x) {
            return Math.rint((x * scale + dx) / ROUND_MM) * ROUND_MM;
        }

        private double y(double y) {
            return Math.rint((y * scale + dy) / ROUND_MM) * ROUND_MM;
        }
    }
}
