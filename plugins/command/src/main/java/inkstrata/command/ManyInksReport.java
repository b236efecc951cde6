package inkstrata.command;

import inkstrata.shop.FewerInks;
import inkstrata.shop.ManyInks;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says that a drawing has more colours than anybody prints, and what fewer inks would lose. */
final class ManyInksReport {
    private ManyInksReport() {}

    /** What is wrong, in one line. */
    static String head(String artwork, ManyInks many) {
        return artwork + ": the drawing has colours for " + many.inks() + " inks, more than anybody prints (over "
                + ManyInks.MOST + ").";
    }

    /** A row for each choice, and what else can be done. */
    static List<String> choices(ManyInks many) {
        Table table = new Table("rrrrl", "inks", "colours joined", "largest difference", "mean by area", "ask for it");
        for (FewerInks fewer : many.choices()) {
            table.row(
                    String.valueOf(fewer.inks()),
                    String.valueOf(fewer.joined()),
                    String.format(Locale.ROOT, "%.1f", fewer.largest()),
                    String.format(Locale.ROOT, "%.1f", fewer.mean()),
                    "--inks " + fewer.inks());
        }
        List<String> lines = new ArrayList<>(many.choices().isEmpty() ? List.of() : table.lines());
        lines.add("  Differences (CIEDE2000) are those of a colour to the ink it would be printed with. --inks "
                + many.inks() + " keeps all of them; so does a job file that lists them.");
        return lines;
    }
}
