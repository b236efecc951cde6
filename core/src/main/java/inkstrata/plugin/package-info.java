/**
 * The five roles a plug-in can play, and how plug-ins are found.
 *
 * <p>A {@link inkstrata.plugin.Planner} decides which pull prints where, a {@link inkstrata.plugin.Shaper} changes printed
 * regions, an {@link inkstrata.plugin.Inspector} reports what can go wrong, a {@link inkstrata.plugin.Writer} makes files, and a
 * {@link inkstrata.plugin.FilmFormat} reads films from a kind of file.
 * Our own plug-ins use the same door as a stranger's. Read {@link inkstrata.plugin.Plugin} first.
 */
package inkstrata.plugin;
