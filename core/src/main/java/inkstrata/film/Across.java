package inkstrata.film;

import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;

/** How wide something is, measured across the line between two of its points that lie far apart. */
final class Across {
    private Across() {}

    /** No disc that fits into it is wider. */
    static double widthMm(Region piece) {
        Ring shell = piece.polygons().get(0).shell();
        int one = farthest(shell, 0);
        int other = farthest(shell, one);
        double dx = shell.x(other) - shell.x(one);
        double dy = shell.y(other) - shell.y(one);
        double length = Math.hypot(dx, dy);
        double least = 0;
        double most = 0;
        for (int i = 0; i < shell.size(); i++) {
            double off = (dx * (shell.y(i) - shell.y(one)) - dy * (shell.x(i) - shell.x(one))) / length;
            least = Math.min(least, off);
            most = Math.max(most, off);
        }
        return (most - least) * Grid.STEP_MM;
    }

    private static int farthest(Ring ring, int from) {
        int best = from == 0 ? 1 : 0;
        double farthest = 0;
        for (int i = 0; i < ring.size(); i++) {
            double away = Math.hypot(ring.x(i) - ring.x(from), ring.y(i) - ring.y(from));
            if (away > farthest) {
                farthest = away;
                best = i;
            }
        }
        return best;
    }
}
