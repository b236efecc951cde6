package inkstrata.planar;

/**
 * The chords that stand for a quadratic or cubic: together they have its area.
 *
 * <p>Chords between points of a curve all lie on its inner side, and whatever is bounded by it shrinks by two thirds of its distance
 * from them. So each point is moved outwards, square to the way between its neighbours, until the two chords that meet there
 * have made up for half of what each lacks, or for all of what the first and the last lack. Chords then lie a third of the
 * distance inside the curve at their middles and points two thirds of it outside, which is nearer, besides.
 */
final class Chords {
    private Chords() {}

    /**
     * The points between the ends, x and y in turn, for pieces of equal parameter.
     *
     * @param c the control points, 3 or 4 of them
     * @param count how many pieces
     * @param most how far a point may be moved; those of cusps would go anywhere
     */
    static double[] inner(double[] c, int count, double most) {
        Bezier curve = new Bezier(c);
        double[] p = new double[2 * count + 2];
        for (int i = 0; i <= count; i++) {
            double t = i / (double) count;
            p[2 * i] = curve.xAt(t);
            p[2 * i + 1] = curve.yAt(t);
        }
        double[] lacks = new double[count];
        for (int i = 0; i < count; i++) {
            lacks[i] = curve.part(i / (double) count, (i + 1) / (double) count).areaBesideChord();
        }
        double[] inner = new double[2 * count - 2];
        for (int i = 1; i < count; i++) {
            double dx = p[2 * i + 2] - p[2 * i - 2];
            double dy = p[2 * i + 3] - p[2 * i - 1];
            double length = Math.hypot(dx, dy);
            double before = i == 1 ? lacks[0] : lacks[i - 1] / 2;
            double after = i == count - 1 ? lacks[i] : lacks[i] / 2;
            double out = length == 0 ? 0 : Math.max(-most, Math.min(most, 2 * (before + after) / length)) / length;
            inner[2 * i - 2] = p[2 * i] + out * dy;
            inner[2 * i - 1] = p[2 * i + 1] - out * dx;
        }
        return inner;
    }
}
