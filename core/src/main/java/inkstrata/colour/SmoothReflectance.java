package inkstrata.colour;

import java.util.Arrays;

/**
 * The smoothest reflectance that looks like a colour under D65.
 *
 * <p>With reflectances r = (1 + tanh z) / 2, which never leave 0 to 1, the sum of the squared steps of z from band to band is least while
 * X, Y and Z come out right (S. A. Burns, Numerical methods for smoother reflectance recovery from tristimulus values, Color Res.
 * Appl. 45 (2020), 8-21; from memory). Newton's method on the conditions of Lagrange; steps that make things worse are halved.
 */
final class SmoothReflectance {
    private static final int BANDS = Observer.BANDS;
    private static final int UNKNOWNS = BANDS + 3;
    private static final int MOST_ROUNDS = 200;

    /** X, Y and Z come out right to this. */
    private static final double EXACT = 1e-10;

    /** Nearer than this to black or white nothing is left to shape. */
    private static final double EDGE = 1e-6;

    private static final double SMALLEST_STEP = 1e-4;

    private final double[] wanted;
    /** Of each band its z, then the three multipliers. */
    private double[] unknowns = new double[UNKNOWNS];

    private SmoothReflectance(Xyz xyz) {
        wanted = new double[] {xyz.x(), xyz.y(), xyz.z()};
        double share = Math.max(0.01, Math.min(0.99, xyz.y()));
        Arrays.fill(unknowns, 0, BANDS, Math.log(share / (1 - share)) / 2);
    }

    /**
     * Its bands.
     *
     * @throws IllegalStateException if no surface looks like that
     */
    static double[] of(Xyz xyz) {
        double[] flat = new double[BANDS];
        if (xyz.y() < EDGE) {
            return flat;
        }
        if (xyz.y() > 1 - EDGE) {
            Arrays.fill(flat, 1);
            return flat;
        }
        return new SmoothReflectance(xyz).solved();
    }

    private double[] solved() {
        double[] residual = residual(unknowns);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (isExact(residual)) {
                return reflectance();
            }
            double[] step = LinearEquations.solve(jacobian(), residual);
            double share = 1;
            double[] tried = stepped(step, share);
            double[] left = residual(tried);
            while (size(left) > size(residual) && share > SMALLEST_STEP) {
                share /= 2;
                tried = stepped(step, share);
                left = residual(tried);
            }
            unknowns = tried;
            residual = left;
        }
        throw new IllegalStateException("no reflectance looks like XYZ " + Arrays.toString(wanted));
    }

    private double[] reflectance() {
        double[] shares = new double[BANDS];
        for (int band = 0; band < BANDS; band++) {
            shares[band] = (1 + Math.tanh(unknowns[band])) / 2;
        }
        return shares;
    }

    private double[] stepped(double[] step, double share) {
        double[] there = unknowns.clone();
        for (int i = 0; i < UNKNOWNS; i++) {
            there[i] -= share * step[i];
        }
        return there;
    }

    private static double size(double[] residual) {
        double sum = 0;
        for (double part : residual) {
            sum += part * part;
        }
        return sum;
    }

    private static boolean isExact(double[] residual) {
        return size(residual) < EXACT * EXACT;
    }

    /** What is still wrong: for each band how smooth it is, then X, Y and Z. */
    private double[] residual(double[] at) {
        double[] wrong = new double[UNKNOWNS];
        for (int band = 0; band < BANDS; band++) {
            double tanh = Math.tanh(at[band]);
            double slope = (1 - tanh * tanh) / 2;
            for (int channel = 0; channel < 3; channel++) {
                double weight = Observer.weight(channel, band);
                wrong[band] += weight * slope * at[BANDS + channel];
                wrong[BANDS + channel] += weight * (1 + tanh) / 2;
            }
            if (band > 0) {
                wrong[band] += 2 * (at[band] - at[band - 1]);
            }
            if (band < BANDS - 1) {
                wrong[band] += 2 * (at[band] - at[band + 1]);
            }
        }
        for (int channel = 0; channel < 3; channel++) {
            wrong[BANDS + channel] -= wanted[channel];
        }
        return wrong;
    }

    private double[][] jacobian() {
        double[][] rows = new double[UNKNOWNS][UNKNOWNS];
        for (int band = 0; band < BANDS; band++) {
            double tanh = Math.tanh(unknowns[band]);
            double slope = (1 - tanh * tanh) / 2;
            double bend = -2 * tanh * slope;
            for (int channel = 0; channel < 3; channel++) {
                double weight = Observer.weight(channel, band);
                rows[band][band] += weight * bend * unknowns[BANDS + channel];
                rows[band][BANDS + channel] = weight * slope;
                rows[BANDS + channel][band] = weight * slope;
            }
            if (band > 0) {
                rows[band][band] += 2;
                rows[band][band - 1] -= 2;
            }
            if (band < BANDS - 1) {
                rows[band][band] += 2;
                rows[band][band + 1] -= 2;
            }
        }
        return rows;
    }
}
