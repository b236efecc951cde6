package inkstrata.artwork.svg;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;

/** Writes what was decided into each element's {@code style}, so that Batik meets no style sheet. */
final class StyleWriting {
    private final Notes notes;

    /** Styles by what they say: most elements of a large drawing say the same. */
    private final Map<String, String> shared = new HashMap<>();

    StyleWriting(Notes notes) {
        this.notes = notes;
    }

    /**
     * Writes them.
     *
     * @param root is marked if any colour is translucent
     */
    void write(Element root, List<Styled> results) {
        boolean translucentColours = false;
        for (Styled styled : results) {
            for (Mended mended : styled.properties().values()) {
                boolean solid = mended.alpha().isEmpty()
                        || mended.alpha().equals("1")
                        || mended.alpha().equals("currentColor");
                translucentColours |= !solid;
            }
        }
        if (translucentColours) {
            root.setAttributeNS(Elements.OWN, "inkstrata:" + ColourAlpha.ANY, "yes");
        }
        for (Styled styled : results) {
            write(styled.element(), styled.properties(), translucentColours);
        }
    }

    private void write(Element element, Map<String, Mended> properties, boolean translucentColours) {
        StringBuilder style = new StringBuilder();
        multiplyStopAlpha(properties);
        properties.forEach((property, mended) -> {
            if (!mended.note().isEmpty()) {
                notes.warning(Elements.source(element), mended.note());
            }
            String value = mended.value();
            if (ValueMending.AS_ATTRIBUTES.contains(property) || GeometryProperties.has(property)) {
                setOrRemove(element, property, value);
            } else if (!value.isEmpty()) {
                style.append(style.length() == 0 ? "" : ";")
                        .append(property)
                        .append(':')
                        .append(value);
            }
            if (translucentColours && !mended.alpha().isEmpty() && ColourAlpha.PROPERTIES.contains(property)) {
                element.setAttributeNS(Elements.OWN, "inkstrata:" + property + "-alpha", mended.alpha());
            }
        });
        String written = style.toString();
        setOrRemove(element, "style", shared.computeIfAbsent(written, same -> same));
    }

    private static void multiplyStopAlpha(Map<String, Mended> properties) {
        Mended colour = properties.get("stop-color");
        if (colour != null
                && colour.alpha().matches("[\\d.E-]+")
                && !colour.alpha().equals("1")) {
            Mended opacity = properties.getOrDefault("stop-opacity", Mended.plain("1"));
            if (!opacity.value().equals("inherit")) {
                double product = Double.parseDouble(colour.alpha()) * Double.parseDouble(opacity.value());
                properties.put("stop-opacity", Mended.plain(Double.toString(product)));
            }
        }
    }

    private static void setOrRemove(Element element, String name, String value) {
        if (value.isEmpty() || (value.equals("none") && name.equals("transform"))) {
            element.removeAttributeNS(null, name);
        } else {
            element.setAttributeNS(null, name, value);
        }
    }
}
