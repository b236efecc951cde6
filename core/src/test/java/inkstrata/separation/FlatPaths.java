package inkstrata.separation;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.parser.AWTPathProducer;

/**
 * The curves of a film as chords, cut by the JDK within a few micrometres: where Java draws without grey edges it follows a
 * curve to a pixel only.
 */
final class FlatPaths {
    private static final double FLATNESS_MM = 0.002;
    private static final Pattern DATA = Pattern.compile(" d=\"([^\"]*[CQ][^\"]*)\"");

    private FlatPaths() {}

    static byte[] of(byte[] svg) {
        return DATA.matcher(new String(svg, UTF_8))
                .replaceAll(data -> Matcher.quoteReplacement(" d=\"" + chords(data.group(1)) + "\""))
                .getBytes(UTF_8);
    }

    private static String chords(String data) {
        try {
            Shape shape = AWTPathProducer.createShape(new StringReader(data), PathIterator.WIND_NON_ZERO);
            StringBuilder text = new StringBuilder();
            float[] to = new float[6];
            for (PathIterator at = shape.getPathIterator(null, FLATNESS_MM); !at.isDone(); at.next()) {
                switch (at.currentSegment(to)) {
                    case PathIterator.SEG_MOVETO ->
                        text.append('M').append(to[0]).append(' ').append(to[1]);
                    case PathIterator.SEG_LINETO ->
                        text.append('L').append(to[0]).append(' ').append(to[1]);
                    default -> text.append('Z');
                }
            }
            return text.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
