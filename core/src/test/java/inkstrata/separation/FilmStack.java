package inkstrata.separation;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Films laid over each other as a print is made, and compared with the drawing pixel for pixel.
 *
 * <p>Everything is drawn by jsvg, which knows nothing of this project, without antialiasing: a pixel has the colour of the
 * shape that holds its middle.
 */
public final class FilmStack {
    private FilmStack() {}

    /**
     * A film and what is printed through it.
     *
     * @param svg the file
     * @param ink plain and opaque
     */
    public record Film(byte[] svg, Rgb ink) {}

    /**
     * Two pictures of which one should be the other.
     *
     * @param pixels of the whole picture
     * @param differences every pixel that is not the same in both
     */
    public record Comparison(int pixels, List<Difference> differences) {
        public Comparison {
            differences = List.copyOf(differences);
        }

        /** Those farther than that from a place where the drawing changes its colour. */
        public List<Difference> fartherThan(double pixels) {
            return differences.stream()
                    .filter(difference -> difference.toBorder() > pixels)
                    .toList();
        }
    }

    /**
     * One pixel.
     *
     * @param drawn its colour in the drawing
     * @param printed its colour in the print
     * @param toBorder from its middle to the middle of the nearest pixel of another colour in the drawing, in pixels; infinite
     *     if farther than {@link #FARTHEST}
     */
    public record Difference(int x, int y, Rgb drawn, Rgb printed, double toBorder) {}

    /** How far a border is looked for, in pixels. */
    static final int FARTHEST = 24;

    /** The films printed on the sheet in that order, the last one on top; what is seen within the picture's frame. */
    public static BufferedImage print(List<Film> films, Rgb sheet, Frame picture, double pixelsPerMm) {
        BufferedImage print = bare(sheet, new Size(picture.width(), picture.height()), pixelsPerMm);
        for (Film film : films) {
            BufferedImage black = film(film.svg(), picture, pixelsPerMm);
            for (int y = 0; y < print.getHeight(); y++) {
                for (int x = 0; x < print.getWidth(); x++) {
                    if (black.getRGB(x, y) >>> 24 != 0) {
                        print.setRGB(x, y, 0xff000000 | film.ink().packed());
                    }
                }
            }
        }
        return print;
    }

    /** What of a film lies within a frame of the sheet: black on clear. */
    public static BufferedImage film(byte[] svg, Frame picture, double pixelsPerMm) {
        SVGDocument film = document(FlatPaths.of(svg));
        ViewBox frame = film.viewBox();
        BufferedImage image = new BufferedImage(
                pixels(picture.width(), pixelsPerMm),
                pixels(picture.height(), pixelsPerMm),
                BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = pen(image);
        pen.scale(pixelsPerMm, pixelsPerMm);
        pen.translate(frame.x - picture.x(), frame.y - picture.y());
        film.render((Component) null, pen, new ViewBox(frame.width, frame.height));
        pen.dispose();
        return image;
    }

    /** The drawing itself on the sheet, as large as the picture. */
    public static BufferedImage drawing(byte[] svg, Rgb sheet, Size picture, double pixelsPerMm) {
        BufferedImage image = bare(sheet, picture, pixelsPerMm);
        Graphics2D pen = pen(image);
        pen.scale(pixelsPerMm, pixelsPerMm);
        document(svg).render((Component) null, pen, new ViewBox((float) picture.width(), (float) picture.height()));
        pen.dispose();
        return image;
    }

    /**
     * How far it is from a place to the nearest one where the drawing has a certain colour, in millimetres: the drawing seen
     * through a magnifying glass.
     *
     * <p>Tells a fault of the films from a part of the drawing that is thinner than a pixel, on which two pictures drawn with
     * single pixels need not agree.
     *
     * @param place from the picture's top left corner
     * @param reach how far to look, in millimetres; infinite is the answer if there is none within it
     */
    public static double toColour(byte[] svg, Rgb sheet, Size picture, Place place, Rgb colour, double reach) {
        return toColour(svg, sheet, picture, place, colour, 0, reach);
    }

    /** The same; a colour counts as found when each of its channels is no farther off than {@code levels}. */
    public static double toColour(
            byte[] svg, Rgb sheet, Size picture, Place place, Rgb colour, int levels, double reach) {
        int radius = 40;
        double pixelsPerMm = radius / reach;
        BufferedImage glass = new BufferedImage(2 * radius + 1, 2 * radius + 1, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = pen(glass);
        pen.setColor(new Color(sheet.packed()));
        pen.fillRect(0, 0, glass.getWidth(), glass.getHeight());
        pen.translate(radius + 0.5, radius + 0.5);
        pen.scale(pixelsPerMm, pixelsPerMm);
        pen.translate(-place.x(), -place.y());
        document(svg).render((Component) null, pen, new ViewBox((float) picture.width(), (float) picture.height()));
        pen.dispose();
        double nearest = Double.POSITIVE_INFINITY;
        for (int y = -radius; y <= radius; y++) {
            for (int x = -radius; x <= radius; x++) {
                if (isNear(glass.getRGB(x + radius, y + radius), colour.packed(), levels)) {
                    nearest = Math.min(nearest, Math.hypot(x, y));
                }
            }
        }
        return nearest <= radius ? nearest / pixelsPerMm : Double.POSITIVE_INFINITY;
    }

    /** Pixel for pixel; both are equally large. */
    public static Comparison compare(BufferedImage drawing, BufferedImage print) {
        return compare(drawing, print, 0);
    }

    /**
     * Pixel for pixel, taking colours for the same whose channels are no farther apart than {@code levels}: programs round
     * the colours of translucent paints in different ways.
     */
    public static Comparison compare(BufferedImage drawing, BufferedImage print, int levels) {
        if (drawing.getWidth() != print.getWidth() || drawing.getHeight() != print.getHeight()) {
            throw new IllegalArgumentException("the pictures have different sizes");
        }
        List<Difference> differences = new ArrayList<>();
        for (int y = 0; y < drawing.getHeight(); y++) {
            for (int x = 0; x < drawing.getWidth(); x++) {
                int drawn = drawing.getRGB(x, y) & 0xffffff;
                int printed = print.getRGB(x, y) & 0xffffff;
                if (!isNear(drawn, printed, levels)) {
                    differences.add(
                            new Difference(x, y, Rgb.of(drawn), Rgb.of(printed), toBorder(drawing, x, y, drawn)));
                }
            }
        }
        return new Comparison(drawing.getWidth() * drawing.getHeight(), differences);
    }

    /** Whether no channel of two packed colours differs by more than that; of 255. */
    public static boolean isNear(int a, int b, int levels) {
        for (int shift = 0; shift < 24; shift += 8) {
            if (Math.abs((a >> shift & 255) - (b >> shift & 255)) > levels) {
                return false;
            }
        }
        return true;
    }

    private static double toBorder(BufferedImage drawing, int x, int y, int colour) {
        int nearest = Integer.MAX_VALUE;
        for (int reach = 1; reach <= FARTHEST && reach * reach < nearest; reach++) {
            for (int dy = -reach; dy <= reach; dy++) {
                int step = Math.abs(dy) == reach ? 1 : 2 * reach;
                for (int dx = -reach; dx <= reach; dx += step) {
                    if (isOther(drawing, x + dx, y + dy, colour)) {
                        nearest = Math.min(nearest, dx * dx + dy * dy);
                    }
                }
            }
        }
        return nearest == Integer.MAX_VALUE ? Double.POSITIVE_INFINITY : Math.sqrt(nearest);
    }

    private static boolean isOther(BufferedImage drawing, int x, int y, int colour) {
        return x >= 0
                && y >= 0
                && x < drawing.getWidth()
                && y < drawing.getHeight()
                && (drawing.getRGB(x, y) & 0xffffff) != colour;
    }

    private static BufferedImage bare(Rgb sheet, Size size, double pixelsPerMm) {
        BufferedImage image = new BufferedImage(
                pixels(size.width(), pixelsPerMm), pixels(size.height(), pixelsPerMm), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(sheet.packed()));
        pen.fillRect(0, 0, image.getWidth(), image.getHeight());
        pen.dispose();
        return image;
    }

    private static int pixels(double millimetres, double pixelsPerMm) {
        return Math.max(1, (int) Math.round(millimetres * pixelsPerMm));
    }

    private static Graphics2D pen(BufferedImage image) {
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_OFF);
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
