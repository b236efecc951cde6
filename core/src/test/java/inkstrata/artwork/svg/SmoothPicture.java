package inkstrata.artwork.svg;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import inkstrata.artwork.Artwork;
import inkstrata.colour.Rgb;
import inkstrata.measure.Grid;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.planar.StackSet;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;

/**
 * A picture on white whose edges are smooth.
 *
 * @param rgb pixels row by row, 24 bits each, red highest
 */
record SmoothPicture(int width, int height, int[] rgb) {
    private static final int FINER = 4;

    /** Read and mapped by us; a pixel is the mean of the colours on it, each by its share of the pixel. */
    static SmoothPicture ofOurs(String name, InputStream svg, int width) throws IOException {
        ReadOptions size = new ReadOptions(OptionalDouble.of(width), OptionalDouble.empty(), false);
        Artwork artwork = SvgReader.read(name, svg, size);
        int height = (int) Math.round(artwork.frame().height());
        double[][] sums = new double[3][width * height];
        double[] covered = new double[width * height];
        if (!artwork.shapes().isEmpty()) {
            PlanarMap map = PlanarMapper.map(
                    artwork, MapSettings.DEFAULT.withDepth(MapSettings.ALL).withThreads(1));
            for (int stack = 0; stack < map.stacks().size(); stack++) {
                if (!map.stacks().get(stack).isBare()) {
                    Rgb colour = map.stacks().get(stack).paints().get(0).colour();
                    double[] shares = shares(map.dissolve(StackSet.of(stack)), width, height);
                    for (int i = 0; i < shares.length; i++) {
                        covered[i] += shares[i];
                        sums[0][i] += shares[i] * colour.red();
                        sums[1][i] += shares[i] * colour.green();
                        sums[2][i] += shares[i] * colour.blue();
                    }
                }
            }
        }
        int[] rgb = new int[width * height];
        for (int i = 0; i < rgb.length; i++) {
            for (int channel = 0; channel < 3; channel++) {
                double value = sums[channel][i] + (1 - covered[i]) * 255;
                rgb[i] = rgb[i] << 8 | (int) Math.max(0, Math.min(255, Math.rint(value)));
            }
        }
        return new SmoothPicture(width, height, rgb);
    }

    /** Drawn by jsvg, several times as large and averaged. */
    static SmoothPicture ofJsvg(URL svg, int width) throws Verdict.OtherPicture.CannotRead {
        SVGDocument document = new SVGLoader().load(svg);
        if (document == null) {
            throw new Verdict.OtherPicture.CannotRead();
        }
        double across = document.size().getWidth();
        double down = document.size().getHeight();
        int height = (int) Math.round(width * down / across);
        BufferedImage image = new BufferedImage(FINER * width, FINER * height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(FINER * width / across, FINER * width / across);
        document.render(null, graphics, new ViewBox(0, 0, (float) across, (float) down));
        graphics.dispose();
        return of(image).averaged();
    }

    /** From a file. */
    static SmoothPicture ofPng(URL png) throws IOException {
        return of(ImageIO.read(png));
    }

    private static SmoothPicture of(BufferedImage image) {
        int[] rgb = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] &= 0xffffff;
        }
        return new SmoothPicture(image.getWidth(), image.getHeight(), rgb);
    }

    private SmoothPicture averaged() {
        int[] smaller = new int[rgb.length / (FINER * FINER)];
        for (int i = 0; i < smaller.length; i++) {
            int corner = i / (width / FINER) * FINER * width + i % (width / FINER) * FINER;
            for (int shift = 16; shift >= 0; shift -= 8) {
                int sum = 0;
                for (int k = 0; k < FINER * FINER; k++) {
                    sum += rgb[corner + k / FINER * width + k % FINER] >> shift & 0xff;
                }
                smaller[i] = smaller[i] << 8 | (sum + FINER * FINER / 2) / (FINER * FINER);
            }
        }
        return new SmoothPicture(width / FINER, height / FINER, smaller);
    }

    /** How much of each square millimetre a region covers, exactly. */
    private static double[] shares(Region region, int width, int height) {
        double[] shares = new double[width * height];
        for (Region.Polygon polygon : region.polygons()) {
            add(polygon.shell(), shares, width, height);
            for (Ring hole : polygon.holes()) {
                add(hole, shares, width, height);
            }
        }
        return shares;
    }

    /** Each edge takes what lies to its right, rows one by one; edges that go up take it, those that go down give it back. */
    private static void add(Ring ring, double[] shares, int width, int height) {
        int from = ring.size() - 1;
        for (int to = 0; to < ring.size(); from = to++) {
            double x = Grid.millimetres(ring.x(from));
            double y = Grid.millimetres(ring.y(from));
            double endX = Grid.millimetres(ring.x(to));
            double endY = Grid.millimetres(ring.y(to));
            int sign = endY < y ? 1 : -1;
            double upperX = sign > 0 ? endX : x;
            double lowerX = sign > 0 ? x : endX;
            double top = Math.min(y, endY);
            double bottom = Math.max(y, endY);
            double slope = bottom > top ? (lowerX - upperX) / (bottom - top) : 0;
            for (int row = Math.max(0, (int) Math.floor(top)); row < Math.min(height, bottom); row++) {
                double high = Math.max(top, row);
                double low = Math.min(bottom, row + 1);
                addRow(
                        upperX + (high - top) * slope,
                        upperX + (low - top) * slope,
                        sign * (low - high),
                        shares,
                        row * width,
                        width);
            }
        }
    }

    /** All to the right of an edge within one row. */
    private static void addRow(double oneX, double otherX, double tall, double[] shares, int start, int width) {
        double left = Math.min(oneX, otherX);
        double right = Math.max(oneX, otherX);
        for (int column = Math.max(0, (int) Math.floor(left)); column < width; column++) {
            double before = Math.max(0, Math.min(right, column) - left);
            double within = Math.max(0, Math.min(right, column + 1) - Math.max(left, column));
            double share = right > left
                    ? (before + within * (column + 1 - (Math.max(left, column) + Math.min(right, column + 1)) / 2))
                            / (right - left)
                    : Math.min(1, column + 1 - left);
            shares[start + column] += tall * share;
        }
    }
}
