/**
 * Knockout: every ink is left out where another shows, so that each prints on bare sheet and keeps its colour.
 *
 * <p>The first planner of the line; later ones let inks run on where it does no harm. Read {@link
 * inkstrata.knockout.Knockout}.
 */
package inkstrata.knockout;
