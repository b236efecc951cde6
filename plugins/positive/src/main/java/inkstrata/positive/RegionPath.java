package inkstrata.positive;

import inkstrata.planar.Region;
import inkstrata.planar.Region.Polygon;
import inkstrata.planar.Ring;
import java.io.IOException;

/**
 * A region as path elements: absolute lines, closed rings, to be filled by the even-odd rule.
 *
 * <p>Every vertex is written exactly, in the order of its ring. Written piece by piece, so that the memory needed does not
 * depend on how large the region is. A path ends with the polygon that fills {@link #LONGEST}; no polygon is split.
 */
final class RegionPath {
    /**
     * Characters after which a new path is begun: far below the ten million at which common XML readers refuse an
     * attribute, far above what would make files larger.
     */
    private static final int LONGEST = 1_000_000;

    private final SheetSide side;
    private final int longest;
    private final Appendable out;
    private final StringBuilder ahead = new StringBuilder();
    private int length;

    private RegionPath(SheetSide side, int longest, Appendable out) {
        this.side = side;
        this.longest = longest;
        this.out = out;
    }

    static void write(Region region, SheetSide side, Appendable out) throws IOException {
        write(region, side, LONGEST, out);
    }

    static void write(Region region, SheetSide side, int longest, Appendable out) throws IOException {
        RegionPath path = new RegionPath(side, longest, out);
        for (Polygon polygon : region.polygons()) {
            path.polygon(polygon);
        }
        path.end();
    }

    private void polygon(Polygon polygon) throws IOException {
        if (length == 0) {
            out.append("<path d=\"");
        }
        ring(polygon.shell());
        for (Ring hole : polygon.holes()) {
            ring(hole);
        }
        if (length >= longest) {
            end();
        }
    }

    private void ring(Ring ring) throws IOException {
        int x = side.x(ring.x(0));
        int y = ring.y(0);
        ahead.append('M');
        pair(x, y);
        char command = 'M';
        for (int i = 1; i < ring.size(); i++) {
            int nextX = side.x(ring.x(i));
            int nextY = ring.y(i);
            if (nextY == y) {
                ahead.append('H');
                GridText.append(ahead, nextX);
                command = 'H';
            } else if (nextX == x) {
                ahead.append('V');
                GridText.append(ahead, nextY);
                command = 'V';
            } else {
                ahead.append(command == 'L' ? ' ' : 'L');
                pair(nextX, nextY);
                command = 'L';
            }
            x = nextX;
            y = nextY;
            if (ahead.length() > 8_000) {
                flush();
            }
        }
        ahead.append('Z');
        flush();
    }

    private void pair(int x, int y) {
        GridText.append(ahead, x);
        ahead.append(' ');
        GridText.append(ahead, y);
    }

    private void flush() throws IOException {
        out.append(ahead);
        length += ahead.length();
        ahead.setLength(0);
    }

    private void end() throws IOException {
        if (length > 0) {
            out.append("\"/>\n");
            length = 0;
        }
    }
}
