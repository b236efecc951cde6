package inkstrata.planar;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * Moves, turns, scales or mirrors all of the sheet at once: x, first mirrored to −x if asked, and y go to a·x − b·y + dx and
 * b·x + a·y + dy.
 *
 * @param a scale times the cosine of the turn
 * @param b scale times the sine of the turn
 * @param dx in millimetres
 * @param dy in millimetres
 * @param mirrored whether right and left change places
 */
public record Similarity(double a, double b, double dx, double dy, boolean mirrored) {
    public static final Similarity NONE = new Similarity(1, 0, 0, 0, false);

    /** Moves. */
    public static Similarity move(double dx, double dy) {
        return new Similarity(1, 0, dx, dy, false);
    }

    /** Mirrors a sheet of that width about its upright middle line; the width counts in whole grid steps. */
    public static Similarity mirror(double widthMm) {
        return new Similarity(1, 0, Grid.millimetres(Grid.steps(widthMm)), 0, true);
    }

    public double scale() {
        return Math.hypot(a, b);
    }

    /** In degrees, positive from the x axis to the y axis: clockwise as seen on the sheet. */
    public double turnDegrees() {
        return Math.toDegrees(Math.atan2(b, a));
    }

    public Place of(Place place) {
        double x = mirrored ? -place.x() : place.x();
        return new Place(a * x - b * place.y() + dx, b * x + a * place.y() + dy);
    }

    /** The smallest upright frame around where that one comes to lie. */
    public Frame of(Frame frame) {
        Place one = of(new Place(frame.x(), frame.y()));
        Place two = of(new Place(frame.right(), frame.y()));
        Place three = of(new Place(frame.x(), frame.bottom()));
        Place four = of(new Place(frame.right(), frame.bottom()));
        double left = Math.min(Math.min(one.x(), two.x()), Math.min(three.x(), four.x()));
        double right = Math.max(Math.max(one.x(), two.x()), Math.max(three.x(), four.x()));
        double top = Math.min(Math.min(one.y(), two.y()), Math.min(three.y(), four.y()));
        double bottom = Math.max(Math.max(one.y(), two.y()), Math.max(three.y(), four.y()));
        return new Frame(left, top, right - left, bottom - top);
    }

    /** First this one, then another. */
    public Similarity then(Similarity next) {
        double sign = next.mirrored ? -1 : 1;
        Place origin = next.of(new Place(dx, dy));
        return new Similarity(
                next.a * a - sign * next.b * b,
                next.b * a + sign * next.a * b,
                origin.x(),
                origin.y(),
                mirrored != next.mirrored);
    }

    /** What undoes it. */
    public Similarity inverse() {
        double square = a * a + b * b;
        double sign = mirrored ? -1 : 1;
        Similarity turnedBack = new Similarity(a / square, -sign * b / square, 0, 0, mirrored);
        Place origin = turnedBack.of(new Place(dx, dy));
        return new Similarity(turnedBack.a, turnedBack.b, -origin.x(), -origin.y(), mirrored);
    }

    /**
     * A region there: vertices are rounded to the grid, and outlines that rounding made cross are noded.
     *
     * @throws IllegalArgumentException if it would leave the grid
     */
    public Region of(Region region) {
        if (equals(NONE) || region.isEmpty()) {
            return region;
        }
        List<Region.Polygon> moved = new ArrayList<>();
        for (Region.Polygon polygon : region.polygons()) {
            moved.add(new Region.Polygon(
                    of(polygon.shell()), polygon.holes().stream().map(this::of).toList()));
        }
        Region rounded = new Region(moved);
        return keepsTheGrid()
                ? rounded
                : CoverMap.of(around(region), List.of(rounded)).where(cover -> !cover.isEmpty());
    }

    /** With room for rounding. */
    private Frame around(Region region) {
        Frame frame = of(region.bounds().orElseThrow());
        double step = Grid.STEP_MM;
        return new Frame(frame.x() - step, frame.y() - step, frame.width() + 2 * step, frame.height() + 2 * step);
    }

    private boolean keepsTheGrid() {
        return a == 1 && b == 0 && dx == Grid.millimetres(Grid.steps(dx)) && dy == Grid.millimetres(Grid.steps(dy));
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
