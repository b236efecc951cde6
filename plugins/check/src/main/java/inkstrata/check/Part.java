package inkstrata.check;

import inkstrata.separation.Finding.Severity;
import java.util.Locale;
import java.util.Optional;

/**
 * What is wrong with places of a film that are alike.
 *
 * @param severity how bad it is; empty for what is no fault by itself: the films may hold less, which is said elsewhere
 * @param rule its name
 * @param words what the film does there
 * @param limit what it should do
 * @param remedy how to mend it
 */
record Part(Optional<Severity> severity, String rule, String words, String limit, String remedy) {
    /** The rule by which a film is knocked out where nobody sees it. */
    static final String LOST_OVERPRINT = "lost overprint";

    static Part missing(String film) {
        return new Part(
                Optional.of(Severity.ERROR),
                "missing ink",
                film + " leaves out a place that shows it",
                "ink wherever the drawing shows it",
                "Add the place to the film.");
    }

    static Part missingBeneath(String film, String shown, double change, double limit) {
        return new Part(
                Optional.of(Severity.ERROR),
                "missing ink",
                String.format(
                        Locale.ROOT,
                        "%s is left out beneath %s and changes its colour by about %.1f",
                        film,
                        shown,
                        change),
                String.format(Locale.ROOT, "%.1f (CIEDE2000)", limit),
                "Add the place to the film.");
    }

    static Part lostOverprint(String film, String shown) {
        return new Part(
                Optional.of(Severity.WARNING),
                LOST_OVERPRINT,
                film + " is knocked out where it was to run on beneath " + shown,
                "as planned",
                "Let it run on: then no edge has to meet another there.");
    }

    /** The same of a ground beside places that need it: in register nobody sees it. */
    Part asLostGround() {
        return new Part(
                Optional.of(Severity.ERROR),
                "lost ground",
                words + ", and other inks beside it stand on bare sheet as soon as pulls are off",
                limit,
                remedy);
    }

    /** A lost trap shows in how far films hold. */
    static Part lostTrap() {
        return new Part(Optional.empty(), "", "", "", "");
    }

    static Part onSheet(String film) {
        return new Part(
                Optional.of(Severity.ERROR),
                "ink on sheet",
                film + " prints where the drawing leaves the sheet bare",
                "bare sheet",
                "Take the place out of the film.");
    }

    static Part over(String film, String shown) {
        return new Part(
                Optional.of(Severity.ERROR),
                "prints over",
                film + " covers a place that is to show " + shown,
                "no ink over it",
                "Knock the place out of the film.");
    }

    static Part beneath(String film, String shown, double change, double limit) {
        return new Part(
                Optional.of(change > limit ? Severity.ERROR : Severity.NOTE),
                "missing knockout",
                String.format(
                        Locale.ROOT, "%s runs on beneath %s and changes its colour by about %.1f", film, shown, change),
                String.format(Locale.ROOT, "%.1f (CIEDE2000)", limit),
                "Knock the place out of the film, unless the new colour is wanted.");
    }

    static Part wideRim(String film, String shown, double width) {
        return new Part(
                Optional.of(Severity.WARNING),
                "wide rim",
                String.format(Locale.ROOT, "%s reaches %.2f mm into %s", film, width, shown),
                "the planned trap",
                "Take the rim back to the width of the trap.");
    }
}
