/**
 * Films read from files that the core does not know: pages and plates of PDF, images of PNG and TIFF.
 *
 * <p>Bytes come in, and a {@link inkstrata.film.FilmDrawing} for each film goes out. It lies within {@code page} since PDFBox and ImageIO have their one
 * door there, for writing and for reading. PDFBox is known in {@code Pdf*} alone, ImageIO in {@code Pixel*} alone. Read {@link
 * inkstrata.positive.page.read.PdfFilms} and {@link inkstrata.positive.page.read.PixelFilms} first.
 */
package inkstrata.positive.page.read;
