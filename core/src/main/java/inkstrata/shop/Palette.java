package inkstrata.shop;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.colour.Ciede2000;
import inkstrata.colour.ColourName;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.planar.Paint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
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
 * lists, or one that such an ink names, is printed with that ink; the rest becomes new inks, near colours joined by {@link SharedInks}.
 *
 * @param inks every ink that is used
 * @param inkOf for each colour that shows; empty for bare sheet
 * @param notes what was joined
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
     * @param edges how much edge colours share
     * @throws inkstrata.job.JobException if the job wants fewer inks than it lists
     */
    static Palette mix(Map<Rgb, Double> visible, SharedEdges edges, Job job) {
        Map<Rgb, Optional<Ink>> inkOf = new TreeMap<>();
        Map<Rgb, Double> rest = new TreeMap<>();
        Set<Ink> used = new LinkedHashSet<>();
        new TreeMap<>(visible).forEach((colour, area) -> {
            Optional<Ink> listed = listed(colour, job);
            double toSheet = Ciede2000.difference(colour, job.sheetColour());
            double toInk = listed.map(ink -> Ciede2000.difference(colour, ink.swatch()))
                    .orElse(Double.POSITIVE_INFINITY);
            boolean isTold = job.also().containsKey(colour);
            boolean isBare = Job.BARE_SHEET.equals(job.also().get(colour));
            if (isBare || (!isTold && toSheet <= job.merge().within() && toSheet <= toInk)) {
                inkOf.put(colour, Optional.empty());
            } else if (isTold || toInk <= job.merge().within()) {
                inkOf.put(colour, listed);
                used.add(listed.orElseThrow());
            } else {
                rest.put(colour, area);
            }
        });
        Set<String> names = new HashSet<>();
        Set<Rgb> swatches = new HashSet<>(List.of(job.sheetColour()));
        job.inks().forEach(ink -> {
            names.add(ink.name());
            swatches.add(ink.swatch());
        });
        job.inks().stream().filter(ink -> ink.from().isPresent()).forEach(used::add);
        List<Ink> inks =
                new ArrayList<>(job.inks().stream().filter(used::contains).toList());
        for (List<Rgb> group : new SharedInks(rest, edges, job).groups(inks)) {
            Optional<Ink> known = inks.stream()
                    .filter(ink -> ink.from().isEmpty() && group.contains(ink.swatch()))
                    .findFirst();
            Ink ink = known.orElseGet(() -> {
                Rgb swatch = SharedInks.swatch(group, rest, swatches);
                swatches.add(swatch);
                return Ink.ordinary(unused(ColourName.of(swatch), names), swatch);
            });
            if (known.isEmpty()) {
                inks.add(ink);
            }
            group.forEach(colour -> inkOf.putIfAbsent(colour, Optional.of(ink)));
        }
        inkOf.keySet().retainAll(visible.keySet());
        return of(inks, inkOf, edges, job);
    }

    private static Palette of(List<Ink> inks, Map<Rgb, Optional<Ink>> inkOf, SharedEdges edges, Job job) {
        List<Note> notes = new ArrayList<>();
        inkOf.forEach((colour, ink) -> notes.addAll(printedWith(colour, ink, job)));
        notes.addAll(edges.lost(inkOf));
        return new Palette(inks, inkOf, notes);
    }

    /**
     * The same, but of inks that nobody has named and that would be called alike the first printed gets the first number.
     *
     * @param printed all of them, first printed first
     */
    Palette numbered(List<Ink> printed, SharedEdges edges, Job job) {
        Set<String> names = new HashSet<>();
        job.inks().forEach(ink -> names.add(ink.name()));
        Map<Ink, Ink> renamed = new HashMap<>();
        for (Ink ink : printed) {
            boolean isListed = job.inks().contains(ink);
            renamed.put(ink, isListed ? ink : ink.withName(unused(ColourName.of(ink.swatch()), names)));
        }
        Map<Rgb, Optional<Ink>> newInkOf = new TreeMap<>();
        inkOf.forEach((colour, ink) -> newInkOf.put(colour, ink.map(renamed::get)));
        return of(inks.stream().map(renamed::get).toList(), newInkOf, edges, job);
    }

    /** A warning for each ink that the job lists, the artwork does not show and the plan does not print. */
    List<Note> printsNowhere(List<Ink> printed, Map<Rgb, Double> visible, Job job) {
        return job.inks().stream()
                .filter(ink -> !inks.contains(ink) && !printed.contains(ink))
                .map(ink -> printsNowhere(ink, visible.keySet(), job))
                .toList();
    }

    /** A paint as it is printed; one of a drawing of its own stays what it is. */
    Paint asPrinted(Paint paint, Job job) {
        return paint.drawing().isEmpty() ? new Paint(asPrinted(paint.colour(), job)) : paint;
    }

    /**
     * The colour a place is printed in: its ink's swatch, or the sheet's colour. A colour that shows nowhere takes the
     * nearest ink or the sheet within {@code merge}, else it stays as it is and has no ink.
     */
    private Rgb asPrinted(Rgb colour, Job job) {
        Optional<Ink> known = inkOf.get(colour);
        if (known != null) {
            return known.map(Ink::swatch).orElse(job.sheetColour());
        }
        return Stream.concat(
                        Stream.of(job.sheetColour()),
                        inks.stream().filter(ink -> ink.from().isEmpty()).map(Ink::swatch))
                .filter(swatch ->
                        Ciede2000.difference(colour, swatch) <= job.merge().within())
                .min(Comparator.comparingDouble(swatch -> Ciede2000.difference(colour, swatch)))
                .orElse(colour);
    }

    /** The ink of the job that names a colour, else the nearest to it. */
    private static Optional<Ink> listed(Rgb colour, Job job) {
        String told = job.also().get(colour);
        return job.inks().stream()
                .filter(ink -> ink.from().isEmpty())
                .filter(ink -> told == null || ink.name().equals(told))
                .min(Comparator.comparingDouble(ink -> Ciede2000.difference(colour, ink.swatch())));
    }

    private static String unused(String name, Set<String> names) {
        String candidate = name;
        for (int i = 2; !names.add(candidate); i++) {
            candidate = name + " " + i;
        }
        return candidate;
    }

    /** A note on what a colour is printed with, if that has another colour, or is the bare sheet; a warning if it is far off. */
    private static List<Note> printedWith(Rgb colour, Optional<Ink> ink, Job job) {
        Rgb swatch = ink.map(Ink::swatch).orElse(job.sheetColour());
        double apart = Ciede2000.difference(colour, swatch);
        if (ink.isPresent() && apart == 0) {
            return List.of();
        }
        String text = ink.isPresent()
                ? " is printed with ink '" + ink.get().name() + "' (" + swatch + "), CIEDE2000 " + rounded(apart)
                        + " from it."
                : " is the colour of the bare sheet" + (apart == 0 ? "" : " (CIEDE2000 " + rounded(apart) + " from it)")
                        + " and needs no ink.";
        return List.of(
                apart > job.merge().within()
                        ? Note.warning(Source.UNKNOWN, colour + text)
                        : Note.info(Source.UNKNOWN, colour + text));
    }

    /** Colours that are printed with an ink of another colour, with its name, or that are bare sheet of another colour. */
    Map<Rgb, String> joined(Job job) {
        Map<Rgb, String> joined = new TreeMap<>();
        inkOf.forEach((colour, ink) -> {
            if (!colour.equals(ink.map(Ink::swatch).orElse(job.sheetColour()))) {
                joined.put(colour, ink.map(Ink::name).orElse(Job.BARE_SHEET));
            }
        });
        return joined;
    }

    private static Note printsNowhere(Ink ink, Set<Rgb> colours, Job job) {
        double toSheet = Ciede2000.difference(ink.swatch(), job.sheetColour());
        if (toSheet <= job.merge().within()) {
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
