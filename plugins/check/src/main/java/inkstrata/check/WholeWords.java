package inkstrata.check;

import inkstrata.check.WholeFilm.Fault;
import inkstrata.planar.Affine;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Subject;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is wrong with films as wholes, in words.
 *
 * @param all films that there are
 */
record WholeWords(Intent intent, List<WholeFilm> all) {
    WholeWords {
        all = List.copyOf(all);
    }

    Finding finding(WholeSet set) {
        Finding finding = switch (set.fault()) {
            case EMPTY -> empty(set);
            case SWAPPED -> swapped(set);
            case NEGATIVE ->
                fault(
                        set,
                        is(set, "a negative", "negatives").and(": clear where ink is to print, and black elsewhere"),
                        "black where ink is to print",
                        "Invert " + them(set) + ", or have " + them(set) + " output as "
                                + (set.films().size() > 1 ? "positives." : "a positive."));
            case MIRRORED -> mirrored(set);
            case SIZE -> size(set);
            case STRETCHED -> stretched(set);
            case TURNED -> turned(set);
            case PLACE -> place(set);
            case SPREAD, CHOKED -> allRound(set);
            case NONE -> throw new IllegalArgumentException("nothing is wrong with " + set);
        };
        Subject subject = set.films().size() > 1
                ? Subject.ALL
                : Subject.ink(intent.inks().get(set.first().pull()))
                        .withPull(set.first().pull())
                        .withFile(set.first().film().file());
        return finding.about(subject);
    }

    private Finding empty(WholeSet set) {
        Region own = intent.planned().get(set.first().pull());
        return fault(
                        set,
                        new Words("nothing on " + file(set) + " prints", ""),
                        String.format(Locale.ROOT, "%.1f mm² of ink", own.areaMm2()),
                        "Check that the drawing was not left out, clipped away or hidden when the film was saved.")
                .withQuantity(Quantity.of(0, own.areaMm2(), Unit.SQUARE_MILLIMETRES))
                .withArea(own);
    }

    private Finding swapped(WholeSet set) {
        WholeFilm film = set.first();
        Optional<WholeFilm> same = all.stream()
                .filter(other -> other.pull() == film.prints() && other.prints() == film.prints())
                .filter(this::printsMostOfItsOwn)
                .findFirst();
        boolean isExchanged =
                all.stream().anyMatch(other -> other.pull() == film.prints() && other.prints() == film.pull());
        String remedy = isExchanged
                ? (film.place().isMirrored() ? "Mirror it and exchange" : "Exchange")
                        + " the films, or say under films in the job file which is which."
                : "Put the film of " + intent.inks().get(film.pull())
                        + " in its place, or say under films in the job file which file it is.";
        return fault(
                set,
                new Words(
                        file(set) + " prints what " + intent.inks().get(film.prints()) + " is to print"
                                + (film.place().isMirrored() ? ", mirrored" : ""),
                        same.map(other -> ", as " + other.film().file() + " does")
                                .orElse("")),
                "what " + intent.inks().get(film.pull()) + " is to print",
                remedy);
    }

    /** Whether it is what another film can be a copy of. */
    private boolean printsMostOfItsOwn(WholeFilm film) {
        Region own = intent.planned().get(film.pull());
        return WholeFilm.painted(film.mended()).intersection(own).areaMm2() > own.areaMm2() / 2;
    }

    private Finding mirrored(WholeSet set) {
        String remedy = set.isAll()
                ? "Output them again without mirroring, or set sheet.print: back in the job file if the print is to be seen through"
                        + " the sheet. Turning films over on the screen would leave a gap between black and emulsion, and light creeps into it."
                : "Mirror " + them(set) + ": the other films read as the print does.";
        return fault(
                set,
                is(set, "mirrored", "mirrored"),
                "a film that reads as the print does, or as the job says",
                set.films().size() == 1 && all.size() == 1 ? "Mirror it, or set sheet.print in the job file." : remedy);
    }

    private Finding size(WholeSet set) {
        double larger = set.first().larger();
        Optional<UnitSlip> slip = UnitSlip.of(larger);
        String why = slip.map(unit -> ", as with " + unit.words()).orElse("");
        return fault(
                        set,
                        is(
                                        set,
                                        String.format(Locale.ROOT, "%.4f times as large as the artwork", larger),
                                        String.format(Locale.ROOT, "%.4f times as large as the artwork", larger))
                                .and(why + bar(set, larger)),
                        "1.0000 times",
                        slip.isPresent()
                                ? "Write width and height with their unit into "
                                        + (set.films().size() > 1 ? "each film" : "it")
                                        + ", mm is best, and hold a ruler to it."
                                : "Write width and height in mm, print at 100 %, and hold a ruler to it.")
                .withQuantity(Quantity.of(larger, 1, Unit.TIMES));
    }

    /** What the bar of 100 mm tells. */
    private static String bar(WholeSet set, double larger) {
        OptionalDouble bar = ScaleEvidence.barMm(set.first().film().around());
        if (bar.isEmpty()) {
            return "";
        }
        boolean isWithThePicture = Math.abs(bar.getAsDouble() / (100 * larger) - 1) < 0.002;
        return String.format(Locale.ROOT, "; its bar of 100 mm is %.2f mm long", bar.getAsDouble())
                + (isWithThePicture ? "" : ", so the picture alone was scaled");
    }

    private Finding stretched(WholeSet set) {
        Affine film = set.first().place().inverse();
        double wide = Math.hypot(film.xx(), film.yx());
        double high = Math.abs(film.determinant()) / wide;
        double slant = Math.toDegrees(
                Math.asin((film.xx() * film.xy() + film.yx() * film.yy()) / (wide * Math.hypot(film.xy(), film.yy()))));
        String size =
                String.format(Locale.ROOT, "%.4f times as wide and %.4f times as high as the artwork", wide, high);
        String words = Math.abs(slant) < 0.01
                ? size
                : size + String.format(Locale.ROOT, ", and slanted by %.3f degrees", Math.abs(slant));
        double worst = Math.abs(wide - 1) > Math.abs(high - 1) ? wide : high;
        return fault(
                        set,
                        is(set, words, words),
                        "1.0000 times both ways",
                        "Output " + them(set) + " again at 100 % both ways: it is not the size alone that is wrong.")
                .withQuantity(Quantity.of(worst, 1, Unit.TIMES));
    }

    private Finding turned(WholeSet set) {
        Affine place = set.first().place();
        double turn = -Math.toDegrees(Math.atan2(place.yx(), place.xx()));
        String words = String.format(
                Locale.ROOT, "turned by %.3f degrees %s", Math.abs(turn), turn > 0 ? "clockwise" : "anticlockwise");
        return fault(set, is(set, words, words), "as the drawing lies", "Turn all of it back.")
                .withQuantity(Quantity.of(Math.abs(turn), 0, Unit.DEGREES));
    }

    private Finding place(WholeSet set) {
        double[] moved = WholeSet.moved(set.first(), intent);
        String where = Direction.tooFar(moved[0], moved[1]);
        return fault(
                        set,
                        new Words(file(set) + (set.films().size() > 1 ? " lie " : " lies ") + where, ""),
                        "where the drawing has it",
                        "Move all of it back.")
                .withQuantity(Quantity.of(Math.hypot(moved[0], moved[1]), 0, Unit.MILLIMETRES));
    }

    private Finding allRound(WholeSet set) {
        double offset = Math.abs(set.first().offsetMm());
        boolean isSpread = set.fault() == Fault.SPREAD;
        String words = String.format(Locale.ROOT, "%s by %.2f mm all round", isSpread ? "spread" : "choked", offset);
        return fault(
                        set,
                        is(set, words, words),
                        "outlines where the drawing has them, and the planned trap",
                        isSpread
                                ? "Take strokes off its areas, or expose for less time: black should end where the drawing does."
                                : "Look for white strokes around its areas, or light that crept under the black: it should end where the drawing does.")
                .withSeverity(offset < Laid.THIN_MM ? Severity.WARNING : Severity.ERROR)
                .withQuantity(Quantity.of(offset, 0, Unit.MILLIMETRES));
    }

    /** The subject of a sentence, what is said of it, and what is added. */
    private record Words(String start, String end) {
        Words and(String more) {
            return new Words(start, end + more);
        }

        @Override
        public String toString() {
            return start + end;
        }
    }

    private Words is(WholeSet set, String one, String several) {
        return new Words(set.films().size() > 1 ? file(set) + " are " + several : file(set) + " is " + one, "");
    }

    private static String them(WholeSet set) {
        return set.films().size() > 1 ? "them" : "it";
    }

    private String file(WholeSet set) {
        List<String> names =
                set.films().stream().map(film -> film.film().file()).sorted().toList();
        if (names.size() == 1) {
            return names.get(0);
        }
        return set.isAll()
                ? "all " + names.size() + " films"
                : names.size() + " films (" + String.join(", ", names) + ")";
    }

    private Finding fault(WholeSet set, Words measured, String limit, String remedy) {
        boolean isHarmless = set.isAll() && set.fault().keepsTheFit();
        return fault(set, measured.toString() + (isHarmless ? "; they fit each other" : ""), limit, remedy)
                .withSeverity(isHarmless ? Severity.WARNING : Severity.ERROR);
    }

    private Finding fault(WholeSet set, String measured, String limit, String remedy) {
        return new Finding(
                Severity.ERROR, set.fault().rule(), intent.middle(set.first().pull()), measured, limit, remedy);
    }
}
