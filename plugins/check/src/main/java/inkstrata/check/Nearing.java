package inkstrata.check;

import inkstrata.measure.Grid;
import inkstrata.planar.Affine;
import java.util.List;
import java.util.Optional;

/**
 * The small step that brings points nearer to the lines through their partners, square to the way there, by least squares.
 *
 * <p>Unknown is how the step follows x and y: by two numbers if it moves alone, by four if it keeps shapes, by six if it may stretch and slant them.
 */
enum Nearing {
    /** Moves. */
    MOVED(2) {
        @Override
        double[] row(double x, double y, double nx, double ny, double away) {
            return new double[] {nx, ny, away};
        }

        @Override
        double[] matrix(double[] found) {
            return new double[] {0, 0, 0, 0, found[0], found[1]};
        }
    },
    /** Scales alike both ways, turns and moves. */
    SIMILAR(4) {
        @Override
        double[] row(double x, double y, double nx, double ny, double away) {
            return new double[] {nx * x + ny * y, ny * x - nx * y, nx, ny, away};
        }

        @Override
        double[] matrix(double[] found) {
            return new double[] {found[0], -found[1], found[1], found[0], found[2], found[3]};
        }
    },
    /** Stretches and slants as well. */
    FREE(6) {
        @Override
        double[] row(double x, double y, double nx, double ny, double away) {
            return new double[] {nx * x, nx * y, ny * x, ny * y, nx, ny, away};
        }

        @Override
        double[] matrix(double[] found) {
            return found;
        }
    };

    /** So much of the equations' size holds back what the partners leave open, such as a turn of a disc. */
    private static final double HOLD = 1e-6;

    private final int unknowns;

    Nearing(int unknowns) {
        this.unknowns = unknowns;
    }

    /** One equation: moved along n by the step, a point comes so far. */
    abstract double[] row(double x, double y, double nx, double ny, double away);

    /** xx, xy, yx, yy less the unit matrix, then the move. */
    abstract double[] matrix(double[] found);

    /** @param pairs a point and its partner each; none if there are too few */
    Optional<Affine> step(List<Spot[]> pairs) {
        if (pairs.size() < unknowns) {
            return Optional.empty();
        }
        double cx = pairs.stream().mapToDouble(pair -> pair[0].x()).average().orElseThrow();
        double cy = pairs.stream().mapToDouble(pair -> pair[0].y()).average().orElseThrow();
        Spot centre = new Spot(cx, cy);
        double size = 1
                + pairs.stream()
                        .mapToDouble(pair -> pair[0].distanceTo(centre))
                        .max()
                        .orElseThrow();
        double[][] sums = new double[unknowns][unknowns + 1];
        for (Spot[] pair : pairs) {
            double away = pair[0].distanceTo(pair[1]);
            double x = (pair[0].x() - cx) / size;
            double y = (pair[0].y() - cy) / size;
            if (away == 0) {
                // It lies right: both ways it shall stay.
                add(sums, row(x, y, 1, 0, 0));
                add(sums, row(x, y, 0, 1, 0));
            } else {
                add(sums, row(x, y, (pair[1].x() - pair[0].x()) / away, (pair[1].y() - pair[0].y()) / away, away));
            }
        }
        for (int i = 0; i < unknowns; i++) {
            sums[i][i] += HOLD * pairs.size();
        }
        double[] step = matrix(solved(sums));
        double xx = 1 + step[0] / size;
        double xy = step[1] / size;
        double yx = step[2] / size;
        double yy = 1 + step[3] / size;
        return Optional.of(new Affine(
                xx,
                xy,
                yx,
                yy,
                (cx + step[4] - xx * cx - xy * cy) * Grid.STEP_MM,
                (cy + step[5] - yx * cx - yy * cy) * Grid.STEP_MM));
    }

    private void add(double[][] sums, double[] row) {
        for (int i = 0; i < unknowns; i++) {
            for (int j = 0; j <= unknowns; j++) {
                sums[i][j] += row[i] * row[j];
            }
        }
    }

    /** By elimination; the matrix is positive definite. */
    private double[] solved(double[][] sums) {
        for (int k = 0; k < unknowns; k++) {
            for (int i = k + 1; i < unknowns; i++) {
                double factor = sums[i][k] / sums[k][k];
                for (int j = k; j <= unknowns; j++) {
                    sums[i][j] -= factor * sums[k][j];
                }
            }
        }
        double[] found = new double[unknowns];
        for (int i = unknowns - 1; i >= 0; i--) {
            double rest = sums[i][unknowns];
            for (int j = i + 1; j < unknowns; j++) {
                rest -= sums[i][j] * found[j];
            }
            found[i] = rest / sums[i][i];
        }
        return found;
    }
}
