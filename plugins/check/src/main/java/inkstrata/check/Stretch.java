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
        double dx = bx - ax;
        double dy = by - ay;
        return Math.sqrt(dx * dx + dy * dy);
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

    /** How long the shortest way is; 0 where they cross. */
    double distanceTo(Stretch other) {
        if (crosses(other)) {
            return 0;
        }
        double one = Math.min(other.squareTo(ax, ay), other.squareTo(bx, by));
        double two = Math.min(squareTo(other.ax, other.ay), squareTo(other.bx, other.by));
        return Math.sqrt(Math.min(one, two));
    }

    /** The square of the distance from a place. */
    double squareTo(double x, double y) {
        double dx = bx - ax;
        double dy = by - ay;
        double length2 = dx * dx + dy * dy;
        double t = length2 == 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / length2));
        double offX = ax + t * dx - x;
        double offY = ay + t * dy - y;
        return offX * offX + offY * offY;
    }

    /** Whether each has its ends strictly on both sides of the other. */
    boolean crosses(Stretch other) {
        return isParted(other.ax, other.ay, other.bx, other.by) && other.isParted(ax, ay, bx, by);
    }

    /** Positive on the side of positive cross products. */
    double side(double x, double y) {
        return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    }

    /** On which side of all ways from here to another stretch a place lies: that of positive cross products is 1; 0 if not of all. */
    int sideOfWaysTo(Stretch other, double x, double y) {
        // Sides change evenly along either stretch, so their ends tell.
        double first = new Stretch(ax, ay, other.ax, other.ay).side(x, y);
        double second = new Stretch(ax, ay, other.bx, other.by).side(x, y);
        double third = new Stretch(bx, by, other.ax, other.ay).side(x, y);
        double fourth = new Stretch(bx, by, other.bx, other.by).side(x, y);
        boolean isLeft = first > 0 && second > 0 && third > 0 && fourth > 0;
        boolean isRight = first < 0 && second < 0 && third < 0 && fourth < 0;
        return isLeft ? 1 : isRight ? -1 : 0;
    }

    /** The diameter of a disc that lies square to this. */
    Stretch acrossAt(Spot centre, double radius) {
        double length = length();
        double dx = length == 0 ? 0 : radius * (bx - ax) / length;
        double dy = length == 0 ? 0 : radius * (by - ay) / length;
        return new Stretch(centre.x() - dy, centre.y() + dx, centre.x() + dy, centre.y() - dx);
    }

    /** Its parts that are farther than that from a stretch: none, one or two, since what is near to it is convex. */
    List<Stretch> awayFrom(Stretch other, double radius) {
        double length = length();
        if (distanceTo(other) >= radius) {
            return List.of(this);
        }
        double[] near = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        addDisc(other.start(), radius, near);
        addDisc(other.end(), radius, near);
        addStrip(other, radius, near);
        List<Stretch> parts = new ArrayList<>();
        if (length > 0 && near[0] > 0) {
            Spot cut = at(near[0] / length);
            parts.add(new Stretch(ax, ay, cut.x(), cut.y()));
        }
        if (length > 0 && near[1] < length) {
            Spot cut = at(near[1] / length);
            parts.add(new Stretch(cut.x(), cut.y(), bx, by));
        }
        return parts;
    }

    private Spot at(double share) {
        return new Spot(ax + share * (bx - ax), ay + share * (by - ay));
    }

    /** Widens a range along this line by what of it lies in a disc. */
    private void addDisc(Spot centre, double radius, double[] range) {
        double length = length();
        if (length == 0) {
            return;
        }
        double along = ((centre.x() - ax) * (bx - ax) + (centre.y() - ay) * (by - ay)) / length;
        double off = side(centre.x(), centre.y()) / length;
        if (Math.abs(off) < radius) {
            double half = Math.sqrt(radius * radius - off * off);
            range[0] = Math.min(range[0], along - half);
            range[1] = Math.max(range[1], along + half);
        }
    }

    /** Likewise, by what lies beside another stretch. */
    private void addStrip(Stretch core, double radius, double[] range) {
        double length = length();
        double coreLength = core.length();
        if (length == 0 || coreLength == 0) {
            return;
        }
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        double along = core.along(ax, ay);
        double alongStep = (core.along(bx, by) - along) / length;
        double off = core.side(ax, ay) / coreLength;
        double offStep = (core.side(bx, by) / coreLength - off) / length;
        double[][] bounds = {{along, alongStep, 0, coreLength}, {off, offStep, -radius, radius}};
        for (double[] bound : bounds) {
            if (bound[1] == 0) {
                if (bound[0] < bound[2] || bound[0] > bound[3]) {
                    return;
                }
            } else {
                double one = (bound[2] - bound[0]) / bound[1];
                double other = (bound[3] - bound[0]) / bound[1];
                from = Math.max(from, Math.min(one, other));
                to = Math.min(to, Math.max(one, other));
            }
        }
        if (from < to) {
            range[0] = Math.min(range[0], from);
            range[1] = Math.max(range[1], to);
        }
    }

    /** How far along this a place lies, from its start. */
    private double along(double x, double y) {
        return ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length();
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
