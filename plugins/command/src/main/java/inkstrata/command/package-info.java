/**
 * The counter: where somebody hands in a drawing and takes films away.
 *
 * <p>Comes in: the words of a command line, an SVG file, perhaps a job file. Goes out: results on standard output, notes
 * and faults on standard error, a folder that appears whole or not at all, and an exit code. The only room that knows the
 * console, the clock and the end of the program. It knows no plug-in by name: they are found. Read
 * {@link inkstrata.command.Counter} first, then a verb such as {@link inkstrata.command.SeparateVerb}.
 */
package inkstrata.command;
