package inkstrata.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobException;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import inkstrata.plugin.Claim;
import inkstrata.plugin.Planner;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ClaimsTest {
    private static final Planner ONE = new Claiming("one", Set.of(Claim.RUNNING_ON));
    private static final Planner OTHER = new Claiming("other", Set.of(Claim.RUNNING_ON));
    private static final Planner MEEK = new Claiming("meek", Set.of());

    @Test
    void whatNobodyElseClaimsIsTaken() {
        assertThat(Claims.settled(List.of(MEEK, ONE), Job.DEFAULT)).containsExactly(MEEK, ONE);
    }

    @Test
    void theOneToWhichTheJobSpeaksTakesPart() {
        Job job = JobExample.using(0.4, "other", Map.of("enabled", new Setting("true", 8)));
        assertThat(Claims.settled(List.of(ONE, MEEK, OTHER), job)).containsExactly(MEEK, OTHER);
    }

    @Test
    void twoThatClaimTheSameAreNamed() {
        assertThatThrownBy(() -> Claims.settled(List.of(ONE, OTHER), Job.DEFAULT))
                .isInstanceOf(JobException.class)
                .hasMessageContaining(
                        "one and other both decide what runs on beneath what. Set an option of the one that shall, under use.");
    }

    private record Claiming(String id, Set<Claim> claimed) implements Planner {
        @Override
        public String description() {
            return "claims";
        }

        @Override
        public Set<Claim> claims(Job job) {
            return claimed;
        }

        @Override
        public PrintPlan plan(PlanningTable table, PrintPlan soFar, Job job) {
            return soFar;
        }
    }
}
