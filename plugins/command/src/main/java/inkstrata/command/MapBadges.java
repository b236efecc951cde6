package inkstrata.command;

import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * Where numbers stand on a map: close to their places, over no other number and no other place.
 *
 * @param sheet they stay on it or near it
 * @param side of a number's square, in millimetres
 */
record MapBadges(Frame sheet, double side) {
    private static final int DIRECTIONS = 16;
    private static final int RINGS = 24;

    /** Middles of their squares, in the places' order. */
    List<Place> places(List<Place> asked) {
        List<Place> found = new ArrayList<>();
        for (Place place : asked) {
            found.add(free(place, asked, found));
        }
        return found;
    }

    private Place free(Place place, List<Place> asked, List<Place> taken) {
        for (int ring = 0; ring < RINGS; ring++) {
            double away = side * (1.6 + 0.8 * ring);
            for (int i = 0; i < DIRECTIONS; i++) {
                // First up and to the right, then round in both directions.
                double turn = -Math.PI / 4 + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 2 * Math.PI / DIRECTIONS;
                Place there = new Place(place.x() + away * Math.cos(turn), place.y() + away * Math.sin(turn));
                if (isOnSheet(there)
                        && asked.stream().noneMatch(other -> isOver(there, other, 0.9 * side))
                        && taken.stream().noneMatch(other -> isOver(there, other, 1.2 * side))) {
                    return there;
                }
            }
        }
        return place;
    }

    private boolean isOnSheet(Place place) {
        return place.x() > sheet.x() + side / 2
                && place.y() > sheet.y() + side / 2
                && place.x() < sheet.right() - side / 2
                && place.y() < sheet.bottom() - side / 2;
    }

    private static boolean isOver(Place one, Place other, double apart) {
        return Math.abs(one.x() - other.x()) < apart && Math.abs(one.y() - other.y()) < apart;
    }
}
