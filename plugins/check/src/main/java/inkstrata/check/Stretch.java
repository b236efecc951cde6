package inkstrata.check;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight stretch between two points of the sheet, in grid steps; or a single point, if both are the same.
 *
 * @param ax where it starts
 * @param ay likewise
 * @param bx where it ends
 * @param by likewise
 */
record Stretch(double ax, double ay, double bx, double by) {
    double length() {
        return Math.hypot(bx - ax, by - ay);
    }

    Spot middle() {
        return new Spot((ax + bx) / 2, (ay + by) / 2);
    }

    Spot start() {
        return new Spot(ax, ay);
    }

    Spot end() {
        return new Spot(bx, by);
    }

    /** The half at its start. */
    Stretch firstHalf() {
        return new Stretch(ax, ay, (ax + bx) / 2, (ay + by) / 2);
    }

    /** The half at its end. */
    Stretch secondHalf() {
        return new Stretch((ax + bx) / 2, (ay + by) / 2, bx, by);
    }

    /** Its point that is nearest to a spot. */
    Spot nearest(Spot spot) {
        double dx = bx - ax;
        double dy = by - ay;
        double length2 = dx * dx + dy * dy;
        double t = length2 == 0 ? 0 : ((spot.x() - ax) * dx + (spot.y() - ay) * dy) / length2;
        double clamped = Math.max(0, Math.min(1, t));
        return new Spot(ax + clamped * dx, ay + clamped * dy);
    }

    /** The shortest way from here to another stretch; a point where they cross. */
    Stretch wayTo(Stretch other) {
        if (crosses(other)) {
            Spot crossing = crossing(other);
            return new Stretch(crossing.x(), crossing.y(), crossing.x(), crossing.y());
        }
        Stretch best = between(start(), other.nearest(start()));
        best = shorter(best, between(end(), other.nearest(end())));
        best = shorter(best, between(nearest(other.start()), other.start()));
        return shorter(best, between(nearest(other.end()), other.end()));
    }

    double distanceTo(Stretch other) {
        return wayTo(other).length();
    }

    /** Whether each has its ends strictly on both sides of the other. */
    boolean crosses(Stretch other) {
        return isParted(other.ax, other.ay, other.bx, other.by) && other.isParted(ax, ay, bx, by);
    }

    /** Positive on the side of positive cross products. */
    double side(double x, double y) {
        return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    }

    /** The diameter of a disc that lies square to this. */
    Stretch acrossAt(Spot centre, double radius) {
        double length = length();
        double dx = length == 0 ? 0 : radius * (bx - ax) / length;
        double dy = length == 0 ? 0 : radius * (by - ay) / length;
        return new Stretch(centre.x() - dy, centre.y() + dx, centre.x() + dy, centre.y() - dx);
    }

    /** Its parts outside of a disc: none, one or two. */
    List<Stretch> outside(Spot centre, double radius) {
        double length = length();
        Spot foot = nearest(centre);
        double away = foot.distanceTo(centre);
        if (away >= radius) {
            return List.of(this);
        }
        if (length == 0) {
            return List.of();
        }
        double dx = (bx - ax) / length;
        double dy = (by - ay) / length;
        double along = (centre.x() - ax) * dx + (centre.y() - ay) * dy;
        double off = side(centre.x(), centre.y()) / length;
        double half = Math.sqrt(Math.max(0, radius * radius - off * off));
        List<Stretch> parts = new ArrayList<>();
        if (along - half > 0) {
            parts.add(new Stretch(ax, ay, ax + (along - half) * dx, ay + (along - half) * dy));
        }
        if (along + half < length) {
            parts.add(new Stretch(ax + (along + half) * dx, ay + (along + half) * dy, bx, by));
        }
        return parts;
    }

    static Stretch between(Spot from, Spot to) {
        return new Stretch(from.x(), from.y(), to.x(), to.y());
    }

    private boolean isParted(double x, double y, double otherX, double otherY) {
        double one = side(x, y);
        double two = side(otherX, otherY);
        return (one > 0 && two < 0) || (one < 0 && two > 0);
    }

    private Spot crossing(Stretch other) {
        double from = other.side(ax, ay);
        double to = other.side(bx, by);
        double t = from / (from - to);
        return new Spot(ax + t * (bx - ax), ay + t * (by - ay));
    }

    private static Stretch shorter(Stretch one, Stretch other) {
        return other.length() < one.length() ? other : one;
    }
}
