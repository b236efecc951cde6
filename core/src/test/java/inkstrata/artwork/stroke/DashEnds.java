package inkstrata.artwork.stroke;

import inkstrata.artwork.CurveSink;
import java.util.List;

/** Hears where each contour begins and ends from left to right. */
final class DashEnds implements CurveSink {
    private final List<Double> lefts;
    private final List<Double> rights;

    DashEnds(List<Double> lefts, List<Double> rights) {
        this.lefts = lefts;
        this.rights = rights;
    }

    private void at(double x) {
        int last = lefts.size() - 1;
        lefts.set(last, Math.min(lefts.get(last), x));
        rights.set(last, Math.max(rights.get(last), x));
    }

    @Override
    public void moveTo(double x, double y) {
        lefts.add(x);
        rights.add(x);
    }

    @Override
    public void lineTo(double x, double y) {
        at(x);
    }

    @Override
    public void quadTo(double x1, double y1, double x, double y) {
        at(x);
    }

    @Override
    public void cubicTo(double x1, double y1, double x2, double y2, double x, double y) {
        at(x);
    }
}
