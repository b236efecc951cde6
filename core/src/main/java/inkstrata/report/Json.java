package inkstrata.report;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.Map;

/** Maps as JSON (RFC 8259): indented, keys in the order they were put, numbers without exponents. */
public final class Json {
    /** Stands under {@code format} in all that is written: counted up when a key changes its meaning or goes away. */
    public static final int FORMAT = 1;

    private static final JSON PRETTY = JSON.std
            .with(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")))
            .with(JSON.Feature.PRETTY_PRINT_OUTPUT);

    private Json() {}

    /** One object, without a line feed at its end. */
    public static String text(Map<String, ?> object) {
        try {
            return PRETTY.asString(object);
        } catch (IOException neverOfText) {
            throw new IllegalStateException(neverOfText);
        }
    }

    /**
     * Reads one object.
     *
     * @throws IOException if there is none
     */
    public static Map<String, Object> read(byte[] utf8) throws IOException {
        return JSON.std.mapFrom(utf8);
    }
}
