package inkstrata.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plugin.Plugins;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ways in which programs write down what a layer is called: SVG 2, section 5.8 (title); others common practice, no source. */
class NamedLayersTest {
    private static final String PLAIN = "<g %s><rect x='2' y='2' width='10' height='10' fill='#d04030'/></g>";
    private static final String BESIDE = "<g id='sea'><rect y='20' width='40' height='10' fill='#3060c0'/></g>";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "id='sun'",
                "id='layer7' a:label='sun'",
                "a:groupmode='layer' undeclared:label='  sun '",
                "label='sun'",
                "data-name='sun' id='b'",
                "id='layer7' a:label='sun' data-name='sun'",
                "id='sun' a:label='Sun'",
            })
    void attributesNameALayer(String attributes) throws IOException {
        assertThat(printed(String.format(PLAIN, attributes) + BESIDE, "#sun")).isCloseTo(100, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<g><title>sun</title><rect x='2' y='2' width='10' height='10' fill='#d04030'/></g>",
                "<g><desc>x</desc><title lang='en'>\n  sun </title><rect x='2' y='2' width='10' height='10' fill='#d04030'/></g>",
                "<rect x='2' y='2' width='10' height='10' fill='#d04030'><title>sun</title></rect>",
                "<path a:label='sun' d='M2 2h10v10h-10z' fill='#d04030'/>",
                "<g a:label='sun'><g a:label='sun'><rect id='sun' x='2' y='2' width='10' height='10' fill='#d04030'/></g></g>",
                "<symbol id='s'><g a:label='sun'><rect width='10' height='5' fill='#d04030'/></g></symbol>"
                        + "<use href='#s' x='2' y='2'/><use href='#s' x='2' y='7'/>",
                "<svg a:label='sun'><rect x='2' y='2' width='10' height='10' fill='#d04030'/></svg>",
            })
    void titlesAndSingleShapesAndCopies(String drawing) throws IOException {
        assertThat(printed(drawing + BESIDE, "#sun")).isCloseTo(100, within(1e-6));
    }

    @Test
    void blanksInsideANameAreOne() throws IOException {
        assertThat(printed(String.format(PLAIN, "a:label='Old   sun'") + BESIDE, "#Old sun"))
                .isCloseTo(100, within(1e-6));
    }

    /** The title of the drawing as a whole is none of a layer. */
    @Test
    void theDrawingsOwnTitleIsNotMeant() throws IOException {
        assertThat(printed("<title>sun</title>" + String.format(PLAIN, "a:label='sun'") + BESIDE, "#sun"))
                .isCloseTo(100, within(1e-6));
    }

    @Test
    void twoOfOneNameAreAnErrorThatNamesBoth() {
        String both = String.format(PLAIN, "id='one' a:label='sun'") + "\n" + BESIDE + "\n"
                + String.format(PLAIN, "id='sun'").replace("'2'", "'13'");
        assertThatThrownBy(() -> printed(both, "#sun"))
                .isInstanceOf(JobException.class)
                .hasMessage(
                        "job.yaml: '#sun': test.svg has two elements of that name, <g id=\"one\"> \"sun\" in line 1 and"
                                + " <g id=\"sun\"> in line 3. Rename all but one, or put them into one group and name that.");
        String duplicates = String.format(PLAIN, "id='sun'") + "\n" + String.format(PLAIN, "id='sun'");
        assertThatThrownBy(() -> printed(duplicates, "#sun"))
                .hasMessageContaining(
                        "two elements of that name, <g id=\"sun\"> in line 1 and <g id=\"sun\"> in line 2.");
    }

    /** Two in one group of that name are one. */
    @Test
    void whatLiesInAnotherOfThatNameIsPartOfIt() throws IOException {
        String group = "<g id='sun'><g a:label='sun'><rect x='2' y='2' width='10' height='5' fill='#d04030'/></g>"
                + "<g a:label='sun'><rect x='2' y='7' width='10' height='5' fill='#d04030'/></g></g>";
        assertThat(printed(group + BESIDE, "#sun")).isCloseTo(100, within(1e-6));
    }

    @Test
    void whatIsNotThereIsSaidWithWhatIs() {
        assertThatThrownBy(() -> printed(String.format(PLAIN, "id='layer7' a:label='Moon'") + BESIDE, "#sun"))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("'#sun': no element of test.svg that shows has that id, label or title."
                        + " There are #layer7 (Moon), #sea.");
        assertThatThrownBy(() -> printed("<rect width='3' height='3'/>", "#sun"))
                .hasMessageContaining("None has one: name the layer or group");
    }

    /** mm² that an ink bound to a name prints. */
    private static double printed(String content, String from) throws IOException {
        String svg =
                "<svg xmlns='http://www.w3.org/2000/svg' xmlns:a='urn:a' width='40mm' height='40mm' viewBox='0 0 40 40'>"
                        + content + "</svg>";
        Job job = JobReader.read("job.yaml", "inks: [{name: glow, prints: '#f2913d', from: '" + from + "'}]");
        return new Separator(new Plugins(List.of(), List.of(), List.of(), List.of()))
                        .separate(
                                SvgReader.read(
                                        "test.svg",
                                        new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
                                        ReadOptions.DEFAULT),
                                job)
                        .table()
                        .rows()
                        .stream()
                        .filter(row -> row.drawings().contains("glow"))
                        .mapToDouble(Row::areaMm2)
                        .sum();
    }
}
