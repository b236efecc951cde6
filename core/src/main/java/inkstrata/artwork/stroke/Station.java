package inkstrata.artwork.stroke;

/**
 * Where the pen stands at one place of a leg.
 *
 * @param x of the path
 * @param y of the path
 * @param tx unit direction in which the path goes
 * @param ty the same
 * @param speed how fast it goes there by the leg's parameter
 * @param turning radians by the parameter; positive towards the left, that is, from x to y
 * @param turningRate how fast the radius of curvature grows by the parameter, signed like {@link #radius()}
 */
record Station(double x, double y, double tx, double ty, double speed, double turning, double turningRate) {
    /**
     * At a parameter.
     *
     * @param forwards whether what lies behind t counts, where the path stands still at t; else what lies before
     */
    static Station at(Leg leg, double t, boolean forwards) {
        double dx = leg.dx(t);
        double dy = leg.dy(t);
        double ddx = leg.ddx(t);
        double ddy = leg.ddy(t);
        double speed = Math.hypot(dx, dy);
        double x = leg.x(t);
        double y = leg.y(t);
        if (speed > leg.still()) {
            double cross = dx * ddy - dy * ddx;
            double crossRate = dx * leg.dddy() - dy * leg.dddx();
            double rate =
                    cross == 0 ? 0 : speed * (3 * (dx * ddx + dy * ddy) - speed * speed * (crossRate / cross)) / cross;
            return new Station(x, y, dx / speed, dy / speed, speed, cross / (speed * speed), rate);
        }
        double acceleration = Math.hypot(ddx, ddy);
        if (acceleration > leg.still()) {
            // Seen from t the path goes along its second derivative, backwards before t; the limits are those of
            // Taylor's series.
            int way = forwards ? 1 : -1;
            double cross = ddx * leg.dddy() - ddy * leg.dddx();
            double turning = cross / (2 * acceleration * acceleration);
            double rate = cross == 0 ? 0 : way * 2 * acceleration * acceleration * acceleration / cross;
            return new Station(x, y, way * ddx / acceleration, way * ddy / acceleration, 0, turning, rate);
        }
        double jerk = Math.hypot(leg.dddx(), leg.dddy());
        return jerk > 0
                ? new Station(x, y, leg.dddx() / jerk, leg.dddy() / jerk, 0, 0, 0)
                : new Station(x, y, 1, 0, 0, 0, 0);
    }

    /** To the centre of curvature, positive towards the left; infinite on straight lines. */
    double radius() {
        return turning == 0 ? Double.POSITIVE_INFINITY : speed / turning;
    }

    /** A place square to the path, positive to the left. */
    double x(double aside) {
        return x - aside * ty;
    }

    double y(double aside) {
        return y + aside * tx;
    }

    /** How fast a place of the pen goes forwards; negative where it goes back. */
    double forwards(double aside) {
        return speed - aside * turning;
    }

    /** Here with the direction of another station, for legs that meet smoothly. */
    Station heading(Station other) {
        return new Station(x, y, other.tx, other.ty, speed, turning, turningRate);
    }

    /** By how much the path turns from here to another station at the same place, in radians from -π to π. */
    double turnTo(Station next) {
        return Math.atan2(tx * next.ty - ty * next.tx, tx * next.tx + ty * next.ty);
    }
}
