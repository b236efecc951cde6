package inkstrata.separation;

import inkstrata.measure.LengthText;
import inkstrata.measure.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far the pulls of a set may be off from each other before paper shows between inks, and whether that is as far as was asked for: what
 * a printmaker must know before a screen is exposed.
 *
 * @param askedMm the job's register, in millimetres
 * @param heldMm pulls may be so far off, in millimetres; never more than was proved. Empty if there are no two inks that could part
 * @param plannedMm how far the films of the plan hold, where this is a verdict on others that hold less; else empty
 * @param parting where paper shows first beyond that; empty if nothing was found, however far was looked: then {@code heldMm} and more holds
 * @param obstacles what makes the set unusable and must be mended before anything else counts, each in a few words; the rest of the
 *     verdict says what holds once that is done
 * @param inks names of those that were looked at, in print order
 * @param notCounted names of inks that keep no paper from showing: they cover everything, cannot be seen on it, or are only a ground
 */
public record Verdict(
        double askedMm,
        OptionalDouble heldMm,
        OptionalDouble plannedMm,
        Optional<Parting> parting,
        List<String> obstacles,
        List<String> inks,
        List<String> notCounted) {
    /** What a verdict comes to, worst first. */
    public enum Answer {
        NOT_READY,
        DOES_NOT_HOLD,
        HOLDS,
        NOTHING_TO_REGISTER
    }

    /**
     * A place where inks part.
     *
     * @param place on the sheet
     * @param between the inks that part; those that print over each other joined by a plus sign
     */
    public record Parting(Place place, List<String> between) {
        public Parting {
            between = List.copyOf(between);
        }
    }

    public Verdict {
        obstacles = List.copyOf(obstacles);
        inks = List.copyOf(inks);
        notCounted = List.copyOf(notCounted);
    }

    public Answer answer() {
        if (!obstacles.isEmpty()) {
            return Answer.NOT_READY;
        }
        if (heldMm.isEmpty()) {
            return Answer.NOTHING_TO_REGISTER;
        }
        return heldMm.getAsDouble() < askedMm ? Answer.DOES_NOT_HOLD : Answer.HOLDS;
    }

    /** The same with more that must be mended first. */
    public Verdict withObstacles(List<String> more) {
        List<String> all = new ArrayList<>(obstacles);
        all.addAll(more);
        return new Verdict(askedMm, heldMm, plannedMm, parting, all, inks, notCounted);
    }

    /** One line that cannot be misread. */
    public String line() {
        String rest = heldMm.isPresent() ? held(heldMm.getAsDouble()) : nothing();
        return obstacles.isEmpty() ? rest : "Not ready: " + joined(obstacles) + ". Once that is mended: " + rest;
    }

    private String held(double held) {
        String asked = " (asked: " + LengthText.asked(askedMm)
                + (plannedMm.isPresent() ? ", as planned: " + LengthText.down(plannedMm.getAsDouble()) : "")
                + (notCounted.isEmpty() ? "" : "; " + joined(notCounted) + " not counted") + ")";
        if (held < askedMm) {
            String from = LengthText.down(held);
            return "Does not hold: paper shows "
                    + (from.equals("0.00") ? "as soon as pulls are off" : "from " + from + " mm on") + asked + where();
        }
        // What is asked may have more digits than are said, and then it would seem not to hold.
        String upTo =
                Double.parseDouble(LengthText.down(held)) < askedMm ? LengthText.asked(askedMm) : LengthText.down(held);
        return "Pulls may be " + upTo + (parting.isEmpty() ? " mm off, and more," : " mm off") + " before paper shows"
                + asked + where();
    }

    private String where() {
        return parting.map(first -> String.format(
                        Locale.ROOT,
                        ", first between %s, %.1f mm from the left edge of the sheet, %.1f from its top.",
                        joined(first.between()),
                        first.place().x(),
                        first.place().y()))
                .orElse(".");
    }

    private String nothing() {
        if (!notCounted.isEmpty()) {
            return "Nothing to register: no two inks have to fit each other (" + joined(notCounted) + " not counted).";
        }
        return "Nothing to register: " + (inks.isEmpty() ? "no ink prints." : "only " + joined(inks) + " prints.");
    }

    private static String joined(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
