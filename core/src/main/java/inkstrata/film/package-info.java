/**
 * Films read back: what a film's file prints, in place on the sheet, whoever wrote it.
 *
 * <p>A black-on-clear drawing comes in, in any units: from a file of SVG, or as a {@link inkstrata.film.FilmDrawing} from whoever knows another
 * kind of file; out comes a {@link inkstrata.film.Film}. Read {@link inkstrata.film.FilmReader} first.
 */
package inkstrata.film;
