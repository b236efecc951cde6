package inkstrata.planar;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * Moves, turns, mirrors, stretches or slants all of the sheet at once: x and y go to xx·x + xy·y + dx and yx·x + yy·y + dy.
 *
 * @param xx how x follows x
 * @param xy how x follows y
 * @param yx how y follows x
 * @param yy how y follows y
 * @param dx in millimetres
 * @param dy in millimetres
 */
public record Affine(double xx, double xy, double yx, double yy, double dx, double dy) {
    public static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

    /** Mirrors a sheet of that width about its upright middle line; the width counts in whole grid steps. */
    public static Affine mirror(double widthMm) {
        return new Affine(-1, 0, 0, 1, Grid.millimetres(Grid.steps(widthMm)), 0);
    }

    /** By how much areas grow; below zero if right and left change places. */
    public double determinant() {
        return xx * yy - xy * yx;
    }

    public boolean isMirrored() {
        return determinant() < 0;
    }

    /** By how much lengths grow on the average. */
    public double scale() {
        return Math.sqrt(Math.abs(determinant()));
    }

    public Place of(Place place) {
        return new Place(xx * place.x() + xy * place.y() + dx, yx * place.x() + yy * place.y() + dy);
    }

    /** The smallest upright frame around where that one comes to lie. */
    public Frame of(Frame frame) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (double x : new double[] {frame.x(), frame.right()}) {
            for (double y : new double[] {frame.y(), frame.bottom()}) {
                Place there = of(new Place(x, y));
                left = Math.min(left, there.x());
                right = Math.max(right, there.x());
                top = Math.min(top, there.y());
                bottom = Math.max(bottom, there.y());
            }
        }
        return new Frame(left, top, right - left, bottom - top);
    }

    /** First this one, then another. */
    public Affine then(Affine next) {
        Place origin = next.of(new Place(dx, dy));
        return new Affine(
                next.xx * xx + next.xy * yx,
                next.xx * xy + next.xy * yy,
                next.yx * xx + next.yy * yx,
                next.yx * xy + next.yy * yy,
                origin.x(),
                origin.y());
    }

    /**
     * What undoes it.
     *
     * @throws IllegalStateException if it makes a line of the sheet
     */
    public Affine inverse() {
        double determinant = determinant();
        if (determinant == 0) {
            throw new IllegalStateException(this + " has no inverse");
        }
        Affine back = new Affine(yy / determinant, -xy / determinant, -yx / determinant, xx / determinant, 0, 0);
        Place origin = back.of(new Place(dx, dy));
        return new Affine(back.xx, back.xy, back.yx, back.yy, -origin.x(), -origin.y());
    }

    /** A region there: vertices are rounded to the grid, and outlines that rounding made cross are noded; it must stay on the grid. */
    public Region of(Region region) {
        if (equals(NONE) || region.isEmpty()) {
            return region;
        }
        List<Region.Polygon> moved = new ArrayList<>();
        for (Region.Polygon polygon : region.polygons()) {
            moved.add(new Region.Polygon(
                    of(polygon.shell()), polygon.holes().stream().map(this::of).toList()));
        }
        Frame frame = of(region.bounds().orElseThrow());
        double step = Grid.STEP_MM;
        Frame wider =
                new Frame(frame.x() - step, frame.y() - step, frame.width() + 2 * step, frame.height() + 2 * step);
        return CoverMap.of(wider, List.of(new Region(moved))).where(cover -> !cover.isEmpty());
    }

    private Ring of(Ring ring) {
        int[] xy = new int[2 * ring.size()];
        for (int i = 0; i < ring.size(); i++) {
            Place place = of(new Place(Grid.millimetres(ring.x(i)), Grid.millimetres(ring.y(i))));
            xy[2 * i] = Grid.steps(place.x());
            xy[2 * i + 1] = Grid.steps(place.y());
        }
        return new Ring(xy);
    }
}
