package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The bar of 100 mm that lies around a film's picture, as long as it lies there: ten blocks in two rows, each ten times as long as high, one beginning
 * where the other ends.
 */
final class ScaleEvidence {
    private static final double BLOCK_RATIO = 10;
    private static final int BLOCKS = 10;

    /** Blocks of one bar are alike but for that share of their length. */
    private static final double ALIKE = 0.01;

    /** In one row; the blocks of the other hang together with finer rulings. */
    private static final int IN_A_ROW = BLOCKS / 2;

    private ScaleEvidence() {}

    /** Its length in millimetres; empty if there is none, or it is broken. */
    static OptionalDouble barMm(Region around) {
        List<Frame> blocks = new ArrayList<>();
        for (Region.Polygon polygon : around.polygons()) {
            Region piece = Region.of(polygon);
            Frame frame = piece.bounds().orElseThrow();
            double filled = piece.areaMm2() / (frame.width() * frame.height());
            if (isBlock(frame.width(), frame.height()) && filled > 1 - ALIKE) {
                blocks.add(frame);
            }
        }
        for (Frame first : blocks) {
            double length = first.width();
            long row =
                    blocks.stream().filter(other -> isIn(other, first, length)).count();
            boolean isLeftmost =
                    blocks.stream().noneMatch(other -> other.x() < first.x() && isIn(other, first, length));
            if (row == IN_A_ROW && isLeftmost) {
                double right = blocks.stream()
                        .filter(other -> isIn(other, first, length))
                        .mapToDouble(Frame::right)
                        .max()
                        .orElseThrow();
                return OptionalDouble.of((right - first.x()) * BLOCKS / (BLOCKS - 1));
            }
        }
        return OptionalDouble.empty();
    }

    private static boolean isBlock(double width, double height) {
        return Math.abs(width / height - BLOCK_RATIO) < BLOCK_RATIO * ALIKE;
    }

    private static boolean isIn(Frame other, Frame first, double length) {
        return Math.abs(other.y() - first.y()) < ALIKE * length && Math.abs(other.width() - length) < ALIKE * length;
    }
}
