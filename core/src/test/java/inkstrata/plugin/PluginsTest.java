package inkstrata.plugin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobException;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PluginsTest {
    private static final Plugins PLUGINS = new Plugins(
            List.of(new Named("b", 2), new Named("c", 1), new Named("a", 2)), List.of(), List.of(), List.of());

    @Test
    void plugInsRunByRankThenById() {
        assertThat(PLUGINS.planners()).extracting(Plugin::id).containsExactly("c", "a", "b");
    }

    @Test
    void twoOfOneIdAreAnErrorThatNamesBoth() {
        List<Planner> twins = List.of(new Named("a", 1), new Named("a", 2));
        assertThatThrownBy(() -> new Plugins(twins, List.of(), List.of(), List.of()))
                .isInstanceOf(PluginException.class)
                .hasMessageContaining("'a'")
                .hasMessageContaining(Named.class.getName());
    }

    @Test
    void whatTheJobSaysIsCheckedAgainstWhatIsDeclared() {
        assertThatCode(() -> PLUGINS.check(job("a", "width", "0.4 mm"))).doesNotThrowAnyException();
        assertThatThrownBy(() -> PLUGINS.check(job("z", "width", "0.4 mm")))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("job.yaml:7")
                .hasMessageContaining("'z'")
                .hasMessageContaining("a, b, c");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "widht", "0.4 mm")))
                .hasMessageContaining("job.yaml:8")
                .hasMessageContaining("'widht'")
                .hasMessageContaining("width, corners");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "width", "thin")))
                .hasMessageContaining("job.yaml:8")
                .hasMessageContaining("'thin' is not a length");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "corners", "oval")))
                .hasMessageContaining("'oval' is none of round, bevel");
    }

    @Test
    void anOptionHasItsDefaultUntilTheJobSetsIt() {
        Named plugin = new Named("a", 1);
        assertThat(Options.of(plugin, Job.DEFAULT).choice("corners")).isEqualTo("round");
        assertThat(Options.of(plugin, Job.DEFAULT).lengthMm("width")).isEmpty();
        assertThat(Options.of(plugin, job("a", "width", "0.5 cm")).lengthMm("width"))
                .contains(5.0);
    }

    private static Job job(String plugin, String option, String value) {
        return JobExample.using(Job.DEFAULT_REGISTER_MM, plugin, Map.of(option, new Setting(value, 8)));
    }

    private record Named(String id, int rank) implements Planner {
        @Override
        public String description() {
            return "does nothing";
        }

        @Override
        public List<Option> options() {
            return List.of(
                    Option.length("width", "the job's register", new Option.Range(0, 5), "how wide"),
                    Option.choice("corners", "round", List.of("round", "bevel"), "how corners look"));
        }

        @Override
        public PrintPlan plan(PlanningTable table, PrintPlan soFar, Job job) {
            return soFar;
        }
    }
}
