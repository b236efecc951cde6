package inkstrata.artwork.stroke;

/**
 * A subpath or dash without length: only its caps are drawn (SVG 2, section 13.5.4).
 *
 * @param at where, and which way it would go
 */
record Dot(Station at) {}
