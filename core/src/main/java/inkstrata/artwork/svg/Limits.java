package inkstrata.artwork.svg;

import java.time.Duration;

/** How much a stranger's file may ask for; real drawings stay far below, and files made to exhaust the shop do not. */
final class Limits {
    /** Of the file after unzipping; the largest drawing of a collection of 4,000 has 2 MB, a traced poster may have 50. */
    static final int BYTES = 256 << 20;

    /** Elements inside one another, references followed included; drawing programs stay below 60. */
    static final int DEPTH = 400;

    static final int ELEMENTS = 2_000_000;

    /**
     * What a shape or group takes while the drawing is read, in bytes, its attributes' values not counted: 30,000 and 120,000 of
     * them were read in as little memory as would do. Rectangles took 1,130 each, paths with a stroke 1,340, groups 370. A file with more
     * elements than the program's memory holds is refused before that runs out.
     */
    static final long SHAPE_BYTES = 1_500;

    /** The same for any other element: 60,000 copies were read in 4,400 bytes each. */
    static final long ELEMENT_BYTES = 5_000;

    /** For each character of the values of attributes: itself, and a number of two digits and a blank becomes one of 8 bytes. */
    static final long CHARACTER_BYTES = 4;

    /** Letters, digits, blanks and signs in all texts that are drawn, copies included; each becomes some 30 curves. */
    static final int LETTERS = 100_000;

    /** Lines and curves of all shapes that are drawn, copies and strokes included. */
    static final int CURVES = 12_000_000;

    /** On one element. */
    static final int ATTRIBUTES = 500;

    /** Times an entity may be called by its name; drawing programs name some 20 in the head of a file. */
    static final int ENTITY_CALLS = 5_000;

    /** Characters of all entities together, and of any one of them. */
    static final int ENTITY_CHARACTERS = 5_000_000;

    /** Elements that would be drawn when every {@code use}, clip, mask, marker and pattern has been followed. */
    static final long DRAWN_ELEMENTS = 4_000_000;

    /** Of one stroke; more are no drawing but a mistake in the numbers. */
    static final double DASHES = 200_000;

    /** Rules in all style sheets together. */
    static final int STYLE_RULES = 50_000;

    /** Characters in a value after every {@code var()} in it has been replaced. */
    static final int VALUE_CHARACTERS = 100_000;

    /** Of the thread that reads, in bytes: ten times what {@link #DEPTH} was seen to need. */
    static final long STACK = 256L << 20;

    /** A drawing of a million vertices is read in a few seconds. */
    static final Duration TIME = Duration.ofMinutes(5);

    private Limits() {}
}
