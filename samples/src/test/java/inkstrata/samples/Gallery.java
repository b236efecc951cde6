package inkstrata.samples;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import inkstrata.measure.Frame;
import inkstrata.separation.FilmStack;
import inkstrata.separation.FilmStack.Film;
import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;

/**
 * A picture for the README: the drawing, its films as they lie on a light table, and the films printed over each other.
 *
 * <p>Drawn by jsvg from the files alone.
 */
final class Gallery {
    /** Height of the picture in pixels without its edge. */
    private static final int HEIGHT = 616;

    private static final int GAP = 24;

    /** How much of the print the loupe shows, in millimetres, and where its middle lies in the picture. */
    private static final double LOUPE_MM = 16;

    private static final double LOUPE_ACROSS = 0.46;
    private static final double LOUPE_DOWN = 0.46;
    private static final Color TABLE = new Color(0xe4e4e0);

    private Gallery() {}

    static BufferedImage draw(byte[] drawing, Films films) {
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
        fill(pen, right, films.bare().packed());
        print(pen, films, right, perMm);
        pen.dispose();
        return picture;
    }

    /** The picture alone; marks and labels are cut off a finished print. */
    private static void print(Graphics2D pen, Films films, Rectangle sheet, double perMm) {
        Frame place = films.picture();
        Graphics2D trimmed = (Graphics2D) pen.create();
        trimmed.clip(new Rectangle2D.Double(
                sheet.x + place.x() * perMm,
                sheet.y + place.y() * perMm,
                place.width() * perMm,
                place.height() * perMm));
        for (Film film : films.films()) {
            trimmed.drawImage(film(film, sheet, perMm, film.ink().packed()), sheet.x, sheet.y, null);
        }
        trimmed.dispose();
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
