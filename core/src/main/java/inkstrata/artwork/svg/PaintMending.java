package inkstrata.artwork.svg;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rewrites colours and paints as {@code #rrggbb}, with their alpha apart. */
final class PaintMending {
    private static final Pattern ICC = Pattern.compile("(?i)\\s+(?:icc-color|device-cmyk)\\(.*\\)\\s*$");
    private static final Pattern URL =
            Pattern.compile("(?i)(url\\((?:\"[^\"]*\"|'[^']*'|[^)]*)\\))(.*)", Pattern.DOTALL);

    private final String property;
    private final LocalReferences references;

    /**
     * Mends the values of one property.
     *
     * @param property {@code fill} or {@code stroke}
     */
    PaintMending(String property, LocalReferences references) {
        this.property = property;
        this.references = references;
    }

    /** A value of {@code color}, {@code stop-color} and their kind; empty if it is no colour. */
    static Optional<Mended> colour(String value) {
        String text = ICC.matcher(value).replaceFirst("").trim();
        if (text.equalsIgnoreCase("currentcolor")) {
            return Optional.of(new Mended("currentColor", "currentColor", ""));
        }
        return CssColour.parse(text).map(colour -> Mended.colour(colour.rgb().hex(), colour.alpha()));
    }

    /** A value of {@code fill} or {@code stroke}; empty if it is no paint. */
    Optional<Mended> paint(String value) {
        String text = value.trim();
        String small = text.toLowerCase(Locale.ROOT);
        if (small.equals("none")) {
            return Optional.of(Mended.colour(small, 1));
        }
        if (small.equals(ContextPaints.FILL) || small.equals(ContextPaints.STROKE)) {
            String id = references.standIn("pattern", ContextPaints.STAND_IN + small);
            return Optional.of(Mended.colour("url(#" + id + ")", 1));
        }
        Matcher url = URL.matcher(text);
        if (!url.matches()) {
            return colour(text).map(colour -> "0.0".equals(colour.alpha()) ? Mended.colour("none", 1) : colour);
        }
        String fallback = url.group(2).trim();
        String fault = references.fault(property, url.group(1));
        Optional<Mended> instead = fallback.isEmpty() ? Optional.of(Mended.colour("none", 1)) : paint(fallback);
        if (fault != null) {
            String used = fallback.isEmpty() ? "; nothing is painted there" : "; " + fallback + " was used instead";
            return instead.map(mended -> mended.saying(fault + used));
        }
        return instead.map(mended -> Mended.colour(url.group(1), 1));
    }
}
