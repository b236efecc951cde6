package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import inkstrata.job.PluginSettings;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Place;
import inkstrata.plan.Side;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.separation.Verdict;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

    /** A printmaker who pins the page up must see there, too, that the set does not hold. */
    @Test
    void theOverviewSaysHowFarTheFilmsHold() throws IOException {
        Verdict verdict = new Verdict(
                0.4,
                OptionalDouble.of(0.1),
                OptionalDouble.empty(),
                Optional.of(new Verdict.Parting(new Place(120, 88), List.of("sand", "night"))),
                List.of(),
                List.of("sand", "night"),
                List.of());
        Separation poster = PrintExample.poster(Side.FRONT);
        String plain = overview(poster, Inspection.of(List.of()));
        String said = overview(poster, Inspection.of(List.of()).withVerdict(verdict));
        assertThat(plain).doesNotContain("Does not hold");
        Matcher lines = Pattern.compile("<title>([^<]*)</title>").matcher(said);
        List<String> words = new ArrayList<>();
        while (lines.find()) {
            words.add(lines.group(1));
        }
        assertThat(String.join(" ", words)).contains(verdict.line());
        assertThat(height(said)).isGreaterThan(height(plain));
    }

    private static double height(String svg) {
        Matcher height = Pattern.compile("height=\"([0-9.]+)mm\"").matcher(svg);
        assertThat(height.find()).isTrue();
        return Double.parseDouble(height.group(1));
    }

    private static String overview(Separation separation, Inspection inspection) throws IOException {
        return new String(
                PrintExample.written(separation, inspection, Job.DEFAULT).get("overview.svg"), StandardCharsets.UTF_8);
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
