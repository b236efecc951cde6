package inkstrata.samples;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.separation.FilmStack;
import inkstrata.separation.FilmStack.Film;
import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.HashMap;
import java.util.Map;

/**
 * A picture for the README: the drawing, its films as they lie on a light table, and the films printed over each other in the colours
 * that inks make of one another.
 *
 * <p>Drawn by jsvg from the files alone.
 */
final class Gallery {
    /** Height of the picture in pixels without its edge. */
    private static final int HEIGHT = 616;

    private static final int GAP = 24;

    /** Pixels are made of so many both ways. */
    private static final int FINER = 3;

    /** How much of the print the loupe shows, in millimetres, and where its middle lies in the picture. */
    private static final double LOUPE_MM = 16;

    private static final double LOUPE_ACROSS = 0.46;
    private static final double LOUPE_DOWN = 0.46;
    private static final Color TABLE = new Color(0xe4e4e0);

    private Gallery() {}

    static BufferedImage draw(byte[] drawing, Films films, PlannedFilms planned) {
        double perMm = HEIGHT / films.sheet().height();
        int sheetWidth = (int) Math.round(films.sheet().width() * perMm);
        int rows = (int) Math.round(Math.sqrt(films.films().size()));
        int columns = (films.films().size() + rows - 1) / rows;
        double small = (HEIGHT - (rows - 1) * GAP / 2.0) / rows / films.sheet().height();
        int filmWidth = (int) Math.round(films.sheet().width() * small);
        int filmHeight = (int) Math.round(films.sheet().height() * small);
        int tableWidth = columns * filmWidth + (columns - 1) * GAP / 2;

        BufferedImage picture =
                new BufferedImage(2 * sheetWidth + tableWidth + 4 * GAP, HEIGHT + 2 * GAP, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = pen(picture);
        pen.setColor(TABLE);
        pen.fillRect(0, 0, picture.getWidth(), picture.getHeight());

        Rectangle left = new Rectangle(GAP, GAP, sheetWidth, HEIGHT);
        fill(pen, left, films.bare().packed());
        Frame place = films.picture();
        Graphics2D at = (Graphics2D) pen.create();
        at.translate(left.x + place.x() * perMm, left.y + place.y() * perMm);
        document(drawing).render((Component) null, at, new ViewBox((float) (place.width() * perMm), (float)
                (place.height() * perMm)));
        at.dispose();

        for (int i = 0; i < films.films().size(); i++) {
            Rectangle cell = new Rectangle(
                    2 * GAP + sheetWidth + i % columns * (filmWidth + GAP / 2),
                    GAP + i / columns * (filmHeight + GAP / 2),
                    filmWidth,
                    filmHeight);
            fill(pen, cell, 0xffffff);
            pen.drawImage(film(films.films().get(i), cell, small, 0x101010), cell.x, cell.y, null);
        }

        int free = films.films().size();
        if (free < rows * columns) {
            BufferedImage detail = throughTheLoupe(films, filmWidth, filmHeight);
            pen.drawImage(
                    detail,
                    2 * GAP + sheetWidth + free % columns * (filmWidth + GAP / 2),
                    GAP + free / columns * (filmHeight + GAP / 2),
                    null);
        }

        Rectangle right = new Rectangle(3 * GAP + sheetWidth + tableWidth, GAP, sheetWidth, HEIGHT);
        pen.drawImage(print(planned, right.width, right.height), right.x, right.y, null);
        pen.dispose();
        return picture;
    }

    /** The picture alone, in the colours that inks make over each other; marks and labels are cut off a finished print. */
    private static BufferedImage print(PlannedFilms films, int width, int height) {
        double perMm = FINER * width / films.sheet().width();
        Frame sheet = new Frame(0, 0, films.sheet().width(), films.sheet().height());
        long[][] covers = films.covers(sheet, perMm);
        Frame place = films.picture();
        Map<Long, Rgb> known = new HashMap<>();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int[] sum = new int[3];
                for (int i = 0; i < FINER * FINER; i++) {
                    int row = Math.min(covers.length - 1, FINER * y + i / FINER);
                    int column = Math.min(covers[row].length - 1, FINER * x + i % FINER);
                    boolean isPicture = column >= place.x() * perMm
                            && column < (place.x() + place.width()) * perMm
                            && row >= place.y() * perMm
                            && row < (place.y() + place.height()) * perMm;
                    long cover = isPicture ? covers[row][column] : 0;
                    Rgb colour = known.computeIfAbsent(
                            cover, there -> films.seen(there).rgb());
                    sum[0] += colour.red();
                    sum[1] += colour.green();
                    sum[2] += colour.blue();
                }
                int n = FINER * FINER;
                image.setRGB(x, y, new Rgb(sum[0] / n, sum[1] / n, sum[2] / n).packed());
            }
        }
        return image;
    }

    /** What a film lets through, in that colour on clear. */
    private static BufferedImage film(Film film, Rectangle sheet, double perMm, int colour) {
        BufferedImage image = new BufferedImage(sheet.width, sheet.height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = pen(image);
        SVGDocument document = document(film.svg());
        ViewBox frame = document.viewBox();
        Graphics2D scaled = (Graphics2D) pen.create();
        scaled.scale(perMm, perMm);
        scaled.translate(frame.x, frame.y);
        document.render((Component) null, scaled, new ViewBox(frame.width, frame.height));
        scaled.dispose();
        pen.setComposite(AlphaComposite.SrcIn);
        pen.setColor(new Color(colour));
        pen.fillRect(0, 0, sheet.width, sheet.height);
        pen.dispose();
        return image;
    }

    /** A place near the middle of the print, enlarged; inks as if they were clear, so that traps and overprints show. */
    private static BufferedImage throughTheLoupe(Films films, int width, int height) {
        Frame place = films.picture();
        double perMm = width / LOUPE_MM;
        double left = place.x() + LOUPE_ACROSS * place.width() - width / 2.0 / perMm;
        double top = place.y() + LOUPE_DOWN * place.height() - height / 2.0 / perMm;
        Frame seen = new Frame(left, top, width / perMm, height / perMm);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        fill(pen, new Rectangle(width, height), films.bare().packed());
        pen.dispose();
        for (Film film : films.films()) {
            BufferedImage black = FilmStack.film(film.svg(), seen, perMm);
            for (int y = 0; y < Math.min(height, black.getHeight()); y++) {
                for (int x = 0; x < Math.min(width, black.getWidth()); x++) {
                    if (black.getRGB(x, y) >>> 24 != 0) {
                        image.setRGB(
                                x, y, multiplied(image.getRGB(x, y), film.ink().packed()));
                    }
                }
            }
        }
        return image;
    }

    private static int multiplied(int below, int ink) {
        int product = 0;
        for (int shift = 0; shift < 24; shift += 8) {
            product |= (((below >> shift & 255) * (ink >> shift & 255)) / 255) << shift;
        }
        return product;
    }

    private static void fill(Graphics2D pen, Rectangle area, int colour) {
        pen.setColor(new Color(colour));
        pen.fill(area);
    }

    private static Graphics2D pen(BufferedImage image) {
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return pen;
    }

    private static SVGDocument document(byte[] svg) {
        SVGDocument document = new SVGLoader()
                .load(
                        new ByteArrayInputStream(svg),
                        null,
                        LoaderContext.builder().build());
        if (document == null) {
            throw new IllegalArgumentException("jsvg can't read this file");
        }
        return document;
    }
}
