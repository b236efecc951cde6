package inkstrata.artwork.svg;

import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DrawingsTest {
    /**
     * Where jsvg draws another picture, what differs most, and why ours is right.
     *
     * <ul>
     *   <li>entities-and-classes: jsvg cannot read internal entities (XML 1.0, section 4.4; resvg agrees with us).
     *   <li>evenodd-mix: a visible shape in a hidden group shows (SVG 2, section 11.5; resvg agrees).
     *   <li>layers-and-arrowheads, opacity: a group's opacity holds for the group as a whole (SVG 2, section 3.6; resvg
     *       agrees).
     *   <li>map, switch-css: jsvg stops at {@code @media}, {@code >} and {@code [attribute]} in style sheets.
     *   <li>markers: markerUnits are stroke widths by default (SVG 2, section 13.7.2), and an arc is one segment, with no
     *       vertex within; librsvg draws what we do.
     *   <li>transforms: CSS transform with units and transform-origin (CSS Transforms 1, sections 5 and 8).
     * </ul>
     */
    private static final Map<String, String> JSVG_IS_WRONG = Map.of(
            "entities-and-classes", "cannot be read",
            "evenodd-mix", "#",
            "layers-and-arrowheads", "#8f897c +0.0",
            "opacity", "#86a0ad -0.0",
            "map", "#000000 -0.0",
            "switch-css", "#000000 -1.0",
            "markers", "#bc4749 +0.0",
            "transforms", "#ffffff -0.0");

    @Test
    void drawingsLookAsJsvgDrawsThem() throws IOException {
        Drawings.check(
                name -> width -> VisibleAreas.counted(JsvgPicture.pixels(Drawings.url(name), width)), JSVG_IS_WRONG);
    }
}
