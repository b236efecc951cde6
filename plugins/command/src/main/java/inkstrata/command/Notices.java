package inkstrata.command;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.separation.Finding;
import java.util.Locale;

/** Notes and findings as lines. */
final class Notices {
    /** How a limit begins that is one; other words say what should be there. */
    private static final String NUMBER = "(?:(?:register|at most|at least|up to|less than|more than|CIEDE2000) )?\\d.*";

    private Notices() {}

    /** {@code warning: boats.svg:12 <path id="sail">: what} */
    static String line(String artwork, Note note) {
        Source source = note.source();
        String where = source.line() > 0 ? artwork + ":" + source.line() + " " + source + ": " : "";
        return lower(note.severity()) + ": " + where + note.text();
    }

    /** {@code warning at 12.0, 30.5 mm (rule): measured, limit 0.2 mm. What to do.}; a limit that is no number is what should be there. */
    static String line(Finding finding) {
        return String.format(
                Locale.ROOT,
                "%s at %.1f, %.1f mm (%s): %s%s. %s",
                lower(finding.severity()),
                finding.place().x(),
                finding.place().y(),
                finding.rule(),
                finding.measured(),
                finding.limit().matches(NUMBER)
                        ? ", limit " + finding.limit()
                        : " (should be: " + finding.limit() + ")",
                finding.remedy());
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
