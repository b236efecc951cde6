package inkstrata.plan;

/**
 * Something a planner settled, and why.
 *
 * @param by id of the planner
 * @param about what it concerns: an ink's name, or empty for the whole plan
 * @param what the decision, one sentence
 * @param why the reason, one sentence with its numbers
 */
public record Decision(String by, String about, String what, String why) {}
