package inkstrata.artwork.svg;

import inkstrata.measure.LengthUnit;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * Lengths in attributes, in user units (CSS Values and Units 4; SVG 2, section 8.9).
 *
 * @param element whose font size {@code em} refers to
 * @param viewport what percentages refer to
 */
record Lengths(Element element, Viewport viewport) {
    private static final Pattern LENGTH =
            Pattern.compile("\\s*([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*([A-Za-z]*|%)\\s*");

    /** Across: x, width, cx. */
    double across(String attribute, double otherwise) {
        return attribute(attribute, viewport.width()).orElse(otherwise);
    }

    /** Down: y, height, cy. */
    double down(String attribute, double otherwise) {
        return attribute(attribute, viewport.height()).orElse(otherwise);
    }

    /** Neither: r, stroke widths. */
    double either(String attribute, double otherwise) {
        return attribute(attribute, viewport.diagonal()).orElse(otherwise);
    }

    /** Empty if the attribute is missing, {@code auto} or no length. */
    OptionalDouble attribute(String name, double hundredPercent) {
        return parse(element.getAttributeNS(null, name), hundredPercent);
    }

    /** Empty if the text is no length. */
    OptionalDouble parse(String text, double hundredPercent) {
        Matcher matcher = LENGTH.matcher(text);
        if (!matcher.matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(matcher.group(1));
        String unit = matcher.group(2);
        double inUnits = switch (unit) {
            case "" -> number;
            case "%" -> number / 100 * hundredPercent;
            case "em", "EM" -> number * Style.fontSize(element);
            case "rem" -> number * Style.fontSize(element.getOwnerDocument().getDocumentElement());
            case "ex", "EX", "ch" -> number * Style.fontSize(element) / 2;
            default ->
                number
                        * LengthUnit.named(unit).map(LengthUnit::millimetres).orElse(Double.NaN)
                        / LengthUnit.PX.millimetres();
        };
        return Double.isFinite(inUnits) ? OptionalDouble.of(inUnits) : OptionalDouble.empty();
    }
}
