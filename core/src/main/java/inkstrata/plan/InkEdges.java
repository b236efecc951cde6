package inkstrata.plan;

import inkstrata.planar.Neighbours;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** How much edge inks share where they show beside each other, in millimetres. */
final class InkEdges {
    private final Map<String, Map<String, Double>> between = new HashMap<>();
    private final Map<String, Double> outline = new HashMap<>();
    private double all;

    static InkEdges of(PlanningTable table) {
        InkEdges edges = new InkEdges();
        for (Neighbours pair : table.neighbours()) {
            Optional<Ink> one = table.rows().get(pair.one()).top();
            Optional<Ink> other = table.rows().get(pair.other()).top();
            if (!one.equals(other)) {
                one.ifPresent(ink -> edges.outline.merge(ink.name(), pair.lengthMm(), Double::sum));
                other.ifPresent(ink -> edges.outline.merge(ink.name(), pair.lengthMm(), Double::sum));
            }
            if (one.isPresent() && other.isPresent() && !one.equals(other)) {
                edges.add(one.get().name(), other.get().name(), pair.lengthMm());
                edges.add(other.get().name(), one.get().name(), pair.lengthMm());
                edges.all += pair.lengthMm();
            }
        }
        return edges;
    }

    private void add(String one, String other, double length) {
        between.computeIfAbsent(one, name -> new HashMap<>()).merge(other, length, Double::sum);
    }

    /** Of all edges between two inks. */
    double all() {
        return all;
    }

    double between(Ink one, Ink other) {
        return between.getOrDefault(one.name(), Map.of()).getOrDefault(other.name(), 0.0);
    }

    /** Of an ink with all others. */
    double of(Ink ink) {
        return between.getOrDefault(ink.name(), Map.of()).values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    /** Around all places that show an ink, without the picture's frame. */
    double outline(Ink ink) {
        return outline.getOrDefault(ink.name(), 0.0);
    }
}
