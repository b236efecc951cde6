package inkstrata.artwork;

import java.util.List;

/**
 * An element by whose name a job can ask for all that is in it: a layer, a group, or a single shape.
 *
 * @param element tag name without prefix, for example {@code g}
 * @param id its id, or empty
 * @param names what drawing programs call it in their lists of layers, without outer blanks, none empty
 * @param line in the file, from 1; 0 if unknown
 * @param number tells it from all others of the file; copies of it by reference have the same
 */
public record Layer(String element, String id, List<String> names, int line, int number) {
    public Layer {
        names = List.copyOf(names);
    }

    /** Whether a job that writes this means it. */
    public boolean isCalled(String name) {
        return !name.isEmpty() && (id.equals(name) || names.contains(name));
    }

    /** A name as it is compared: without outer blanks, each row of blanks inside is one. */
    public static String plain(String name) {
        return name.strip().replaceAll("\\s+", " ");
    }

    /** For messages: {@code <g id="layer1"> "Sun" in line 12}. */
    @Override
    public String toString() {
        return "<" + element + (id.isEmpty() ? "" : " id=\"" + id + "\"") + ">"
                + (names.isEmpty() ? "" : " \"" + String.join("\", \"", names) + "\"")
                + (line > 0 ? " in line " + line : "");
    }
}
