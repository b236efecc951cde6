package inkstrata.planar;

/**
 * A point in which what spreads and what it spreads into meet without sharing an edge there: four areas meet in it, or more.
 *
 * @param spread number of the spread
 * @param x in grid steps
 * @param y likewise
 */
record Contact(int spread, int x, int y) {}
