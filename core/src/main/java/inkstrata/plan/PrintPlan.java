package inkstrata.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The pulls in print order, and how they came about.
 *
 * @param pulls first printed first
 * @param decisions in the order they were taken
 */
public record PrintPlan(List<Pull> pulls, List<Decision> decisions) {
    public PrintPlan {
        pulls = List.copyOf(pulls);
        decisions = List.copyOf(decisions);
    }

    public PrintPlan withPulls(List<Pull> newPulls) {
        return new PrintPlan(newPulls, decisions);
    }

    public PrintPlan withDecision(Decision decision) {
        List<Decision> more = new ArrayList<>(decisions);
        more.add(decision);
        return new PrintPlan(pulls, more);
    }
}
