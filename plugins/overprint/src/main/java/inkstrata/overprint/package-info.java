/**
 * Overprint: what may run on beneath what.
 *
 * <p>Where a dark key lies over a lighter ink nobody sees whether the lighter one runs on beneath, and running on needs
 * no register. Works on stacks of paint alone. Read {@link inkstrata.overprint.Overprint}.
 */
package inkstrata.overprint;
