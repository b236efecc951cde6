/**
 * Files: a {@link inkstrata.positive.page.Page} comes in, bytes of one format go out.
 *
 * <p>Here nobody knows what a film is. A page has a frame in millimetres and black areas on it, in groups; it is written as SVG,
 * as PDF, or as pixels that are black or clear. PDFBox is known in {@code Pdf*} alone, ImageIO of the JDK in {@code
 * Pixel*} alone. Read {@link inkstrata.positive.page.Page} first.
 */
package inkstrata.positive.page;
