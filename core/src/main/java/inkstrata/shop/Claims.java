package inkstrata.shop;

import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.plugin.Claim;
import inkstrata.plugin.Planner;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Which planners take part: where several claim the same decision, the one to which the job speaks. */
final class Claims {
    private Claims() {}

    /**
     * Those that take part, in their order.
     *
     * @throws JobException that names them, if the job speaks to several that claim the same decision, or to none of them
     */
    static List<Planner> settled(List<Planner> planners, Job job) {
        List<Planner> left = new ArrayList<>(planners);
        for (Claim claim : Claim.values()) {
            List<Planner> claiming = left.stream()
                    .filter(planner -> planner.claims(job).contains(claim))
                    .toList();
            List<Planner> asked = claiming.stream()
                    .filter(planner -> !job.settingsFor(planner.id()).values().isEmpty())
                    .toList();
            if (claiming.size() > 1) {
                if (asked.size() != 1) {
                    throw new JobException(job.file(), line(asked, job), message(claim, claiming, asked));
                }
                left.removeIf(planner -> claiming.contains(planner) && !asked.contains(planner));
            }
        }
        return List.copyOf(left);
    }

    private static int line(List<Planner> asked, Job job) {
        return asked.isEmpty()
                ? 0
                : job.settingsFor(asked.get(asked.size() - 1).id()).line();
    }

    private static String message(Claim claim, List<Planner> claiming, List<Planner> asked) {
        String names = claiming.stream().map(Planner::id).collect(Collectors.joining(" and "));
        return names + " both decide " + claim.words() + ". "
                + (asked.isEmpty()
                        ? "Set an option of the one that shall, under use."
                        : "Leave all but one of them out of use.");
    }
}
