package inkstrata.command;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/** Results for programs: indented, keys in the order they were put, numbers without exponents. */
final class Json {
    private static final JSON PRETTY = JSON.std
            .with(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")))
            .with(JSON.Feature.PRETTY_PRINT_OUTPUT);

    private Json() {}

    static String of(Map<String, ?> result) throws IOException {
        return PRETTY.asString(result);
    }

    /** Rounded half up, without zeros at the end. */
    static BigDecimal decimal(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
