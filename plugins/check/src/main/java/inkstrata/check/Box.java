package inkstrata.check;

import java.util.List;

/** A rectangle around things, in grid steps. */
record Box(double left, double top, double right, double bottom) {
    /** Around nothing yet. */
    static final Box EMPTY = new Box(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    static Box around(Spot spot) {
        return new Box(spot.x(), spot.y(), spot.x(), spot.y());
    }

    static Box around(Stretch stretch) {
        return new Box(
                Math.min(stretch.ax(), stretch.bx()),
                Math.min(stretch.ay(), stretch.by()),
                Math.max(stretch.ax(), stretch.bx()),
                Math.max(stretch.ay(), stretch.by()));
    }

    static Box around(List<Spot> spots) {
        Box box = EMPTY;
        for (Spot spot : spots) {
            box = box.with(around(spot));
        }
        return box;
    }

    /** Around both. */
    Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    /** Wider by that much on each side. */
    Box wider(double margin) {
        return new Box(left - margin, top - margin, right + margin, bottom + margin);
    }

    boolean meets(Box other) {
        return left <= other.right && right >= other.left && top <= other.bottom && bottom >= other.top;
    }

    /** How far it is from another; 0 where they meet. */
    double distanceTo(Box other) {
        double dx = Math.max(0, Math.max(left - other.right, other.left - right));
        double dy = Math.max(0, Math.max(top - other.bottom, other.top - bottom));
        return Math.sqrt(dx * dx + dy * dy);
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    /** How far apart two of its places can be at most. */
    double diagonal() {
        return Math.sqrt(width() * width() + height() * height());
    }
}
