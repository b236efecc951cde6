package inkstrata.artwork.svg;

import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.Source;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.LengthUnit;
import inkstrata.measure.Place;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * How large the picture is on the sheet, in millimetres.
 *
 * <p>A width said by the person at the counter wins; then width and height of the root element in units; then, in user
 * units, width and height or the size of the viewBox. A user unit is a CSS px (CSS Values 4, section 6.2) unless the
 * person says how many make an inch; a px written out counts as a user unit too, as SVG 1.1 has it.
 */
final class TrueSize {
    private static final Pattern LENGTH =
            Pattern.compile("\\s*([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*([A-Za-z]+|%)?\\s*");
    /** In px, at the font size that a browser starts with. */
    private static final Map<String, Double> FONT_UNITS = Map.of("em", 16.0, "rem", 16.0, "ex", 8.0, "ch", 8.0);

    private final String fileName;
    private final Element root;
    private final ReadOptions options;
    private final Notes notes;
    private final Source source;
    private boolean inUserUnits;

    private TrueSize(String fileName, Element root, ReadOptions options, Notes notes) {
        this.fileName = fileName;
        this.root = root;
        this.options = options;
        this.notes = notes;
        this.source = Elements.source(root);
    }

    /**
     * The picture's frame, its top left corner at the origin.
     *
     * @throws ArtworkException if nothing says a size, or the size does not fit on any sheet
     */
    static Frame of(String fileName, Element root, ReadOptions options, Notes notes) {
        return new TrueSize(fileName, root, options, notes).frame();
    }

    /** Where the viewBox starts, at the scale that gives it the frame's width; 0, 0 without one. */
    static Place origin(Element root, Frame frame) {
        String[] parts = root.getAttributeNS(null, "viewBox").trim().split("[\\s,]+", 5);
        if (parts.length != 4) {
            return new Place(0, 0);
        }
        double scale = frame.width() / Double.parseDouble(parts[2]);
        return new Place(Double.parseDouble(parts[0]) * scale, Double.parseDouble(parts[1]) * scale);
    }

    private Frame frame() {
        Optional<double[]> box = viewBox();
        OptionalDouble width = side("width");
        OptionalDouble height = side("height");
        double ratio = box.map(b -> b[1] / b[0]).orElse(Double.NaN);
        if (width.isEmpty() && height.isEmpty() && box.isPresent()) {
            inUserUnits = true;
            width = OptionalDouble.of(box.get()[0] * userUnit());
            height = OptionalDouble.of(box.get()[1] * userUnit());
        } else if (width.isEmpty() && height.isPresent()) {
            width = OptionalDouble.of(height.getAsDouble() / ratio);
        } else if (height.isEmpty() && width.isPresent()) {
            height = OptionalDouble.of(width.getAsDouble() * ratio);
        }
        if (width.isEmpty() || height.isEmpty() || Double.isNaN(width.getAsDouble() + height.getAsDouble())) {
            throw new ArtworkException(
                    fileName,
                    source,
                    "the file does not say how large the picture is.",
                    "Write width and height in mm on <svg>, or a viewBox.");
        }
        double scale = options.widthMm().isPresent() ? options.widthMm().getAsDouble() / width.getAsDouble() : 1;
        return checked(width.getAsDouble() * scale, height.getAsDouble() * scale);
    }

    private Frame checked(double width, double height) {
        String size = String.format(Locale.ROOT, "%.2f x %.2f mm", width, height);
        double most = Grid.LIMIT * Grid.STEP_MM;
        if (!(width < most && height < most)) {
            throw new ArtworkException(
                    fileName,
                    source,
                    "the picture would be " + size + "; a sheet ends at " + Math.round(most) + " mm.",
                    "Write width and height in mm on <svg>, or give the true width with --width.");
        }
        if (!(width >= Grid.STEP_MM && height >= Grid.STEP_MM)) {
            throw new ArtworkException(
                    fileName,
                    source,
                    "the picture would be " + size + ", which is nothing to print.",
                    "Write width and height in mm on <svg>, or give the true width with --width.");
        }
        if (inUserUnits && options.widthMm().isEmpty() && options.unitsPerInch().isEmpty()) {
            notes.warning(
                    source,
                    "the drawing does not say how large it is in mm or inches: its numbers were read as px, 96 to the inch, and the"
                            + " picture prints " + size + ". If that is wrong, give --width or --units-per-inch.");
        }
        return new Frame(0, 0, width, height);
    }

    private OptionalDouble side(String name) {
        String text = root.getAttributeNS(null, name);
        Matcher matcher = LENGTH.matcher(text);
        if (text.isBlank() || text.trim().equals("auto")) {
            return OptionalDouble.empty();
        }
        if (!matcher.matches()) {
            notes.warning(source, name + " '" + text + "' is not a length and was left out");
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(matcher.group(1));
        String unit = matcher.group(2) == null ? "px" : matcher.group(2).toLowerCase(Locale.ROOT);
        if (unit.equals("%")) {
            if (number != 100) {
                notes.info(source, name + " '" + text + "' says nothing about a sheet and was left out");
            }
            return OptionalDouble.empty();
        }
        if (!(number > 0)) {
            notes.warning(source, name + " '" + text + "' is not more than 0 and was left out");
            return OptionalDouble.empty();
        }
        OptionalDouble millimetres = millimetres(unit);
        if (millimetres.isEmpty()) {
            notes.warning(source, name + " '" + text + "' has a unit that is not known here and was left out");
            return OptionalDouble.empty();
        }
        if (FONT_UNITS.containsKey(unit)) {
            // So that whoever reads it later, when the root element has its font size, comes to the same.
            root.setAttributeNS(null, name, Double.toString(number * FONT_UNITS.get(unit)));
            notes.info(source, name + " '" + text + "' was read with a font size of 16 px");
        }
        return OptionalDouble.of(number * millimetres.getAsDouble());
    }

    private OptionalDouble millimetres(String unit) {
        double pixels = unit.equals("px") ? 1 : FONT_UNITS.getOrDefault(unit, 0.0);
        if (pixels > 0) {
            inUserUnits = true;
            return OptionalDouble.of(pixels * userUnit());
        }
        Optional<LengthUnit> absolute = LengthUnit.named(unit);
        return absolute.isPresent() ? OptionalDouble.of(absolute.get().millimetres()) : OptionalDouble.empty();
    }

    private double userUnit() {
        return options.unitsPerInch().isPresent()
                ? LengthUnit.IN.millimetres() / options.unitsPerInch().getAsDouble()
                : LengthUnit.PX.millimetres();
    }

    /** Width and height of the viewBox, if it has both and they are more than 0. */
    private Optional<double[]> viewBox() {
        String text = root.getAttributeNS(null, "viewBox").trim();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String[] parts = text.split("[\\s,]+", 5);
        try {
            double width = Double.parseDouble(parts[2]);
            double height = Double.parseDouble(parts[3]);
            double corner = Double.parseDouble(parts[0]) + Double.parseDouble(parts[1]);
            if (parts.length == 4 && width > 0 && height > 0 && Double.isFinite(width + height + corner)) {
                return Optional.of(new double[] {width, height});
            }
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException notFourNumbers) {
            // said below, together with numbers that are no size
        }
        notes.warning(source, "viewBox '" + text + "' is not four numbers with a size above 0 and was left out");
        root.removeAttributeNS(null, "viewBox");
        return Optional.empty();
    }
}
