package inkstrata.positive;

import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.NearestWord;
import inkstrata.measure.PaperSize;
import inkstrata.measure.Size;
import inkstrata.plugin.Option;
import inkstrata.plugin.Options;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a job may say about the files that films become.
 *
 * @param kinds which there are
 * @param perInch pixels to the inch, where films become pixels
 * @param tile size of the sheets that larger films are cut into, if they are
 */
record FilmFormats(Set<Kind> kinds, int perInch, Optional<Size> tile) {
    /** One kind of file. */
    enum Kind {
        SVG("svg"),
        PDF("pdf"),
        PDF_INKS("pdf"),
        TIFF("tif"),
        PNG("png");

        private final String ending;

        Kind(String ending) {
            this.ending = ending;
        }

        /** Of the file's name, without a dot. */
        String ending() {
            return ending;
        }

        /** As a job file has it. */
        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Coarser films show steps, finer ones no film printer makes (common practice, no source). */
    private static final Option.Range PER_INCH = new Option.Range(600, 2_880);

    static final List<Option> OPTIONS = List.of(
            Option.text("formats", "svg", "one or several of " + words(", ") + ", with commas between them"),
            Option.number("resolution", "1440", PER_INCH, "pixels to the inch of tiff and png"),
            Option.text("tiles", "none", "size of the sheets that larger films are cut into, such as A4"));

    /**
     * Reads the job.
     *
     * @throws JobException if it asks for something unknown
     */
    static FilmFormats of(Positive positive, Job job) {
        Options options = Options.of(positive, job);
        double perInch = options.number("resolution").orElseThrow();
        if (perInch != Math.rint(perInch)) {
            throw fault(job, positive, "resolution", "'" + perInch + "' is not whole. Write a whole number.");
        }
        return new FilmFormats(
                kinds(options.text("formats"), positive, job), (int) perInch, tile(options, positive, job));
    }

    boolean has(Kind kind) {
        return kinds.contains(kind);
    }

    private static Set<Kind> kinds(String text, Positive positive, Job job) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        if (text.isBlank()) {
            throw fault(job, positive, "formats", "there is none. Name one or several of " + words(", ") + ".");
        }
        for (String word : text.strip().split("[,\\s]+", -1)) {
            kinds.add(Arrays.stream(Kind.values())
                    .filter(kind -> kind.word().equals(word))
                    .findFirst()
                    .orElseThrow(() -> fault(
                            job,
                            positive,
                            "formats",
                            "'" + word + "' is none of " + words(", ") + "."
                                    + NearestWord.question(
                                            word,
                                            Arrays.stream(Kind.values())
                                                    .map(Kind::word)
                                                    .toList()))));
        }
        return kinds;
    }

    private static Optional<Size> tile(Options options, Positive positive, Job job) {
        String text = options.text("tiles");
        if (text.equals("none")) {
            return Optional.empty();
        }
        try {
            Size size = PaperSize.parse(text);
            if (Math.min(size.width(), size.height()) < Tiling.LEAST_MM) {
                throw new IllegalArgumentException("'" + text + "' is too small: tiles need " + Tiling.LEAST_MM
                        + " mm both ways, for their overlaps and margins.");
            }
            return Optional.of(size);
        } catch (IllegalArgumentException e) {
            throw fault(job, positive, "tiles", e.getMessage());
        }
    }

    private static JobException fault(Job job, Positive positive, String option, String message) {
        int line = job.settingsFor(positive.id()).values().get(option).line();
        return new JobException(job.file(), line, positive.id() + "." + option + ": " + message);
    }

    private static String words(String between) {
        return Arrays.stream(Kind.values()).map(Kind::word).collect(Collectors.joining(between));
    }
}
