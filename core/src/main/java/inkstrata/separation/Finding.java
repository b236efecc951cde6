package inkstrata.separation;

import inkstrata.measure.Place;
import inkstrata.planar.Region;
import java.util.Optional;

/**
 * Something that can go wrong in the print, found before a screen is exposed.
 *
 * @param severity how bad it is
 * @param rule short name of the rule that found it
 * @param place where on the sheet
 * @param measured what is there, with its unit
 * @param limit what the rule allows, with its unit
 * @param remedy what to do, one sentence
 * @param subject what it speaks of
 * @param quantity the number behind {@code measured} and {@code limit}, if there is one
 * @param area all of the sheet that is wrong, if it is known; {@code place} lies in it or beside it
 */
public record Finding(
        Severity severity,
        String rule,
        Place place,
        String measured,
        String limit,
        String remedy,
        Subject subject,
        Optional<Quantity> quantity,
        Optional<Region> area) {
    /** How bad, mildest first. */
    public enum Severity {
        NOTE,
        WARNING,
        ERROR
    }

    /** One that speaks of the set as a whole, in words alone. */
    public Finding(Severity severity, String rule, Place place, String measured, String limit, String remedy) {
        this(severity, rule, place, measured, limit, remedy, Subject.ALL, Optional.empty(), Optional.empty());
    }

    public Finding withSeverity(Severity newSeverity) {
        return new Finding(newSeverity, rule, place, measured, limit, remedy, subject, quantity, area);
    }

    public Finding about(Subject newSubject) {
        return new Finding(severity, rule, place, measured, limit, remedy, newSubject, quantity, area);
    }

    public Finding withQuantity(Quantity newQuantity) {
        return new Finding(severity, rule, place, measured, limit, remedy, subject, Optional.of(newQuantity), area);
    }

    public Finding withArea(Region newArea) {
        return new Finding(severity, rule, place, measured, limit, remedy, subject, quantity, Optional.of(newArea));
    }
}
