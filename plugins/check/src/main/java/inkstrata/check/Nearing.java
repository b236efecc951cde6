package inkstrata.check;

import inkstrata.measure.Grid;
import inkstrata.planar.Similarity;
import java.util.List;
import java.util.Optional;

/** The small similarity that brings points nearer to the lines through their partners, square to the way there, by least squares. */
final class Nearing {
    private static final int UNKNOWNS = 4;

    /** So much of the equations' size holds back what the partners leave open, such as a turn of a disc. */
    private static final double HOLD = 1e-6;

    private Nearing() {}

    /** @param pairs a point and its partner each; none if there are too few */
    static Optional<Similarity> step(List<Spot[]> pairs) {
        if (pairs.size() < UNKNOWNS) {
            return Optional.empty();
        }
        double cx = pairs.stream().mapToDouble(pair -> pair[0].x()).average().orElseThrow();
        double cy = pairs.stream().mapToDouble(pair -> pair[0].y()).average().orElseThrow();
        double size = 1
                + pairs.stream()
                        .mapToDouble(pair -> pair[0].distanceTo(new Spot(cx, cy)))
                        .max()
                        .orElseThrow();
        double[][] sums = new double[UNKNOWNS][UNKNOWNS + 1];
        for (Spot[] pair : pairs) {
            double away = pair[0].distanceTo(pair[1]);
            if (away == 0) {
                // It lies right: both ways it shall stay.
                add(sums, pair[0], 1, 0, 0, cx, cy, size);
                add(sums, pair[0], 0, 1, 0, cx, cy, size);
            } else {
                double nx = (pair[1].x() - pair[0].x()) / away;
                double ny = (pair[1].y() - pair[0].y()) / away;
                add(sums, pair[0], nx, ny, away, cx, cy, size);
            }
        }
        for (int i = 0; i < UNKNOWNS; i++) {
            sums[i][i] += HOLD * pairs.size();
        }
        double[] found = solved(sums);
        double a = 1 + found[0] / size;
        double b = found[1] / size;
        return Optional.of(new Similarity(
                a,
                b,
                (cx + found[2] - a * cx + b * cy) * Grid.STEP_MM,
                (cy + found[3] - b * cx - a * cy) * Grid.STEP_MM,
                false));
    }

    /** One equation: moved along n by scaling, turning and moving, a point comes so far. */
    private static void add(
            double[][] sums, Spot point, double nx, double ny, double away, double cx, double cy, double size) {
        double x = (point.x() - cx) / size;
        double y = (point.y() - cy) / size;
        double[] row = {nx * x + ny * y, ny * x - nx * y, nx, ny, away};
        for (int i = 0; i < UNKNOWNS; i++) {
            for (int j = 0; j <= UNKNOWNS; j++) {
                sums[i][j] += row[i] * row[j];
            }
        }
    }

    /** By elimination; the matrix is positive definite. */
    private static double[] solved(double[][] sums) {
        for (int k = 0; k < UNKNOWNS; k++) {
            for (int i = k + 1; i < UNKNOWNS; i++) {
                double factor = sums[i][k] / sums[k][k];
                for (int j = k; j <= UNKNOWNS; j++) {
                    sums[i][j] -= factor * sums[k][j];
                }
            }
        }
        double[] found = new double[UNKNOWNS];
        for (int i = UNKNOWNS - 1; i >= 0; i--) {
            double rest = sums[i][UNKNOWNS];
            for (int j = i + 1; j < UNKNOWNS; j++) {
                rest -= sums[i][j] * found[j];
            }
            found[i] = rest / sums[i][i];
        }
        return found;
    }
}
