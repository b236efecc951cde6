package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import inkstrata.job.PluginSettings;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.plan.Side;
import inkstrata.plugin.Plugins;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PositiveTest {
    @Test
    void isFoundAtTheDoor() {
        assertThat(Plugins.load(getClass().getClassLoader()).writers()).hasExactlyElementsOfTypes(Positive.class);
    }

    @Test
    void writesOneFilmForEachPullAndThePlan() throws IOException {
        assertThat(PrintExample.written(PrintExample.poster(Side.FRONT), Job.DEFAULT)
                        .keySet())
                .containsExactly(
                        "01-sand.svg",
                        "02-rot-blue.svg",
                        "03-night.svg",
                        "overview.svg",
                        "overview.png",
                        "plan.json",
                        "films.json");
    }

    @Test
    void theJobsTitleIsOnTheFilms() throws IOException {
        assertThat(film(job("Tide mill", Map.of()))).contains("<title>Tide mill, pull 1 of 3: sand</title>");
        assertThat(film(Job.DEFAULT)).contains("<title>tide-mill, pull 1 of 3: sand</title>");
    }

    @Test
    void strokeMarksAndBarAreTheJobsToSet() throws IOException {
        assertThat(film(Job.DEFAULT))
                .contains("id=\"bar\"")
                .contains("id=\"wedge\"")
                .contains("H45V65.075H35Z");
        assertThat(film(job("", Map.of("stroke", "0.2 mm")))).contains("H45V65.1H35Z");
        assertThat(film(job("", Map.of("size", "20 mm")))).contains("H45V60.075H25Z");
        assertThat(film(job("", Map.of("marks", "false")))).doesNotContain("id=\"register\"");
        assertThat(film(job("", Map.of("bar", "false")))).doesNotContain("id=\"bar\"");
        assertThat(film(job("", Map.of("wedge", "false")))).doesNotContain("id=\"wedge\"");
        assertThat(film(job("", Map.of("date", "21 June")))).contains(" \u00b7 21 June</title>");
        assertThat(film(Job.DEFAULT)).contains("print at 100 %</title>");
    }

    @Test
    void aStrokeNoFilmCanHoldIsTheJobsFault() {
        assertThatThrownBy(() -> film(job("", Map.of("stroke", "2 mm"))))
                .isInstanceOf(JobException.class)
                .hasMessage("mill.yaml:9: positive.stroke: '2 mm' is outside 0.05 to 1 mm.");
    }

    private static String film(Job job) throws IOException {
        byte[] svg = PrintExample.written(PrintExample.poster(Side.FRONT), job).get("01-sand.svg");
        return new String(svg, StandardCharsets.UTF_8);
    }

    private static Job job(String title, Map<String, String> settings) {
        Map<String, Setting> values = new java.util.HashMap<>();
        settings.forEach((name, text) -> values.put(name, new Setting(text, 9)));
        Job job = JobReader.read("mill.yaml", "title: \"" + title + "\"");
        return JobExample.withUse(job, Map.of("positive", new PluginSettings(8, values)));
    }
}
