package inkstrata.check;

import inkstrata.check.OutlinePoints.Point;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.CoverMap;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Parts of a film that slid: whole islands of it, or all that lies beyond an upright or level line.
 *
 * <p>How far is told by islands that are missing and others of the same size that are too many, or by outlines that lie beside those that were
 * planned. A move counts if hardly any of what differs is left once it is known.
 *
 * @param parts each with its own move, the one that explains most first
 * @param mended the film with all of them moved back
 */
record MovedParts(List<MovedPart> parts, Region mended) {
    /** More moves than that are another drawing. */
    private static final int MOST_MOVES = 5;

    /** So many of the largest islands are compared in size. */
    private static final int ISLANDS = 60;

    /** Islands of one size differ by less: their sides, in millimetres, and their areas, as a ratio. */
    private static final double ONE_SIDE_MM = 0.03;

    private static final double ONE_AREA = 0.01;

    /** Moves that differ by less, in millimetres, are one. */
    private static final double ONE_MOVE_MM = 0.02;

    /** Outlines lie on each other that near, in millimetres, and nearer if the move is small. */
    private static final double ON_IT_MM = 0.012;

    /** So much of what a moved part changes must be explained by its move. */
    private static final double EXPLAINED = 0.9;

    /** A line divides what moved from what did not, but for so many points. */
    private static final double ASTRAY = 0.03;

    private static final int POINTS = 1500;
    private static final int FEW_POINTS = 120;

    /** A half has so many points at least. */
    private static final int LEAST_POINTS = 10;

    private static final double FARTHEST_MM = 3;
    private static final int ROUNDS = 25;
    private static final double TRUSTED = 0.7;
    private static final int LINES = 4;

    /** So many moves are tried. */
    private static final int MOVES = 4;

    /** Of a film with more of its outline off, no part lies right. */
    private static final double MOST_OFF = 0.9;

    /** What it explains the better, the less of the film is left that differs. */
    private record Tried(MovedPart part, double leftMm2, double beforeMm2) {
        boolean isAll() {
            return leftMm2 < (1 - EXPLAINED) * beforeMm2;
        }
    }

    /** @param targets what the film may have been made from: with its traps, or without */
    static Optional<MovedParts> of(Region film, List<Region> targets, Frame frame) {
        return targets.stream()
                .flatMap(target -> of(film, target, frame).stream())
                .findFirst();
    }

    private static Optional<MovedParts> of(Region film, Region target, Frame frame) {
        Region left = film;
        List<MovedPart> parts = new ArrayList<>();
        while (parts.size() < MOST_MOVES) {
            Optional<MovedPart> next = new Search(left, target, frame).best();
            if (next.isEmpty()) {
                break;
            }
            parts.add(next.get());
            left = AsPlanned.carriedOver(left, expected(target, next.get(), frame), target, frame);
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(new MovedParts(parts, left));
    }

    /** The plan with a part moved. */
    private static Region expected(Region target, MovedPart part, Frame frame) {
        return CoverMap.of(frame, List.of(target, part.part(), part.moved()))
                .where(cover -> cover.get(2) || (cover.get(0) && !cover.get(1)));
    }

    /** A move, in grid steps. */
    private record Move(double dx, double dy) {
        double lengthMm() {
            return Math.hypot(dx, dy) * Grid.STEP_MM;
        }

        boolean isLike(Move other) {
            return Math.hypot(dx - other.dx, dy - other.dy) * Grid.STEP_MM < ONE_MOVE_MM;
        }

        Spot back(Spot spot) {
            return new Spot(spot.x() - dx, spot.y() - dy);
        }
    }

    /** The search for the move that explains most. */
    private static final class Search {
        private final Region film;
        private final Region target;
        private final Frame frame;
        private final List<Region> more;
        private final List<Region> less;

        Search(Region film, Region target, Frame frame) {
            this.film = film;
            this.target = target;
            this.frame = frame;
            CoverMap both = CoverMap.of(frame, List.of(film, target));
            this.more = Pieces.of(both.where(cover -> cover.get(0) && !cover.get(1)), frame);
            this.less = Pieces.of(both.where(cover -> !cover.get(0) && cover.get(1)), frame);
        }

        Optional<MovedPart> best() {
            if (more.isEmpty() || less.isEmpty()) {
                return Optional.empty();
            }
            List<Region> lost = touched(target, less);
            List<Region> added = touched(film, more);
            Optional<Tried> islands =
                    best(distinct(byIslands(lost, added).toList()).flatMap(move -> islands(move, lost).stream()));
            if (islands.filter(Tried::isAll).isPresent()) {
                return islands.map(Tried::part);
            }
            NearOutlines planned = new NearOutlines(List.of(target), Grid.STEPS_PER_MM / 4.0);
            List<Spot> off = OutlinePoints.of(film, POINTS).stream()
                    .map(Point::spot)
                    .filter(spot -> !isOn(planned, spot, ON_IT_MM))
                    .toList();
            if (off.size() > MOST_OFF * POINTS) {
                return islands.map(Tried::part);
            }
            Stream<Tried> others = distinct(byOutlines(off, planned).toList())
                    .flatMap(move -> Stream.concat(islands(move, lost).stream(), half(move, planned).stream()));
            return best(Stream.concat(islands.stream(), others)).map(Tried::part);
        }

        private static Optional<Tried> best(Stream<Tried> tried) {
            return tried.min(Comparator.comparingDouble(Tried::leftMm2));
        }

        /** Those that most speak for. */
        private static Stream<Move> distinct(List<Move> all) {
            List<Move> moves = new ArrayList<>();
            for (Move move : all) {
                if (move.lengthMm() >= Laid.THIN_MM && moves.stream().noneMatch(move::isLike)) {
                    moves.add(move);
                }
            }
            return moves.stream()
                    .sorted(Comparator.comparingLong(
                            move -> -all.stream().filter(move::isLike).count()))
                    .limit(MOVES);
        }

        /** The largest islands of a region that hold a place of some piece. */
        private static List<Region> touched(Region region, List<Region> pieces) {
            List<Place> places = pieces.stream().map(Region::somewhere).toList();
            return region.polygons().stream()
                    .map(Region::of)
                    .sorted(Comparator.comparingDouble(polygon -> -polygon.areaMm2()))
                    .limit(ISLANDS)
                    .filter(polygon -> places.stream().anyMatch(polygon::covers))
                    .toList();
        }

        /** From islands that are missing to the nearest of one size that are too many. */
        private static Stream<Move> byIslands(List<Region> lost, List<Region> added) {
            return lost.stream()
                    .flatMap(from -> added.stream()
                            .filter(to -> areOneSize(from, to))
                            .map(to -> move(from, to))
                            .min(Comparator.comparingDouble(Move::lengthMm))
                            .stream());
        }

        private static boolean areOneSize(Region one, Region other) {
            Frame a = one.bounds().orElseThrow();
            Frame b = other.bounds().orElseThrow();
            return Math.abs(a.width() - b.width()) < ONE_SIDE_MM
                    && Math.abs(a.height() - b.height()) < ONE_SIDE_MM
                    && Math.abs(one.areaMm2() - other.areaMm2()) < ONE_AREA * one.areaMm2();
        }

        private static Move move(Region from, Region to) {
            Frame a = from.bounds().orElseThrow();
            Frame b = to.bounds().orElseThrow();
            return new Move(
                    (b.x() + b.right() - a.x() - a.right()) / 2 * Grid.STEPS_PER_MM,
                    (b.y() + b.bottom() - a.y() - a.bottom()) / 2 * Grid.STEPS_PER_MM);
        }

        /** What brings outlines that lie beside those that were planned onto them. */
        private static Stream<Move> byOutlines(List<Spot> off, NearOutlines planned) {
            double millimetre = Grid.STEPS_PER_MM;
            return Stream.of(
                            new Move(0, 0),
                            new Move(millimetre, 0),
                            new Move(-millimetre, 0),
                            new Move(0, millimetre),
                            new Move(0, -millimetre))
                    .flatMap(guess -> nearer(off, guess, planned).stream());
        }

        private static Optional<Move> nearer(List<Spot> off, Move guess, NearOutlines planned) {
            Move move = guess;
            double reach = FARTHEST_MM * Grid.STEPS_PER_MM;
            for (int round = 0; round < ROUNDS; round++) {
                List<Spot[]> pairs = new ArrayList<>();
                for (Spot spot : off) {
                    Spot back = move.back(spot);
                    planned.nearest(back, reach).ifPresent(near -> pairs.add(new Spot[] {back, near}));
                }
                pairs.sort(Comparator.comparingDouble(pair -> pair[0].distanceTo(pair[1])));
                var step = Nearing.MOVED.step(pairs.subList(0, (int) Math.ceil(pairs.size() * TRUSTED)));
                if (step.isEmpty()) {
                    return Optional.empty();
                }
                move = new Move(
                        move.dx() - step.get().dx() * Grid.STEPS_PER_MM,
                        move.dy() - step.get().dy() * Grid.STEPS_PER_MM);
                reach = Math.max(Grid.STEPS_PER_MM / 20.0, reach * 0.8);
            }
            return Optional.of(move);
        }

        /** Islands all of whose outline lies that far from where it was planned. */
        private Optional<Tried> islands(Move move, List<Region> lost) {
            NearOutlines outlines = new NearOutlines(List.of(film), Grid.STEPS_PER_MM / 4.0);
            Move there = new Move(-move.dx(), -move.dy());
            double near = onItMm(move);
            List<Region> moved = lost.stream()
                    .filter(island -> OutlinePoints.of(island, FEW_POINTS).stream()
                                    .filter(point -> isOn(outlines, there.back(point.spot()), near))
                                    .count()
                            >= EXPLAINED * FEW_POINTS)
                    .toList();
            if (moved.isEmpty()) {
                return Optional.empty();
            }
            String words = moved.size() == 1 ? "one part of %s" : moved.size() + " parts of %s";
            return tried(words, Region.of(moved), move);
        }

        /** All beyond a line. */
        private Optional<Tried> half(Move move, NearOutlines planned) {
            double near = onItMm(move);
            List<Spot> stayed = new ArrayList<>();
            List<Spot> moved = new ArrayList<>();
            List<Point> neither = new ArrayList<>();
            for (Point point : OutlinePoints.of(film, POINTS)) {
                boolean isPlanned = isOn(planned, point.spot(), near);
                boolean isMoved = isOn(planned, move.back(point.spot()), near);
                if (isPlanned != isMoved) {
                    (isPlanned ? stayed : moved).add(point.spot());
                } else if (!isPlanned) {
                    neither.add(point);
                }
            }
            if (stayed.size() < LEAST_POINTS || moved.size() < LEAST_POINTS) {
                return Optional.empty();
            }
            return Stream.of(Cut.Side.values())
                    .flatMap(side -> lines(side, stayed, moved, neither, move)
                            .mapToObj(line -> beyond(side, line, move))
                            .flatMap(Optional::stream))
                    .min(Comparator.comparingDouble(Tried::leftMm2));
        }

        /** Where the line may lie beyond which all has moved, in millimetres; none if nothing divides the two. */
        private static DoubleStream lines(
                Cut.Side side, List<Spot> stayed, List<Spot> moved, List<Point> neither, Move move) {
            double[] in = stayed.stream().mapToDouble(side::out).sorted().toArray();
            double[] out = moved.stream().mapToDouble(side::out).sorted().toArray();
            double from = in[(int) ((in.length - 1) * (1 - ASTRAY))];
            double to = out[(int) (out.length * ASTRAY)];
            // A part that slid towards the rest overlaps it.
            double reach = move.lengthMm() * Grid.STEPS_PER_MM;
            if (from > to + reach) {
                return DoubleStream.empty();
            }
            DoubleStream edges = neither.stream()
                    .filter(point -> Math.abs(side.isUpright() ? point.inX() : point.inY()) > 0.99)
                    .mapToDouble(point -> side.out(point.spot()))
                    .filter(at -> at > from - 2 * reach && at < to + 2 * reach)
                    .map(at -> Math.rint(at / 20) * 20)
                    .distinct()
                    .limit(LINES);
            return DoubleStream.concat(DoubleStream.of((from + to) / 2, from, to), edges)
                    .map(at -> side.out(1) * at * Grid.STEP_MM);
        }

        private Optional<Tried> beyond(Cut.Side side, double line, Move move) {
            return side.beyond(line, frame).flatMap(half -> {
                Region part = CoverMap.of(frame, List.of(target, half)).where(cover -> cover.cardinality() == 2);
                return part.isEmpty()
                        ? Optional.empty()
                        : tried("what %s prints " + new Cut(side, line).words(), part, move);
            });
        }

        /** The part with its move, if that explains what is different there. */
        private Optional<Tried> tried(String words, Region region, Move move) {
            MovedPart part = new MovedPart(
                    words, !words.contains("parts"), region, (int) Math.rint(move.dx()), (int) Math.rint(move.dy()));
            CoverMap laid = CoverMap.of(frame, List.of(film, target, region, part.moved()));
            double before = 0;
            double changed = 0;
            double left = 0;
            for (int number = 0; number < laid.count(); number++) {
                BitSet cover = laid.cover(number);
                boolean isExpected = cover.get(3) || (cover.get(1) && !cover.get(2));
                double area = laid.areaMm2(number);
                before += cover.get(0) != cover.get(1) ? area : 0;
                changed += isExpected != cover.get(1) ? area : 0;
                left += isExpected != cover.get(0) ? area : 0;
            }
            return left <= before - EXPLAINED * changed ? Optional.of(new Tried(part, left, before)) : Optional.empty();
        }

        private static double onItMm(Move move) {
            return Math.min(ON_IT_MM, move.lengthMm() / 4);
        }

        private static boolean isOn(NearOutlines outlines, Spot spot, double millimetres) {
            return outlines.nearest(spot, millimetres * Grid.STEPS_PER_MM).isPresent();
        }
    }
}
