package inkstrata.artwork.stroke;

/**
 * A part of a leg that is drawn without lifting the pen.
 *
 * @param from parameter of the leg
 * @param to the same, more than {@code from}
 */
record Span(Leg leg, double from, double to) {
    static Span whole(Leg leg) {
        return new Span(leg, 0, 1);
    }

    Station start() {
        return Station.at(leg, from, true);
    }

    Station end() {
        return Station.at(leg, to, false);
    }
}
