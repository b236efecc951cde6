/**
 * Underbase: an opaque ground, white most often, beneath the inks that a dark or coloured sheet would change.
 *
 * <p>Which stacks need it is decided by predicted colour ({@link inkstrata.underbase.Underbase}); the film is choked so that no
 * ground looks out beside an ink ({@link inkstrata.underbase.Choke}); where inks lie on the sheet without one, what it makes of them is
 * looked at ({@link inkstrata.underbase.SheetColours}). Read {@link inkstrata.underbase.Underbase} first.
 */
package inkstrata.underbase;
