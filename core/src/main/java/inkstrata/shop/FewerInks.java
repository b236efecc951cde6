package inkstrata.shop;

/**
 * What a drawing would lose if it had fewer inks.
 *
 * @param inks how many there would be
 * @param joined how many of the drawing's colours would be printed with an ink of another colour
 * @param largest difference (CIEDE2000) of a colour to the ink it would be printed with
 * @param mean of these differences by area, over all that shows
 */
public record FewerInks(int inks, int joined, double largest, double mean) {}
