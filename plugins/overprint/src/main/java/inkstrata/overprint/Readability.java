package inkstrata.overprint;

import inkstrata.colour.Ciede2000;
import inkstrata.plan.Ink;
import inkstrata.plan.Overlap;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.planar.Neighbours;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * How much of the edges of drawings that lie over each other can still be seen: an edge is lost where what lies on either side of it looks
 * alike.
 */
final class Readability {
    /** With more drawings not every order is tried, but neighbours are exchanged as long as that helps. */
    private static final int TRY_ALL = 6;

    private final PlanningTable table;
    private final List<List<Ink>> inksByStack = new ArrayList<>();
    private final List<Neighbours> edges;
    private final Prediction prediction;
    private final List<Ink> usual;

    private Readability(PlanningTable table, PrintPlan plan) {
        this.table = table;
        this.prediction = new Prediction(table.sheet());
        List<Pull> pulls = plan.pulls();
        this.usual = table.sheet().farthestFirst(pulls).stream()
                .map(pull -> pulls.get(pull).ink())
                .toList();
        for (Row row : table.rows()) {
            inksByStack.add(pulls.stream()
                    .filter(pull -> pull.prints().contains(row.stack()))
                    .map(Pull::ink)
                    .toList());
        }
        this.edges = table.neighbours().stream()
                .filter(pair -> pair.lengthMm() > 0)
                .filter(pair -> !table.rows()
                        .get(pair.one())
                        .drawings()
                        .equals(table.rows().get(pair.other()).drawings()))
                .toList();
    }

    static Readability of(PlanningTable table, PrintPlan plan) {
        return new Readability(table, plan);
    }

    /** Of all edges of drawings, in millimetres. */
    double allMm() {
        return edges.stream().mapToDouble(Neighbours::lengthMm).sum();
    }

    /** The inks as they are planned to lie, farthest from the eye first. */
    List<Ink> planned() {
        return usual;
    }

    /** Edges that are lost in an order, the longest first. */
    List<Neighbours> lost(List<Ink> farthestFirst) {
        return edges.stream()
                .filter(pair -> looksAlike(pair, farthestFirst))
                .sorted(Comparator.comparingDouble(pair -> -pair.lengthMm()))
                .toList();
    }

    /** The order in which least is lost, as near to the planned one as may be. */
    List<Ink> best() {
        List<Ink> drawings =
                usual.stream().filter(ink -> ink.from().isPresent()).toList();
        return drawings.size() <= TRY_ALL ? bestOfAll(drawings) : bestByExchange();
    }

    private List<Ink> bestOfAll(List<Ink> drawings) {
        List<Ink> best = usual;
        double least = lostMm(usual);
        for (List<Ink> order : orders(drawings)) {
            List<Ink> whole = placed(order);
            double lost = lostMm(whole);
            if (lost < least) {
                least = lost;
                best = whole;
            }
        }
        return best;
    }

    /** Ends: each round but the last makes less be lost, and there are no more rounds than pairs of inks. */
    private List<Ink> bestByExchange() {
        List<Ink> best = usual;
        double least = lostMm(usual);
        boolean isBetter = true;
        for (int round = 0; isBetter && round < usual.size() * usual.size(); round++) {
            isBetter = false;
            for (int i = 0; i + 1 < best.size(); i++) {
                List<Ink> other = new ArrayList<>(best);
                Collections.swap(other, i, i + 1);
                double lost = lostMm(other);
                boolean isSameSide =
                        table.sheet().side(best.get(i)) == table.sheet().side(best.get(i + 1));
                if (isSameSide && lost < least) {
                    least = lost;
                    best = other;
                    isBetter = true;
                }
            }
        }
        return best;
    }

    /** Drawings in another order, in the places that drawings have; nothing changes the side of the sheet. */
    private List<Ink> placed(List<Ink> drawings) {
        List<Ink> whole = new ArrayList<>();
        int next = 0;
        for (Ink ink : usual) {
            whole.add(ink.from().isPresent() ? drawings.get(next++) : ink);
        }
        boolean isPossible = true;
        for (int i = 0; i < whole.size(); i++) {
            isPossible &= table.sheet().side(whole.get(i)) == table.sheet().side(usual.get(i));
        }
        return isPossible ? whole : usual;
    }

    private static List<List<Ink>> orders(List<Ink> inks) {
        if (inks.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Ink>> orders = new ArrayList<>();
        for (Ink first : inks) {
            List<Ink> rest = new ArrayList<>(inks);
            rest.remove(first);
            for (List<Ink> order : orders(rest)) {
                List<Ink> whole = new ArrayList<>(List.of(first));
                whole.addAll(order);
                orders.add(whole);
            }
        }
        return orders;
    }

    private double lostMm(List<Ink> farthestFirst) {
        return lost(farthestFirst).stream().mapToDouble(Neighbours::lengthMm).sum();
    }

    private boolean looksAlike(Neighbours pair, List<Ink> farthestFirst) {
        return Ciede2000.difference(
                        prediction.lab(pile(pair.one(), farthestFirst)),
                        prediction.lab(pile(pair.other(), farthestFirst)))
                <= Overlap.TOLERANCE;
    }

    private List<Ink> pile(int stack, List<Ink> farthestFirst) {
        return farthestFirst.stream()
                .filter(ink -> inksByStack.get(stack).contains(ink))
                .toList();
    }
}
