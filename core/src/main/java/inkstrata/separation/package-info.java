/**
 * The separation: for each pull of the plan the region it prints, and what inspectors found in it.
 *
 * <p>Values only. Planners' plans and the map come in, shapers change the printed regions, writers make files of them.
 * Read {@link inkstrata.separation.Separation} first.
 */
package inkstrata.separation;
