package inkstrata.shop;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.colour.Ciede2000;
import inkstrata.colour.ColourName;
import inkstrata.colour.NearColours;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Which ink stands for each colour that shows in the artwork.
 *
 * <p>A colour within {@code merge} of the sheet's colour is bare sheet; one within {@code merge} of an ink that the job
 * lists is printed with the nearest such ink; the rest becomes new inks, near colours joined by complete linkage.
 *
 * @param inks every ink that is used
 * @param inkOf for each colour that shows; empty for bare sheet
 * @param notes what was joined, and listed inks that print nowhere
 */
record Palette(List<Ink> inks, Map<Rgb, Optional<Ink>> inkOf, List<Note> notes) {
    Palette {
        inks = List.copyOf(inks);
        notes = List.copyOf(notes);
    }

    /**
     * Mixes the inks.
     *
     * @param visible each colour that shows, with its area in mm²
     */
    static Palette mix(Map<Rgb, Double> visible, Job job) {
        Map<Rgb, Optional<Ink>> inkOf = new TreeMap<>();
        List<Note> notes = new ArrayList<>();
        Map<Rgb, Double> rest = new TreeMap<>();
        Set<Ink> used = new HashSet<>();
        new TreeMap<>(visible).forEach((colour, area) -> {
            Optional<Ink> listed = nearestListed(colour, job);
            double toSheet = Ciede2000.difference(colour, job.sheetColour());
            double toInk = listed.map(ink -> Ciede2000.difference(colour, ink.swatch()))
                    .orElse(Double.POSITIVE_INFINITY);
            if (toSheet <= job.merge() && toSheet <= toInk) {
                inkOf.put(colour, Optional.empty());
                notes.add(Note.info(
                        Source.UNKNOWN,
                        colour + " is the colour of the bare sheet (CIEDE2000 " + rounded(toSheet)
                                + " from it) and needs no ink."));
            } else if (toInk <= job.merge()) {
                inkOf.put(colour, listed);
                used.add(listed.orElseThrow());
                if (toInk > 0) {
                    notes.add(joined(colour, listed.orElseThrow(), toInk));
                }
            } else {
                rest.put(colour, area);
            }
        });
        Set<String> names = new HashSet<>();
        job.inks().forEach(ink -> names.add(ink.name()));
        List<Ink> inks =
                new ArrayList<>(job.inks().stream().filter(used::contains).toList());
        for (List<Rgb> group : NearColours.group(rest, job.merge())) {
            Ink ink = new Ink(
                    unused(ColourName.of(group.get(0)), names),
                    group.get(0),
                    Ink.DEFAULT_HIDING,
                    Optional.empty(),
                    false);
            inks.add(ink);
            for (Rgb colour : group) {
                inkOf.put(colour, Optional.of(ink));
                if (!colour.equals(ink.swatch())) {
                    notes.add(joined(colour, ink, Ciede2000.difference(colour, ink.swatch())));
                }
            }
        }
        for (Ink ink : job.inks()) {
            if (!used.contains(ink)) {
                notes.add(printsNowhere(ink, visible.keySet(), job));
            }
        }
        if (inks.isEmpty()) {
            notes.add(Note.warning(
                    Source.UNKNOWN,
                    "Nothing prints: every colour that shows is the sheet's, " + job.sheetColour()
                            + ". Draw in another colour, or set sheet.colour."));
        }
        return new Palette(inks, inkOf, notes);
    }

    /**
     * The colour a place is printed in: its ink's swatch, or the sheet's colour. A colour that shows nowhere takes the
     * nearest ink or the sheet within {@code merge}, else it stays as it is and has no ink.
     */
    Rgb asPrinted(Rgb colour, Job job) {
        Optional<Ink> known = inkOf.get(colour);
        if (known != null) {
            return known.map(Ink::swatch).orElse(job.sheetColour());
        }
        return Stream.concat(Stream.of(job.sheetColour()), inks.stream().map(Ink::swatch))
                .filter(swatch -> Ciede2000.difference(colour, swatch) <= job.merge())
                .min(Comparator.comparingDouble(swatch -> Ciede2000.difference(colour, swatch)))
                .orElse(colour);
    }

    private static Optional<Ink> nearestListed(Rgb colour, Job job) {
        Ink nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Ink ink : job.inks()) {
            double apart = Ciede2000.difference(colour, ink.swatch());
            if (apart < least) {
                least = apart;
                nearest = ink;
            }
        }
        return Optional.ofNullable(nearest);
    }

    private static String unused(String name, Set<String> names) {
        String candidate = name;
        for (int i = 2; !names.add(candidate); i++) {
            candidate = name + " " + i;
        }
        return candidate;
    }

    private static Note joined(Rgb colour, Ink ink, double apart) {
        return Note.info(
                Source.UNKNOWN,
                colour + " is printed with ink '" + ink.name() + "' (" + ink.swatch() + "), CIEDE2000 " + rounded(apart)
                        + " from it.");
    }

    private static Note printsNowhere(Ink ink, Set<Rgb> colours, Job job) {
        double toSheet = Ciede2000.difference(ink.swatch(), job.sheetColour());
        if (toSheet <= job.merge()) {
            return Note.warning(
                    Source.UNKNOWN,
                    "Ink '" + ink.name() + "' (" + ink.swatch()
                            + ") prints nowhere: no colour of the artwork is nearer to it"
                            + " than to the bare sheet, CIEDE2000 " + rounded(toSheet) + " away.");
        }
        Map<Rgb, Double> apart = new HashMap<>();
        colours.forEach(colour -> apart.put(colour, Ciede2000.difference(colour, ink.swatch())));
        String nearest = apart.entrySet().stream()
                .min(Map.Entry.<Rgb, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(entry -> " The nearest is " + entry.getKey() + ", " + rounded(entry.getValue()) + " away.")
                .orElse("");
        return Note.warning(
                Source.UNKNOWN,
                "Ink '" + ink.name() + "' (" + ink.swatch()
                        + ") prints nowhere: no colour of the artwork is within merge of it." + nearest);
    }

    private static String rounded(double difference) {
        return String.format(Locale.ROOT, "%.2f", difference);
    }
}
