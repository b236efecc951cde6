/**
 * Reduction: one screen altered from pull to pull. Each pull prints wherever its ink shows and wherever one shows that lies over it, so
 * that every print lies within the one before it, and the last steps stand highest.
 *
 * <p>Decided on stacks alone ({@link inkstrata.reduction.Reduction}); whether colours bear being printed over each other
 * is looked at afterwards ({@link inkstrata.reduction.StepColours}). Read {@link inkstrata.reduction.Reduction} first.
 */
package inkstrata.reduction;
