package inkstrata.overprint;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.InkFilm;
import inkstrata.colour.Lab;
import inkstrata.colour.Spectrum;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What inks look like over each other on the sheet. */
final class Prediction {
    private final Spectrum sheet;
    private final Map<Ink, InkFilm> films = new HashMap<>();
    private final Map<List<Ink>, Lab> known = new HashMap<>();

    Prediction(PlanningTable table) {
        sheet = Spectrum.of(table.sheet().colour());
        table.inks().forEach(ink -> films.put(ink, ink.film()));
    }

    /** How far an ink over others looks from that ink alone on the sheet (CIEDE2000). */
    double change(Ink top, List<Ink> farthestFirst) {
        List<Ink> all = new ArrayList<>(farthestFirst);
        all.add(top);
        return Ciede2000.difference(seen(List.of(top)), seen(all));
    }

    private Lab seen(List<Ink> farthestFirst) {
        return known.computeIfAbsent(farthestFirst, this::over);
    }

    private Lab over(List<Ink> farthestFirst) {
        Spectrum seen = sheet;
        for (Ink ink : farthestFirst) {
            seen = films.get(ink).over(seen);
        }
        return seen.lab();
    }
}
