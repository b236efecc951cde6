/**
 * Films read back: what a film's file prints, in place on the sheet, whoever wrote it.
 *
 * <p>A file of one black-on-clear drawing comes in, in any units; out comes a {@link inkstrata.film.Film}. Read
 * {@link inkstrata.film.FilmReader} first.
 */
package inkstrata.film;
