package inkstrata.plan;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Lab;
import inkstrata.colour.Spectrum;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What inks look like over each other on a sheet, before white; a guide, as {@link inkstrata.colour.InkFilm} is.
 *
 * <p>Remembers what it was asked, by the names of inks.
 */
public final class Prediction {
    private final Sheet sheet;
    private final Map<List<String>, Spectrum> known = new HashMap<>();
    private final Map<List<String>, Lab> colours = new HashMap<>();

    public Prediction(Sheet sheet) {
        this.sheet = sheet;
    }

    /**
     * What is seen from the front.
     *
     * @param farthestFirst every ink that prints there, those on the back of the sheet before those on its front
     */
    public Spectrum seen(List<Ink> farthestFirst) {
        return seen(farthestFirst, names(farthestFirst));
    }

    /** The same as a colour. */
    public Lab lab(List<Ink> farthestFirst) {
        List<String> names = names(farthestFirst);
        Lab found = colours.get(names);
        if (found == null) {
            found = seen(farthestFirst, names).lab();
            colours.put(names, found);
        }
        return found;
    }

    /** How far two piles of inks are apart (CIEDE2000). */
    public double difference(List<Ink> one, List<Ink> other) {
        return Ciede2000.difference(lab(one), lab(other));
    }

    /** How far inks over others look from the topmost one alone on the sheet (CIEDE2000). */
    public double change(Ink top, List<Ink> beneathFarthestFirst) {
        return difference(List.of(top), with(top, beneathFarthestFirst));
    }

    /** How far inks over others look from the topmost one's swatch, the artwork's colour (CIEDE2000). */
    public double fromSwatch(Ink top, List<Ink> beneathFarthestFirst) {
        return Ciede2000.difference(Lab.of(top.swatch()), lab(with(top, beneathFarthestFirst)));
    }

    private static List<Ink> with(Ink top, List<Ink> beneathFarthestFirst) {
        List<Ink> all = new ArrayList<>(beneathFarthestFirst);
        all.add(top);
        return all;
    }

    private Spectrum seen(List<Ink> inks, List<String> names) {
        Spectrum found = known.get(names);
        if (found == null) {
            int below = inks.size() - 1;
            if (below < 0) {
                found = sheet.film().over(Spectrum.WHITE);
            } else {
                Ink top = inks.get(below);
                List<Ink> rest = inks.subList(0, below);
                found = sheet.side(top) == Side.FRONT
                        ? top.film().over(seen(rest, names.subList(0, below)))
                        : sheet.film().over(top.film().over(behind(rest)));
            }
            known.put(List.copyOf(names), found);
        }
        return found;
    }

    /** What the back of the sheet would show without the sheet. */
    private static Spectrum behind(List<Ink> inks) {
        Spectrum found = Spectrum.WHITE;
        for (Ink ink : inks) {
            found = ink.film().over(found);
        }
        return found;
    }

    private static List<String> names(List<Ink> inks) {
        return inks.stream().map(Ink::name).toList();
    }
}
