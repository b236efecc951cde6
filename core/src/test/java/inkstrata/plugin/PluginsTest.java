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
                .hasMessageContaining("Known here are a, b, c.");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "widht", "0.4 mm")))
                .hasMessageContaining("job.yaml:8")
                .hasMessageContaining("'widht'")
                .hasMessageContaining("Did you mean 'width'?");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "colour", "red")))
                .hasMessageContaining("job.yaml:8")
                .hasMessageContaining("Known here are width, corners");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "on", "true")))
                .hasMessageContaining("job.yaml:8")
                .hasMessageContaining("'on' of a is now 'enabled'. Write enabled instead.");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "enabled", "yes")))
                .hasMessageContaining("'yes' is neither true nor false. Write true.");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "width", "thin")))
                .hasMessageContaining("job.yaml:8")
                .hasMessageContaining("'thin' is not a length");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "corners", "oval")))
                .hasMessageEndingWith("'oval' is none of round, bevel.");
        assertThatThrownBy(() -> PLUGINS.check(job("a", "corners", "rounded")))
                .hasMessageEndingWith("'rounded' is none of round, bevel. Did you mean 'round'?");
    }

    @Test
    void anOptionHasItsDefaultUntilTheJobSetsIt() {
        Named plugin = new Named("a", 1);
        assertThat(Options.of(plugin, Job.DEFAULT).choice("corners")).isEqualTo("round");
        assertThat(Options.of(plugin, Job.DEFAULT).lengthMm("width")).isEmpty();
        assertThat(Options.of(plugin, job("a", "width", "the job's register")).lengthMm("width"))
                .as("the default in words may be written too")
                .isEmpty();
        assertThat(Options.of(plugin, job("a", "width", "0.5 cm")).lengthMm("width"))
                .contains(5.0);
    }

    /** A plug-in's own mistake is said, and whose it is. */
    @Test
    void aDefaultThatIsNoValueNamesItsPlugin() {
        Planner wrong = new Planner() {
            @Override
            public String id() {
                return "b";
            }

            @Override
            public String description() {
                return "has a default that is none";
            }

            @Override
            public List<Option> options() {
                return List.of(Option.choice("corners", "as the job says", List.of("round", "bevel"), "how"));
            }

            @Override
            public PrintPlan plan(PlanningTable table, PrintPlan soFar, Job job) {
                return soFar;
            }
        };
        assertThatThrownBy(() -> Options.of(wrong, Job.DEFAULT).choice("corners"))
                .hasMessage(
                        "option corners of b has the default 'as the job says', which is no choice; its plug-in has to"
                                + " declare another");
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
                    Option.choice("corners", "round", List.of("round", "bevel"), "how corners look"),
                    Option.flag("enabled", false, "whether it is").formerly("on"));
        }

        @Override
        public PrintPlan plan(PlanningTable table, PrintPlan soFar, Job job) {
            return soFar;
        }
    }
}
