package inkstrata.artwork.svg;

import inkstrata.colour.CssColourNames;
import inkstrata.colour.Rgb;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A colour as CSS Color 4 writes it in sRGB: names, hex, {@code rgb()}, {@code hsl()}, {@code hwb()} and
 * {@code color(srgb …)}.
 *
 * @param rgb rounded to 8 bits
 * @param alpha 0 to 1
 */
record CssColour(Rgb rgb, double alpha) {
    private static final Pattern HEX = Pattern.compile("#(?:[0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8})");

    /** The colour, if the text is one; {@code currentColor} is none of itself. */
    static Optional<CssColour> parse(String css) {
        String text = css.trim().toLowerCase(Locale.ROOT);
        if (text.equals("transparent")) {
            return Optional.of(new CssColour(Rgb.BLACK, 0));
        }
        if (HEX.matcher(text).matches()) {
            return Optional.of(hex(text.substring(1)));
        }
        int bracket = text.indexOf('(');
        if (bracket > 0) {
            String function = text.substring(0, bracket);
            String arguments = CssText.argumentsOf(function, text);
            return arguments == null ? Optional.empty() : function(function, arguments);
        }
        return CssColourNames.named(text).map(rgb -> new CssColour(rgb, 1));
    }

    private static CssColour hex(String digits) {
        StringBuilder full = new StringBuilder();
        for (int i = 0; i < digits.length(); i++) {
            full.append(String.valueOf(digits.charAt(i)).repeat(digits.length() <= 4 ? 2 : 1));
        }
        Rgb rgb = Rgb.of(Integer.parseInt(full.substring(0, 6), 16));
        return new CssColour(rgb, full.length() == 8 ? Integer.parseInt(full.substring(6), 16) / 255.0 : 1);
    }

    private static Optional<CssColour> function(String name, String arguments) {
        try {
            List<String> parts = parts(arguments);
            if (name.equals("color") && !parts.isEmpty() && parts.get(0).equals("srgb")) {
                return Optional.of(srgb(parts.subList(1, parts.size())));
            }
            if (parts.size() != 3 && parts.size() != 4) {
                return Optional.empty();
            }
            double alpha = parts.size() == 4 ? clamp(share(parts.get(3), 1)) : 1;
            return switch (name) {
                case "rgb", "rgba" ->
                    Optional.of(of(
                            share(parts.get(0), 255) / 255,
                            share(parts.get(1), 255) / 255,
                            share(parts.get(2), 255) / 255,
                            alpha));
                case "hsl", "hsla" ->
                    Optional.of(hsl(
                            degrees(parts.get(0)),
                            share(parts.get(1), 100) / 100,
                            share(parts.get(2), 100) / 100,
                            alpha));
                case "hwb" ->
                    Optional.of(hwb(
                            degrees(parts.get(0)),
                            share(parts.get(1), 100) / 100,
                            share(parts.get(2), 100) / 100,
                            alpha));
                default -> Optional.empty();
            };
        } catch (NumberFormatException notNumbers) {
            return Optional.empty();
        }
    }

    /** Comma syntax or blank syntax with the alpha after a slash. */
    private static List<String> parts(String arguments) {
        if (arguments.indexOf(',') >= 0) {
            return CssText.split(arguments, ',');
        }
        List<String> parts = new ArrayList<>();
        List<String> slashed = CssText.split(arguments, '/');
        parts.addAll(CssText.words(slashed.get(0)));
        if (slashed.size() == 2) {
            parts.add(slashed.get(1));
        } else if (slashed.size() > 2) {
            parts.clear();
        }
        return parts;
    }

    private static CssColour srgb(List<String> parts) {
        if (parts.size() < 3 || parts.size() > 4) {
            throw new NumberFormatException("three channels and perhaps an alpha");
        }
        double alpha = parts.size() == 4 ? clamp(share(parts.get(3), 1)) : 1;
        return of(share(parts.get(0), 1), share(parts.get(1), 1), share(parts.get(2), 1), alpha);
    }

    /** A number, or a percentage of {@code whole}; {@code none} is 0. */
    private static double share(String text, double whole) {
        if (text.equals("none")) {
            return 0;
        }
        return text.endsWith("%") ? number(text.substring(0, text.length() - 1)) / 100 * whole : number(text);
    }

    private static double degrees(String text) {
        if (text.equals("none")) {
            return 0;
        }
        String[] units = {"deg", "grad", "rad", "turn"};
        double[] inDegrees = {1, 0.9, 180 / Math.PI, 360};
        for (int i = 0; i < units.length; i++) {
            if (text.endsWith(units[i])) {
                return number(text.substring(0, text.length() - units[i].length())) * inDegrees[i];
            }
        }
        return number(text);
    }

    private static double number(String text) {
        char last = text.isEmpty() ? ' ' : text.charAt(text.length() - 1);
        if (!Character.isDigit(last) && last != '.') {
            throw new NumberFormatException(text);
        }
        return Double.parseDouble(text);
    }

    /** CSS Color 4, section 7.1. */
    private static CssColour hsl(double hue, double saturation, double lightness, double alpha) {
        double s = clamp(saturation);
        double l = clamp(lightness);
        return of(ofHue(hue, 0, s, l), ofHue(hue, 8, s, l), ofHue(hue, 4, s, l), alpha);
    }

    private static double ofHue(double hue, int offset, double s, double l) {
        double turned = hue % 360 < 0 ? hue % 360 + 360 : hue % 360;
        double k = (offset + turned / 30) % 12;
        return l - s * Math.min(l, 1 - l) * Math.max(-1, Math.min(Math.min(k - 3, 9 - k), 1));
    }

    /** CSS Color 4, section 8.1. */
    private static CssColour hwb(double hue, double whiteness, double blackness, double alpha) {
        double white = clamp(whiteness);
        double black = clamp(blackness);
        if (white + black >= 1) {
            double grey = white / (white + black);
            return of(grey, grey, grey, alpha);
        }
        double pure = 1 - white - black;
        return of(
                ofHue(hue, 0, 1, 0.5) * pure + white,
                ofHue(hue, 8, 1, 0.5) * pure + white,
                ofHue(hue, 4, 1, 0.5) * pure + white,
                alpha);
    }

    private static CssColour of(double red, double green, double blue, double alpha) {
        return new CssColour(new Rgb(channel(red), channel(green), channel(blue)), alpha);
    }

    /** Halves go up; a hair is added so that 127.5 stays one in floating point, whichever way it was reached. */
    private static int channel(double value) {
        return (int) Math.floor(clamp(value) * 255 + 0.5 + 1e-9);
    }

    private static double clamp(double value) {
        return Math.max(0, Math.min(1, value));
    }
}
