package inkstrata.artwork.svg;

import java.util.List;

/**
 * A selector with its declarations; a list of selectors makes one rule each.
 *
 * @param order position among all rules of the drawing
 */
record StyleRule(Selector selector, List<Declaration> declarations, int order) {}
