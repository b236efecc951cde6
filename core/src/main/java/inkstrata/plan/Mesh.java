package inkstrata.plan;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A screen's cloth, named by its threads, for example 77-48.
 *
 * @param threadsPerCm 1 to 300
 * @param threadMicrometres diameter of a thread, thinner than the pitch
 */
public record Mesh(int threadsPerCm, int threadMicrometres) {
    private static final Pattern NAME = Pattern.compile("\\s*(\\d{1,3})-(\\d{1,3})\\s*");

    public Mesh {
        if (threadsPerCm < 1 || threadsPerCm > 300 || threadMicrometres < 1) {
            throw new IllegalArgumentException(
                    "mesh " + threadsPerCm + "-" + threadMicrometres + " is not a cloth: 1 to 300 threads per cm");
        }
        if (threadsPerCm * threadMicrometres >= 10_000) {
            throw new IllegalArgumentException(
                    "mesh " + threadsPerCm + "-" + threadMicrometres + " has no openings: the threads fill the pitch");
        }
    }

    /**
     * Reads threads per cm and thread diameter in micrometres, joined by a hyphen.
     *
     * @throws IllegalArgumentException if it is written in another way
     */
    public static Mesh parse(String name) {
        Matcher matcher = NAME.matcher(name);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("'" + name
                    + "' is not a mesh. Write threads per cm and thread diameter in micrometres, for example 77-48.");
        }
        return new Mesh(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }

    @Override
    public String toString() {
        return threadsPerCm + "-" + threadMicrometres;
    }
}
