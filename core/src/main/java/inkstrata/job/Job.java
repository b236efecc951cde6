package inkstrata.job;

import inkstrata.colour.Rgb;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.plan.Ink;
import inkstrata.plan.Side;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What the printmaker asks for.
 *
 * @param file name of the job file, for messages; empty if there is none
 * @param title of the print; empty means the artwork's name
 * @param sheet size of the sheet; empty means the artwork with room for marks around it
 * @param sheetColour of the bare sheet
 * @param side the side that is printed
 * @param artworkWidthMm true width of the picture, if it is set here
 * @param artworkPlace top left corner of the picture on the sheet; empty means centred
 * @param registerMm the most by which any two pulls may be off from each other
 * @param merge fill colours closer than this (CIEDE2000) become one ink
 * @param inks the inks that are listed; the rest is made from the artwork's colours
 * @param order of the inks
 * @param edition how many prints
 * @param films by name of the ink, the file of its film in the folder that is checked; inks that are not named go by file name
 * @param use settings of plug-ins by id
 */
public record Job(
        String file,
        String title,
        Optional<Size> sheet,
        Rgb sheetColour,
        Side side,
        OptionalDouble artworkWidthMm,
        Optional<Place> artworkPlace,
        double registerMm,
        double merge,
        List<Ink> inks,
        AskedOrder order,
        Edition edition,
        Map<String, String> films,
        Map<String, PluginSettings> use) {

    /** Most register error by hand on ordinary sheets (common practice, no source). */
    public static final double DEFAULT_REGISTER_MM = 0.4;

    /** Two colours closer than this pass for equal in a print (common practice, no source). */
    public static final double DEFAULT_MERGE = 2.0;

    public static final Job DEFAULT = new Job(
            "",
            "",
            Optional.empty(),
            Rgb.WHITE,
            Side.FRONT,
            OptionalDouble.empty(),
            Optional.empty(),
            DEFAULT_REGISTER_MM,
            DEFAULT_MERGE,
            List.of(),
            AskedOrder.NONE,
            Edition.DEFAULT,
            Map.of(),
            Map.of());

    public Job {
        inks = List.copyOf(inks);
        films = Map.copyOf(new TreeMap<>(films));
        use = Map.copyOf(new TreeMap<>(use));
    }

    /** Settings for the plug-in of that id; none if the job has none. */
    public PluginSettings settingsFor(String pluginId) {
        return use.getOrDefault(pluginId, PluginSettings.NONE);
    }
}
