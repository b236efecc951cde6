/**
 * Colours as numbers: sRGB, XYZ, Lab and how far two colours are apart.
 *
 * <p>Pure functions over small records. What comes in is an 8-bit sRGB colour as artwork gives it; what goes out
 * is Lab under D65 and CIEDE2000 differences. What an ink makes of the ink beneath it is to be found here too. A
 * screen preview is a guide, not a promise. Read {@link inkstrata.colour.Rgb} first.
 */
package inkstrata.colour;
