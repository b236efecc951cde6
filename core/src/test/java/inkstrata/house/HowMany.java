package inkstrata.house;

/**
 * How many generated or borrowed drawings a law is tried on.
 *
 * <p>{@code mvn -B verify -Dtest.jvm.options="-Xmx2g -XX:+UseSerialGC -Dlaws.times=10"} tries each law on ten times as many as the build does.
 */
public final class HowMany {
    private static final int TIMES = Integer.getInteger("laws.times", 1);

    private HowMany() {}

    /** As many as the build has time for, or as many times that as was asked for. */
    public static int of(int inTheBuild) {
        return inTheBuild * TIMES;
    }
}
