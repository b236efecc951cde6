package inkstrata.separation;

import inkstrata.measure.Place;

/**
 * Something that can go wrong in the print, found before a screen is exposed.
 *
 * @param severity how bad it is
 * @param rule short name of the rule that found it
 * @param place where on the sheet
 * @param measured what is there, with its unit
 * @param limit what the rule allows, with its unit
 * @param remedy what to do, one sentence
 */
public record Finding(Severity severity, String rule, Place place, String measured, String limit, String remedy) {
    /** How bad, mildest first. */
    public enum Severity {
        NOTE,
        WARNING,
        ERROR
    }
}
