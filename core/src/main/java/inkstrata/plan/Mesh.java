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
    private static final double CLOTH_IN_THREADS = 1.6;
    private static final double TRANSFER = 0.7;
    private static final double SOLIDS = 0.35;

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

    /**
     * About how thick one dry film of water-based ink is, in micrometres: the cloth's theoretical ink volume (open area by
     * thickness of the cloth), of which a part reaches the sheet and a part of that stays when it is dry.
     *
     * <p>Open area is (opening / pitch)² (geometry). That cloth is 1.6 threads thick, that 0.7 of its volume reaches the sheet and that 0.35 of
     * it are solids: common practice, no source.
     */
    public double dryFilmMicrometres() {
        double pitch = 10_000.0 / threadsPerCm;
        double open = (pitch - threadMicrometres) / pitch;
        return open * open * CLOTH_IN_THREADS * threadMicrometres * TRANSFER * SOLIDS;
    }

    @Override
    public String toString() {
        return threadsPerCm + "-" + threadMicrometres;
    }
}
