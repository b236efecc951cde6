package inkstrata.job;

import java.util.List;

/**
 * The order of inks a job asks for.
 *
 * @param names in print order, {@code ...} standing for the rest; empty means light to dark, on the back of a sheet dark to light
 * @param line of the job file, for messages; 0 if it says nothing
 */
public record AskedOrder(List<String> names, int line) {
    public static final AskedOrder NONE = new AskedOrder(List.of(), 0);

    public AskedOrder {
        names = List.copyOf(names);
    }
}
