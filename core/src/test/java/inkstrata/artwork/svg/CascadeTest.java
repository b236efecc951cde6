package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Note;
import inkstrata.measure.Frame;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class CascadeTest {
    private final Notes notes = new Notes();

    private SVGOMDocument read(String content) {
        String text = "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='10mm'"
                + " height='10mm'>" + content + "</svg>";
        return SafeDocument.read("test.svg", text.getBytes(StandardCharsets.UTF_8), ReadOptions.DEFAULT, notes)
                .document();
    }

    private static String style(SVGOMDocument document, String id) {
        return document.getElementById(id).getAttributeNS(null, "style");
    }

    /** What an element p is filled with when a sheet and p's attributes are these. */
    private String fill(String sheet, String attributes) {
        SVGOMDocument document = read("<style>" + sheet + "</style><g id='g' class='frame'><rect/>"
                + "<path id='p' data-ink='dark sand' class='a b' " + attributes + "/><path id='q'/></g>");
        return style(document, "p");
    }

    private List<String> said() {
        return notes.list().stream().map(Note::text).toList();
    }

    /** Specificity and order after Selectors 4, section 17, and CSS Cascade 4, section 6. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "path{fill:#010101} | fill='#020202' | #010101",
                "*{fill:#010101} | fill='#020202' | #010101",
                ".a{fill:#010101} path{fill:#020202} | | #010101",
                "path.a{fill:#010101} .b{fill:#020202} | | #010101",
                ".a.b{fill:#010101} #p{fill:#020202} | | #020202",
                ".a{fill:#010101} .b{fill:#020202} | | #020202",
                "#p{fill:#010101} | style='fill:#020202' | #020202",
                "#p{fill:#010101 !important} | style='fill:#020202' | #010101",
                "#p{fill:#010101!important} | style='fill:#020202 ! IMPORTANT' | #020202",
                ".a{fill:#010101!important} #p{fill:#020202} | | #010101",
                ":where(#p){fill:#010101} path{fill:#020202} | | #020202",
                ":is(#p,rect){fill:#010101} .a{fill:#020202} | | #010101"
            })
    void theWeightierDeclarationHolds(String sheet, String attributes, String fill) {
        assertThat(fill(sheet, attributes == null ? "" : attributes)).isEqualTo("fill:" + fill);
    }

    /** Selectors that hold for the second child of a group, a path of classes a and b. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "path",
                "svg path",
                "svg > g > path",
                "rect + path",
                "rect ~ path",
                "g:not(.x) > path",
                "path:nth-child(2)",
                "path:nth-child(2n)",
                "path:nth-child(even)",
                "path:nth-child(-n+2)",
                "path:nth-last-child(2)",
                "path:first-of-type",
                "path:not(:last-of-type)",
                "path:not(:first-child)",
                "path:empty",
                ".frame .b",
                "[data-ink]",
                "[data-ink='dark sand']",
                "[data-ink~=sand]",
                "[data-ink^=dark]",
                "[data-ink$=\"and\"]",
                "[data-ink*='k s']",
                "[DATA-x], path",
                "[data-ink='DARK SAND' i]",
                ".\\61",
                "svg|path",
                "*|path",
                ":root path",
                "g\n>path",
                "path:not(rect, .c)",
                "path:nth-of-type(1)",
                "path/**/"
            })
    void selectorsThatHold(String selector) {
        assertThat(fill(selector + "{fill:#010101}", "")).isEqualTo("fill:#010101");
        assertThat(said()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rect",
                "svg > path",
                "path + path",
                "path:first-child",
                "path:nth-child(odd)",
                "path:nth-child(3)",
                "path:nth-child(n+3)",
                "path:last-child",
                "path:only-child",
                "path:not(.a)",
                "path:hover",
                "path::before",
                ".A",
                "[data-ink=dark]",
                "[data-ink|=dark]",
                "g ~ path",
                ":root",
                "path:first-line::after",
                "a:link"
            })
    void selectorsThatDoNotHold(String selector) {
        assertThat(fill(selector + "{fill:#010101}", "")).isEmpty();
    }

    @Test
    void aSelectorNobodyKnowsDropsItsRuleAloneAndSaysSo() {
        assertThat(fill("path, path:sparkling{fill:#010101} path{fill:#020202}", ""))
                .isEqualTo("fill:#020202");
        assertThat(said())
                .containsExactly("the selector 'path, path:sparkling' is not understood; its rule was left out");
    }

    @Test
    void aValueThatMeansNothingLeavesTheOneBefore() {
        assertThat(fill("#p{fill:#010101;fill:lab(50% 0 0)}", "")).isEqualTo("fill:#010101");
        assertThat(said()).containsExactly("fill 'lab(50% 0 0)' is not understood and was left out");
    }

    @Test
    void customPropertiesAreInheritedAndHaveFallbacks() {
        assertThat(fill(":root{--ink:#010101} path{fill:var(--ink)}", "")).isEqualTo("fill:#010101");
        assertThat(fill(":root{--a:var(--b);--b:#010101} g{--b:#020202} path{fill:var(--a)}", ""))
                .isEqualTo("fill:#020202");
        assertThat(fill("path{fill:var(--none, var(--either, #030303))}", "")).isEqualTo("fill:#030303");
        assertThat(said()).isEmpty();
    }

    @Test
    void customPropertiesInARingOrWithoutAValueAreSaid() {
        assertThat(fill(":root{--a:var(--b);--b:var(--a)} #p{fill:var(--a)}", ""))
                .isEmpty();
        StringBuilder bomb = new StringBuilder(":root{--p0:xxxxxxxxxx;");
        for (int i = 1; i < 18; i++) {
            bomb.append("--p")
                    .append(i)
                    .append(':')
                    .append(("var(--p" + (i - 1) + ")").repeat(10))
                    .append(';');
        }
        assertThat(fill(bomb + "} #p{fill:var(--p17)}", "")).isEmpty();
        assertThat(said()).hasSize(2).allMatch(text -> text.endsWith("is not understood and was left out"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "opacity='50%' | opacity:0.5",
                "fill-opacity='150%' | fill-opacity:1",
                "fill='RED' | fill:#ff0000",
                "fill='transparent' | fill:none",
                "fill='#CD853F icc-color(acme, 0.11, 0.48, 0.83, 0.00)' | fill:#cd853f",
                "fill='currentColor' | fill:currentColor",
                "fill='inherit' | fill:inherit",
                "style='stroke:initial' | stroke:none",
                "style='fill:unset' | fill:inherit",
                "style='opacity:unset' | opacity:1",
                "display='flex' | display:inline",
                "style='stroke-width:2rem' | stroke-width:32px",
                "style='stroke-width:4q' | stroke-width:1mm",
                "stroke-width='5e-1' | stroke-width:0.5",
                "stroke-dasharray='1e1,.2E+1 3' | stroke-dasharray:10,2 3",
                "font-family='\"2e3\", x1e4' | font-family:\"2e3\", x1e4",
                "stroke-linejoin='arcs' | stroke-linejoin:miter",
                "font-weight='450' | font-weight:500",
                "fill='url(#none) #f00' | fill:#ff0000",
                "fill='url(#none)' | fill:none",
                "clip-path='url(\"#none\")' | clip-path:none",
                "mask='url(other.svg#m)' | mask:none",
                "stroke='url(http://there.invalid/x#y)' | stroke:none"
            })
    void valuesAreRewrittenForBatik(String attribute, String style) {
        assertThat(fill("", attribute)).isEqualTo(style);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stroke-width='-2'",
                "stroke-dasharray='4 -2'",
                "fill='bogus'",
                "opacity='much'",
                "stroke-linecap='pointed'",
                "style='stroke-width:calc(1px + 2px)'",
                "fill-rule='both'",
                "font-size='-3'"
            })
    void valuesThatMeanNothingAreSaid(String attribute) {
        assertThat(fill("", attribute)).isEmpty();
        assertThat(said()).singleElement().asString().endsWith("is not understood and was left out");
    }

    @Test
    void propertiesBatikDoesNotKnowBecomeAttributes() {
        SVGOMDocument document = read("<style>.t{transform:rotate(45deg);paint-order:stroke;mix-blend-mode:multiply;"
                + "transform-origin:50% 50%;vector-effect:non-scaling-stroke;width:4px}</style>"
                + "<rect id='p' class='t' transform='scale(2)' width='3'/><g id='n' transform='scale(3)'"
                + " style='transform:none'/>");
        Element p = document.getElementById("p");
        assertThat(p.getAttributeNS(null, "transform")).isEqualTo("rotate(45deg)");
        assertThat(p.getAttributeNS(null, "paint-order")).isEqualTo("stroke");
        assertThat(p.getAttributeNS(null, "mix-blend-mode")).isEqualTo("multiply");
        assertThat(p.getAttributeNS(null, "vector-effect")).isEqualTo("non-scaling-stroke");
        assertThat(p.getAttributeNS(null, "width")).isEqualTo("4px");
        assertThat(document.getElementById("n").hasAttributeNS(null, "transform"))
                .isFalse();
    }

    @Test
    void markerStandsForAllThree() {
        SVGOMDocument document = read("<marker id='m'/><path id='p' style='marker:url(#m);marker-end:none'/>");
        assertThat(style(document, "p")).isEqualTo("marker-start:url(#m);marker-mid:url(#m);marker-end:none");
    }

    @Test
    void alphaOfColoursIsInheritedWithTheColour() {
        SVGOMDocument document = read("<g fill='rgb(255 0 0 / 50%)' color='#0000ff40' stroke='#12345680'>"
                + "<path id='a'/><path id='b' fill='red'/><path id='c' fill='currentColor'/>"
                + "<path id='d' fill='hsla(0,0%,0%,.25)' fill-opacity='.5'/><path id='e' color='red' stroke='currentColor'/>"
                + "</g><path id='f'/>");
        assertThat(ColourAlpha.of(document.getElementById("a"), "fill")).isEqualTo(0.5);
        assertThat(ColourAlpha.of(document.getElementById("b"), "fill")).isEqualTo(1);
        assertThat(ColourAlpha.of(document.getElementById("c"), "fill")).isCloseTo(64 / 255.0, within(1e-12));
        assertThat(ColourAlpha.of(document.getElementById("d"), "fill")).isEqualTo(0.25);
        assertThat(ColourAlpha.of(document.getElementById("a"), "stroke")).isCloseTo(128 / 255.0, within(1e-12));
        assertThat(ColourAlpha.of(document.getElementById("e"), "stroke")).isEqualTo(1);
        assertThat(ColourAlpha.of(document.getElementById("f"), "fill")).isEqualTo(1);
    }

    @Test
    void alphaOfAStopIsMultipliedIntoItsOpacity() {
        SVGOMDocument document =
                read("<linearGradient><stop id='p' stop-color='#ff000080' stop-opacity='50%'/>" + "</linearGradient>");
        assertThat(style(document, "p")).startsWith("stop-color:#ff0000;stop-opacity:0.25");
    }

    /** Which property sets geometry where: SVG 2, sections 8 and 9.3.1. */
    @Test
    void sheetsSetGeometryWhereItBelongs() {
        SVGOMDocument document = read("<style>*{width:4px;r:3px;d:path('M1 2h3')}</style><rect id='a'/><circle id='b'/>"
                + "<path id='c' d='M0 0'/><text id='d'/><path id='e' d='M0 0' style='d:none'/>");
        assertThat(document.getElementById("a").getAttributeNS(null, "width")).isEqualTo("4px");
        assertThat(document.getElementById("a").hasAttributeNS(null, "r")).isFalse();
        assertThat(document.getElementById("b").getAttributeNS(null, "r")).isEqualTo("3px");
        assertThat(document.getElementById("c").getAttributeNS(null, "d")).isEqualTo("M1 2h3");
        assertThat(document.getElementById("d").hasAttributeNS(null, "width")).isFalse();
        assertThat(document.getElementById("e").hasAttributeNS(null, "d")).isFalse();
    }

    @Test
    void theRootTakesASizeFromStyleButNoPartOfTheScreen() {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='20mm' viewBox='0 0 1 2' style='";
        assertThat(frameOf(svg + "width:100%;height:auto'/>")).isEqualTo(new Frame(0, 0, 10, 20));
        assertThat(frameOf(svg + "width:30mm;height:60mm'/>")).isEqualTo(new Frame(0, 0, 30, 60));
    }

    private Frame frameOf(String text) {
        return SafeDocument.read("test.svg", text.getBytes(StandardCharsets.UTF_8), ReadOptions.DEFAULT, notes)
                .frame();
    }

    @Test
    void sheetsLeaveAndWhatTheyCouldNotDoIsSaid() {
        SVGOMDocument document = read("<style media='print'>path{fill:red}</style><style type='text/less'>x</style>"
                + "<style><![CDATA[<!-- @charset 'utf-8'; @import url(http://there.invalid/a.css);"
                + " @font-face{font-family:x;src:url(x)} @media screen{path{fill:#010101}}"
                + " @media (min-width:3px){path{fill:red}} @media print{path{fill:red}}"
                + " @supports (fill:red){path{fill:red}} path{mask-mode:alpha} -->]]></style><path id='p'/>");
        assertThat(style(document, "p")).isEqualTo("fill:#010101");
        assertThat(document.getElementsByTagNameNS("*", "style").getLength()).isZero();
        assertThat(said())
                .containsExactly(
                        "a style sheet of type 'text/less' is not read",
                        "the style sheet outside the file is not read; copy its rules into a <style> element",
                        "fonts in or outside the file are not loaded; turn text into outlines to keep its look",
                        "the media query '(min-width:3px)' was taken as not fulfilled",
                        "@supports is not followed; its rules were left out",
                        "the property mask-mode is not followed here");
    }

    @Test
    void aFilterWrittenAsAFunctionStaysAFilter() {
        SVGOMDocument document = read("<path id='p' style='filter:blur(2px)'/>");
        assertThat(style(document, "p")).isEqualTo("filter:url(#inkstrata-filter)");
        assertThat(document.getElementById("inkstrata-filter").getLocalName()).isEqualTo("filter");
    }
}
