/**
 * Trap: where two inks meet, the lighter one grows by a little under the darker, so that no sheet shows when a print is off
 * register.
 *
 * <p>A {@link inkstrata.separation.Separation} comes in whose regions fit edge to edge; the same comes out with rims added
 * to the lighter of each two neighbours. Which edges need a trap and who gives way is decided on stacks and inks alone
 * ({@link inkstrata.trap.Meeting}, {@link inkstrata.trap.GivingWay}); the planar room draws the rims. The rules stand,
 * with pictures, in {@code docs/trap.md} of this module. Read {@link inkstrata.trap.Trap} first.
 */
package inkstrata.trap;
