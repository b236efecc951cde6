package inkstrata.planar;

import inkstrata.measure.Grid;

/**
 * How far a chain spreads around its ends: as far as what it may spread over lies within its width from there.
 *
 * <p>Around an end the outline of all that may be spread over goes on; it is followed as long as it stays within the width. Most ends
 * are hardly swept, and all the way round would cost more than all the rest of the corridor.
 */
final class EndSweep {
    private final Borderlines lines;
    private final int[] previous;
    private final StackKinds kinds;
    private final StackSet over;
    private final double width;

    /** @param previous for each half-edge the one before it in its walk */
    EndSweep(Borderlines lines, int[] previous, StackKinds kinds, Spread spread) {
        this.lines = lines;
        this.previous = previous;
        this.kinds = kinds;
        this.over = spread.over();
        this.width = spread.widthMm() * Grid.STEPS_PER_MM;
    }

    /** Around the end of a chain whose last half-edge that is; an angle from straight across on. */
    double after(int last) {
        return around(last ^ 1, last, 1);
    }

    /** Likewise around the start of a chain whose first half-edge that is. */
    double before(int first) {
        return around(first, first, -1);
    }

    /**
     * Follows the outline away from an end. Ends: each half-edge of the outline comes after just one other, so at the latest the walk comes
     * back to where it began.
     *
     * @param end a half-edge that starts at the end and runs along the chain
     * @param half the chain's half-edge there
     * @param way 1 if the outline goes on from there, -1 if it comes to there
     */
    private double around(int end, int half, int way) {
        double x = x(end);
        double y = y(end);
        double fromX = x(end ^ 1) - x;
        double fromY = y(end ^ 1) - y;
        double swept = -Math.PI / 2;
        double most = 0;
        int at = half;
        do {
            boolean isFirst = at == half;
            at = way > 0 ? next(at) : last(at);
            int far = way > 0 ? at ^ 1 : at;
            double toX = x(far) - x;
            double toY = y(far) - y;
            if ((toX == 0 && toY == 0) || at == half || at == (half ^ 1)) {
                return BorderChain.ALL_ROUND;
            }
            double turn = -way * StrictMath.atan2(fromX * toY - fromY * toX, fromX * toX + fromY * toY);
            // From the chain itself any angle up to a full turn lies to its left.
            swept += isFirst && turn <= 0 ? turn + 2 * Math.PI : turn;
            most = Math.max(most, swept);
            fromX = toX;
            fromY = toY;
        } while (fromX * fromX + fromY * fromY < width * width);
        return Math.min(most, BorderChain.ALL_ROUND);
    }

    private int next(int half) {
        int next = lines.next(half);
        while (kinds.isIn(over, lines.kind(next ^ 1))) {
            next = lines.next(next ^ 1);
        }
        return next;
    }

    private int last(int half) {
        int last = previous[half];
        while (kinds.isIn(over, lines.kind(last ^ 1))) {
            last = previous[last ^ 1];
        }
        return last;
    }

    private double x(int half) {
        return lines.x(lines.origin(half));
    }

    private double y(int half) {
        return lines.y(lines.origin(half));
    }
}
