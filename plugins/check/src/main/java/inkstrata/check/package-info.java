/**
 * Check: how far the pulls may be off from each other before sheet shows between two inks, and where it would show first.
 *
 * <p>A {@link inkstrata.separation.Separation} comes in, findings go out. Films are laid over each other once
 * ({@link inkstrata.check.FilmMap}); then the smallest set of places is looked for that no film covers all of ({@link
 * inkstrata.check.SmallestOpening}). The argument stands, with its picture, in {@code docs/limit.md} of this module. Read {@link
 * inkstrata.check.RegisterLimit} first.
 */
package inkstrata.check;
