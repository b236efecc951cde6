package inkstrata.separation;

import java.util.OptionalInt;

/**
 * What a finding speaks of, as far as it speaks of one thing.
 *
 * @param ink name of an ink; empty if it speaks of none, or of several
 * @param pull position of a pull in the plan, from 0; empty likewise
 * @param file a film's file as it was named; empty likewise
 * @param element the element of the artwork, as in {@code <path id="sail">}; empty likewise
 */
public record Subject(String ink, OptionalInt pull, String file, String element) {
    /** The set as a whole. */
    public static final Subject ALL = new Subject("", OptionalInt.empty(), "", "");

    public static Subject ink(String ink) {
        return ALL.withInk(ink);
    }

    public Subject withInk(String newInk) {
        return new Subject(newInk, pull, file, element);
    }

    /**
     * The same of a pull.
     *
     * @param newPull position in the plan, from 0
     */
    public Subject withPull(int newPull) {
        return new Subject(ink, OptionalInt.of(newPull), file, element);
    }

    public Subject withFile(String newFile) {
        return new Subject(ink, pull, newFile, element);
    }

    public Subject withElement(String newElement) {
        return new Subject(ink, pull, file, newElement);
    }
}
