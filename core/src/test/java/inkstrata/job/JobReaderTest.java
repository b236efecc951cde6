package inkstrata.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import inkstrata.colour.Rgb;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.plan.Ink;
import inkstrata.plan.Mesh;
import inkstrata.plan.Side;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobReaderTest {
    @Test
    void everyKeyIsRead() {
        Job job = JobReader.read("job.yaml", """
                title: Bees at noon
                sheet: {size: 500 x 700 mm, colour: "#fbf7ec", print: back}
                artwork: {width: 40 cm, place: {x: 50 mm, y: 1in}}
                register: 0.3 mm
                merge: 1.5
                inks:
                  - {name: sand, prints: "#e8cf9a", hiding: 0.35, mesh: 77-48}
                  - name: night
                    prints: "#1d2440"
                    key: true
                order: [sand, ..., night]
                edition: {prints: 40, spoilage: 12 %}
                use:
                  trap:
                    width: 0.4 mm
                """);
        assertThat(job.title()).isEqualTo("Bees at noon");
        assertThat(job.sheet()).contains(new Size(500, 700));
        assertThat(job.sheetColour()).isEqualTo(Rgb.parse("#fbf7ec"));
        assertThat(job.side()).isEqualTo(Side.BACK);
        assertThat(job.artworkWidthMm()).hasValue(400);
        assertThat(job.artworkPlace()).contains(new Place(50, 25.4));
        assertThat(job.registerMm()).isEqualTo(0.3);
        assertThat(job.merge()).isEqualTo(new Merge(1.5, false, OptionalInt.empty()));
        assertThat(job.inks())
                .containsExactly(
                        new Ink("sand", Rgb.parse("#e8cf9a"), 0.35, Optional.of(new Mesh(77, 48)), false),
                        new Ink("night", Rgb.parse("#1d2440"), Ink.DEFAULT_HIDING, Optional.empty(), true));
        assertThat(job.order().names()).containsExactly("sand", "...", "night");
        assertThat(job.edition()).isEqualTo(new Edition(40, 0.12));
        assertThat(job.settingsFor("trap").values()).containsEntry("width", new Setting("0.4 mm", 15));
    }

    @Test
    void drawingsSidesAndJoinedColoursAreRead() {
        Job job = JobReader.read("job.yaml", """
                sheet: {colour: "#eef4f6", hiding: 0.4}
                merge: {within: 3, touching: true, inks: 5}
                inks:
                  - {name: rust, prints: "#b4512d", hiding: 0.05, from: "#boats"}
                  - {name: glow, prints: "#f4d78c", also: ["#f4d68c", "#f3d78c"], side: back}
                """);
        assertThat(job.merge()).isEqualTo(new Merge(3, true, OptionalInt.of(5)));
        assertThat(job.sheetFilm().hiding()).isCloseTo(0.4, within(1e-9));
        assertThat(job.inks().get(0).from()).contains("#boats");
        assertThat(job.inks().get(1).side()).contains(Side.BACK);
        assertThat(job.also()).isEqualTo(Map.of(Rgb.parse("#f4d68c"), "glow", Rgb.parse("#f3d78c"), "glow"));
    }

    @Test
    void everyKeyIsOptional() {
        Job job = JobReader.read("job.yaml", "# nothing yet\n");
        assertThat(job.registerMm()).isEqualTo(Job.DEFAULT.registerMm());
        assertThat(job.sheet()).isEmpty();
        assertThat(job.artworkPlace()).isEmpty();
        assertThat(job.inks()).isEqualTo(List.of());
    }

    /** YAML 1.2.2, section 6.6: a comment begins with # after white space. */
    @Test
    void remarksStayRemarks() {
        Job job = JobReader.read("job.yaml", """
                title: Ann's #1 # the poster
                register: 0.3 mm #c8442e
                inks: #those of last year
                  - {name: "it's #2", prints: "#c8442e"} #fff
                edition: {prints: 3, #good ones
                          spoilage: 10 %}
                """);
        assertThat(job.title()).isEqualTo("Ann's");
        assertThat(job.inks()).extracting(Ink::name).containsExactly("it's #2");
        assertThat(job.edition().prints()).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "titel: x | job.yaml:1: | Did you mean 'title'?",
                "frobnicate: x | job.yaml:1: | Known here are title, sheet",
                "title: x\\nsheet: {colur: x} | job.yaml:2: | Did you mean 'colour'?",
                "sheet: {colour: red} | job.yaml:1: | 'red' is not a colour",
                "sheet: {size: big} | sheet.size: | 500 x 700 mm",
                "sheet: {print: left} | sheet.print: | neither front nor back",
                "sheet: A3 | sheet must be a map | {key: value}",
                "artwork: {width: 0 mm} | artwork.width: | more than 0",
                "artwork: {width: 40} | artwork.width: | number and a unit",
                "artwork: {place: left} | artwork.place: | Write centre",
                "register: 11 mm | register: | outside 0 to 10 mm",
                "register: wide | register: | is not a length",
                "merge: lots | merge: | not a number",
                "merge: -1 | merge: | outside 0 to 100",
                "inks: {name: a} | job.yaml:1: | must be a list",
                "inks: [{prints: '#000000'}] | job.yaml:1: | needs a name",
                "inks: [{name: a}] | job.yaml:1: | needs the colour",
                "inks: [{name: a, prints: '#000000'}, {name: a, prints: '#000001'}] | job.yaml:1: | two inks are called 'a'",
                "inks: [{name: a, prints: '#000000'}, {name: b, prints: '#000000'}] | job.yaml:1: | print the same colour",
                "inks: [{name: a, prints: '#000000', hiding: 2} ] | hiding: | outside 0 (clear)",
                "inks: [{name: a, prints: '#000000', mesh: fine} ] | mesh: | for example 77-48",
                "inks: [{name: a, prints: '#000000', key: yes} ] | key: | neither true nor false",
                "inks: [{name: a, prints: '#000000', side: left} ] | side: | neither front nor back",
                "inks: [{name: a, prints: '#000000', also: ['#000000']} ] | job.yaml:1: | twice",
                "inks: [{name: a, prints: '#000000', also: [red]} ] | also: | not a colour",
                "inks: [{name: a, prints: '#000000', spectra: none.csv} ] | spectra: | can't be read",
                "inks: [{name: a, prints: '#000000', also: ['#000001'], from: '#b'} ] | job.yaml:1: | Take also out",
                "merge: {inks: 0} | merge.inks: | whole number of inks",
                "merge: {within: x} | merge.within: | not a number",
                "sheet: {hiding: 0.5, spectra: a.csv} | job.yaml:1: | say the same",
                "edition: {prints: 1.5} | edition.prints: | whole number",
                "edition: {spoilage: 12} | edition.spoilage: | 12 %",
                "use: {trap: {width: [1, {a: b}]}} | job.yaml:1: | single value",
                "sheet:\\n  colour: #c8442e | job.yaml:2: | put the colour in quotes: \"#c8442e\"",
                "inks:\\n  - {name: rust, prints: #c8442e}\\n  - {name: a, prints: '#000000'} | job.yaml:2: | put the colour in quotes: \"#c8442e\"",
                "inks:\\n  - {name: rust, prints: #c8442e\\n, hiding: 0.4} | job.yaml:2: | put the colour in quotes",
                "inks:\\n  - name: rust\\n    prints: '#000000'\\n    also: [#c8442e] | job.yaml:4: | put the colour in quotes",
                "inks:\\n  - name: rust\\n    prints: '#000000'\\n    also: ['#000001', #c8442e] | job.yaml:4: | put the colour in quotes",
                "sheet:\\n  also:\\n    - #c8442e | job.yaml:3: | put the colour in quotes",
                "sheet: {colour: #fff} | job.yaml:1: | put the colour in quotes",
                "inks:\\n  - {name: rust, prints: '#000000', from: #sun} | job.yaml:2: | put the name in quotes: \"#sun\"",
                "inks:\\n  - {name: a, prints: '#000000', key: on} | job.yaml:2: | Write true.",
                "title: a\\ntitle: b | job.yaml:2: | 'title' is there twice",
                "title: [a | job.yaml: | not YAML",
                "- a | job.yaml:1: | a job file must be a map",
            })
    void aFaultNamesItsLineAndItsRemedy(String text, String where, String what) {
        assertThatThrownBy(() -> JobReader.read("job.yaml", text.replace("\\n", "\n")))
                .isInstanceOf(JobException.class)
                .hasMessageContaining(where.equals("job.yaml:") ? "job.yaml" : where)
                .hasMessageContaining(what);
    }

    @Test
    void noSeamNeedsNoUnit() {
        assertThat(JobReader.read("job.yaml", "seam: 0").seamMm()).isZero();
        assertThat(JobReader.read("job.yaml", "seam: 0.02 mm").seamMm()).isEqualTo(0.02);
        assertThatThrownBy(() -> JobReader.read("job.yaml", "seam: 0.6 mm")).hasMessageContaining("0 to 0.5 mm");
        assertThatThrownBy(() -> JobReader.read("job.yaml", "seam: 0.02")).hasMessageContaining("not a length");
    }
}
