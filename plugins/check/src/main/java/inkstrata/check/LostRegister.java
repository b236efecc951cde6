package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * Where films hold less than was planned: for each piece that a film lacks, where paper shows first because it does.
 *
 * <p>An opening counts if at one of its places a film lacks what was planned, and the planned films have none as small near by.
 *
 * @param openings all that count
 * @param pieces the worst first, of each film as many as are named
 * @param plannedMm how far the planned films hold; empty if nothing is lost
 */
record LostRegister(Set<Opening> openings, List<Piece> pieces, OptionalDouble plannedMm) {
    /** An opening of the plan that is no farther away than this, in millimetres, and no larger, is the drawing's own fault. */
    private static final double NEAR_MM = 1;

    /** So many pieces of one film are named; of the others is said how many they are. */
    private static final int MOST_PIECES = 20;

    /** An opening's places lie on the outline of what is lacking, but for rounding; in grid steps. */
    private static final double ON_OUTLINE = 8;

    /**
     * One piece that a film lacks.
     *
     * @param film its position among those that count
     * @param lacking the piece
     * @param worst where paper shows first because of it
     * @param plannedMm how far the planned films hold there; the register if more
     * @param more pieces of the same film that are not named
     */
    record Piece(int film, Region lacking, Opening worst, double plannedMm, int more) {}

    private static final LostRegister NOTHING = new LostRegister(Set.of(), List.of(), OptionalDouble.empty());

    LostRegister {
        openings = Set.copyOf(openings);
        pieces = List.copyOf(pieces);
    }

    /**
     * Finds it among the openings of films.
     *
     * @param films what each pull's film prints, by position
     */
    static LostRegister among(List<Opening> openings, List<Region> films, Counted counted, double registerMm) {
        List<Opening> lost = openings.stream()
                .filter(opening -> opening.isLost() && opening.isFound())
                .toList();
        if (lost.isEmpty()) {
            return NOTHING;
        }
        List<Region> planned = counted.of(counted.planned().printed(), registerMm);
        Frame frame = counted.planned().artwork().frame();
        double reach = RegisterLimit.reach(registerMm);
        FilmMap map = FilmMap.of(planned, counted.picture(), frame);
        Outlines outlines = Outlines.of(map, reach);
        Map<Opening, Double> allowed = new HashMap<>();
        Map<Integer, Opening> worst = new LinkedHashMap<>();
        List<Lacking> pieces = lacking(counted.of(films, registerMm), planned, frame);
        for (Opening opening : lost) {
            Optional<Opening> own = SmallestOpening.near(
                    map, outlines, opening.middle(), NEAR_MM * Grid.STEPS_PER_MM + opening.size(), reach);
            if (own.isPresent() && own.get().size() <= opening.size() + SmallestOpening.EXACT) {
                continue;
            }
            allowed.put(
                    opening, Math.min(registerMm, own.map(RegisterLimit::heldMm).orElse(registerMm)));
            at(opening, pieces)
                    .ifPresent(piece ->
                            worst.merge(piece, opening, (one, other) -> other.size() < one.size() ? other : one));
        }
        if (allowed.isEmpty()) {
            return NOTHING;
        }
        return new LostRegister(
                new HashSet<>(allowed.keySet()),
                named(worst, pieces, allowed),
                OptionalDouble.of(RegisterLimit.of(planned, counted.picture(), frame, registerMm)
                        .heldMm()));
    }

    private static List<Piece> named(Map<Integer, Opening> worst, List<Lacking> pieces, Map<Opening, Double> allowed) {
        Map<Integer, List<Map.Entry<Integer, Opening>>> byFilm = new TreeMap<>();
        worst.entrySet().stream()
                .sorted(Comparator.comparingDouble(piece -> piece.getValue().size()))
                .forEach(piece -> byFilm.computeIfAbsent(
                                pieces.get(piece.getKey()).film(), film -> new ArrayList<>())
                        .add(piece));
        List<Piece> named = new ArrayList<>();
        byFilm.forEach((film, found) -> {
            for (int i = 0; i < Math.min(MOST_PIECES, found.size()); i++) {
                Opening opening = found.get(i).getValue();
                int more = i == MOST_PIECES - 1 ? found.size() - MOST_PIECES : 0;
                Region lacking = pieces.get(found.get(i).getKey()).piece();
                named.add(new Piece(film, lacking, opening, allowed.get(opening), more));
            }
        });
        return named;
    }

    /**
     * What one film lacks, in one piece.
     *
     * @param box around it
     */
    private record Lacking(int film, Region piece, Box box, NearOutlines outline) {
        static Lacking of(int film, Region piece) {
            Box box = Box.EMPTY;
            for (Ring ring : NearOutlines.rings(piece)) {
                for (int i = 0; i < ring.size(); i++) {
                    box = box.with(Box.around(new Spot(ring.x(i), ring.y(i))));
                }
            }
            return new Lacking(film, piece, box, new NearOutlines(List.of(piece), Grid.STEPS_PER_MM));
        }

        boolean isAt(Spot spot) {
            return box.wider(ON_OUTLINE).meets(Box.around(spot))
                    && (piece.covers(spot.place())
                            || outline.nearest(spot, ON_OUTLINE).isPresent());
        }
    }

    private static List<Lacking> lacking(List<Region> films, List<Region> planned, Frame frame) {
        List<Lacking> all = new ArrayList<>();
        for (int film = 0; film < films.size(); film++) {
            if (films.get(film).equals(planned.get(film))) {
                continue;
            }
            Region lacking = CoverMap.of(frame, List.of(films.get(film), planned.get(film)))
                    .where(cover -> !cover.get(0) && cover.get(1));
            for (Region.Polygon polygon : lacking.polygons()) {
                all.add(Lacking.of(film, Region.of(polygon)));
            }
        }
        return all;
    }

    /** The piece at one of an opening's places. */
    private static Optional<Integer> at(Opening opening, List<Lacking> pieces) {
        for (int i = 0; i < opening.spots().size(); i++) {
            for (int number = 0; number < pieces.size(); number++) {
                Lacking piece = pieces.get(number);
                if (!opening.films().get(i).get(piece.film())
                        && piece.isAt(opening.spots().get(i))) {
                    return Optional.of(number);
                }
            }
        }
        return Optional.empty();
    }
}
