package inkstrata.artwork;

import java.util.List;

/**
 * Where in the file something came from.
 *
 * @param element tag name without prefix, for example {@code path}
 * @param id the element's id, or empty
 * @param line in the file, from 1; 0 if unknown
 * @param layers the elements around it that have a name, outermost first, and itself if it has one
 */
public record Source(String element, String id, int line, List<Layer> layers) {
    public static final Source UNKNOWN = new Source("", "", 0, List.of());

    public Source {
        layers = List.copyOf(layers);
    }

    /** For messages: {@code <path id="petal-3">}; empty where nothing is known. */
    @Override
    public String toString() {
        if (element.isEmpty()) {
            return "";
        }
        return id.isEmpty() ? "<" + element + ">" : "<" + element + " id=\"" + id + "\">";
    }
}
