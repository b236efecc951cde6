package inkstrata.shop;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Layer;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The layers of an artwork in which something shows, by the names that a job may give them: id, label, title.
 *
 * @param artwork the name of its file
 * @param layers each once
 * @param outer for each of these, by its number, the layers around it
 * @param job for messages
 */
record NamedLayers(String artwork, List<Layer> layers, Map<Integer, List<Layer>> outer, Job job) {
    private static final int MOST_SAID = 20;

    static NamedLayers of(Artwork artwork, Job job) {
        Map<Integer, Layer> layers = new LinkedHashMap<>();
        Map<Integer, List<Layer>> outer = new LinkedHashMap<>();
        for (FlatShape shape : artwork.shapes()) {
            List<Layer> chain = shape.source().layers();
            for (int at = 0; at < chain.size() && shape.drawing().isEmpty(); at++) {
                List<Layer> around = chain.subList(0, at);
                int number = chain.get(at).number();
                layers.putIfAbsent(number, chain.get(at));
                outer.merge(number, around, NamedLayers::inBoth);
            }
        }
        return new NamedLayers(artwork.name(), List.copyOf(layers.values()), outer, job);
    }

    /** What is used in several places lies only in what is around all of them. */
    private static List<Layer> inBoth(List<Layer> one, List<Layer> other) {
        return one.equals(other) ? one : one.stream().filter(other::contains).toList();
    }

    /**
     * The layer that a job means.
     *
     * @param asked {@code #} and a name; of layers in each other that have the same name the outermost
     * @throws JobException if there is none, or several
     */
    Layer find(String asked) {
        String name = Layer.plain(asked.substring(1));
        List<Layer> called =
                layers.stream().filter(layer -> layer.isCalled(name)).toList();
        List<Layer> found = called.stream()
                .filter(layer -> outer.get(layer.number()).stream().noneMatch(called::contains))
                .toList();
        if (found.isEmpty()) {
            throw new JobException(job.file(), 0, missing(asked));
        }
        if (found.size() > 1) {
            throw new JobException(
                    job.file(),
                    0,
                    "'" + asked + "': " + artwork + " has " + (found.size() == 2 ? "two" : found.size())
                            + " elements of that name, "
                            + said(found.stream().map(Layer::toString).toList(), " and ")
                            + ". Rename all but one, or put them into one group and name that.");
        }
        return found.get(0);
    }

    private String missing(String asked) {
        List<String> known = new ArrayList<>(new TreeSet<>(layers.stream()
                .map(layer -> "#"
                        + Optional.of(layer.id())
                                .filter(id -> !id.isEmpty())
                                .orElseGet(() -> layer.names().get(0))
                        + (layer.id().isEmpty() || layer.names().isEmpty()
                                ? ""
                                : " (" + layer.names().get(0) + ")"))
                .collect(Collectors.toSet())));
        return "'" + asked + "': no element of " + artwork + " that shows has that id, label or title. "
                + (known.isEmpty()
                        ? "None has one: name the layer or group in your drawing program."
                        : "There are " + said(known, ", ") + ".");
    }

    private static String said(List<String> all, String between) {
        return String.join(between, all.subList(0, Math.min(MOST_SAID, all.size())))
                + (all.size() > MOST_SAID ? " and " + (all.size() - MOST_SAID) + " more" : "");
    }
}
