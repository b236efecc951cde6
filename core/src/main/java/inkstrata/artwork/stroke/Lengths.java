package inkstrata.artwork.stroke;

import java.util.Arrays;

/** How long a leg is, and where along it one is after some length. */
final class Lengths {
    /** Half-length nodes and weights of five-point Gauss-Legendre quadrature. */
    private static final double[] NODES = {
        0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640
    };

    private static final double[] WEIGHTS = {
        0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891
    };

    private static final double EXACT = 1e-10;
    private static final int MOST_HALVINGS = 24;

    private final Leg leg;
    private double[] parameters = new double[8];
    private double[] lengths = new double[8];
    private int count = 1;

    Lengths(Leg leg) {
        this.leg = leg;
        if (leg.isLine()) {
            add(1, Math.hypot(leg.x(1) - leg.x(0), leg.y(1) - leg.y(0)));
        } else {
            halve(0, 1, quadrature(0, 1), EXACT * leg.size(), 0);
        }
    }

    double total() {
        return lengths[count - 1];
    }

    /** The parameter after a length of 0 to {@link #total()}. */
    double parameter(double length) {
        if (length >= total()) {
            return 1;
        }
        int found = Arrays.binarySearch(lengths, 0, count, length);
        int before = found >= 0 ? found : -found - 2;
        if (found >= 0) {
            return parameters[found];
        }
        double low = parameters[before];
        double high = parameters[before + 1];
        if (leg.isLine()) {
            return length / total();
        }
        double start = low;
        double t = low + (high - low) * (length - lengths[before]) / (lengths[before + 1] - lengths[before]);
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double off = lengths[before] + quadrature(start, t) - length;
            if (Math.abs(off) <= EXACT * leg.size()) {
                break;
            }
            if (off > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - off / leg.speed(t);
            t = next > low && next < high ? next : (low + high) / 2;
        }
        return t;
    }

    private void halve(double from, double to, double once, double error, int halvings) {
        double middle = (from + to) / 2;
        double first = quadrature(from, middle);
        double second = quadrature(middle, to);
        if (halvings == MOST_HALVINGS || Math.abs(first + second - once) <= error) {
            add(middle, first);
            add(to, second);
            return;
        }
        halve(from, middle, first, error / 2, halvings + 1);
        halve(middle, to, second, error / 2, halvings + 1);
    }

    private void add(double to, double length) {
        if (count == parameters.length) {
            parameters = Arrays.copyOf(parameters, 2 * count);
            lengths = Arrays.copyOf(lengths, 2 * count);
        }
        parameters[count] = to;
        lengths[count] = lengths[count - 1] + length;
        count++;
    }

    private double quadrature(double from, double to) {
        double half = (to - from) / 2;
        double sum = 0;
        for (int i = 0; i < NODES.length; i++) {
            sum += WEIGHTS[i] * leg.speed(from + half * (1 + NODES[i]));
        }
        return half * sum;
    }
}
