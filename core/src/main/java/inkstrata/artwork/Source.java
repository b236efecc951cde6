package inkstrata.artwork;

import java.util.List;

/**
 * Where in the file something came from.
 *
 * @param element tag name without prefix, for example {@code path}
 * @param id the element's id, or empty
 * @param line in the file, from 1; 0 if unknown
 * @param groups ids of the elements around it that have one, outermost first
 */
public record Source(String element, String id, int line, List<String> groups) {
    public static final Source UNKNOWN = new Source("", "", 0, List.of());

    public Source {
        groups = List.copyOf(groups);
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
