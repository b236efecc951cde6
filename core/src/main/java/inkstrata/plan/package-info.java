/**
 * The print plan as plain data: sheet, inks, pulls in print order, and which stacks of paint each pull prints.
 *
 * <p>A {@link inkstrata.plan.PlanningTable} of the few distinct stacks comes in; a {@link inkstrata.plan.PrintPlan} goes
 * out, with the reason for each decision. No geometry here: planners never see a vertex. Read
 * {@link inkstrata.plan.PrintPlan} first.
 */
package inkstrata.plan;
