package inkstrata.job;

import inkstrata.colour.InkFilm;
import inkstrata.colour.Rgb;
import inkstrata.colour.Spectrum;
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
 * @param side the side that is printed, unless an ink says otherwise
 * @param sheetFilm what the sheet reflects and lets through
 * @param artworkWidthMm true width of the picture, if it is set here
 * @param artworkPlace top left corner of the picture on the sheet; empty means centred
 * @param registerMm the most by which any two pulls may be off from each other
 * @param seamMm strips between shapes that are no wider, and that nobody drew, are closed; 0 for none
 * @param merge which colours share an ink
 * @param inks the inks that are listed; the rest is made from the artwork's colours
 * @param also colours of the artwork that an ink prints beside its own, with its name; {@link #BARE_SHEET} for the sheet
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
        InkFilm sheetFilm,
        OptionalDouble artworkWidthMm,
        Optional<Place> artworkPlace,
        double registerMm,
        double seamMm,
        Merge merge,
        List<Ink> inks,
        Map<Rgb, String> also,
        AskedOrder order,
        Edition edition,
        Map<String, String> films,
        Map<String, PluginSettings> use) {

    /** Stands for the bare sheet where an ink's name is asked for. */
    public static final String BARE_SHEET = "";

    /** Most register error by hand on ordinary sheets (common practice, no source). */
    public static final double DEFAULT_REGISTER_MM = 0.4;

    /** Narrower than any mesh holds, and wider than what rounded coordinates or a tracer leave (our own choice). */
    public static final double DEFAULT_SEAM_MM = 0.05;

    public static final Job DEFAULT = new Job(
            "",
            "",
            Optional.empty(),
            Rgb.WHITE,
            Side.FRONT,
            InkFilm.of(Spectrum.WHITE, 1),
            OptionalDouble.empty(),
            Optional.empty(),
            DEFAULT_REGISTER_MM,
            DEFAULT_SEAM_MM,
            Merge.DEFAULT,
            List.of(),
            Map.of(),
            AskedOrder.NONE,
            Edition.DEFAULT,
            Map.of(),
            Map.of());

    public Job {
        inks = List.copyOf(inks);
        also = Map.copyOf(new TreeMap<>(also));
        films = Map.copyOf(new TreeMap<>(films));
        use = Map.copyOf(new TreeMap<>(use));
    }

    /** The same, but other colours share inks. */
    public Job withMerge(Merge newMerge) {
        return new Job(
                file,
                title,
                sheet,
                sheetColour,
                side,
                sheetFilm,
                artworkWidthMm,
                artworkPlace,
                registerMm,
                seamMm,
                newMerge,
                inks,
                also,
                order,
                edition,
                films,
                use);
    }

    /** The same, but the picture is so wide, in millimetres. */
    public Job withArtworkWidth(double millimetres) {
        return new Job(
                file,
                title,
                sheet,
                sheetColour,
                side,
                sheetFilm,
                OptionalDouble.of(millimetres),
                artworkPlace,
                registerMm,
                seamMm,
                merge,
                inks,
                also,
                order,
                edition,
                films,
                use);
    }

    /** Settings for the plug-in of that id; none if the job has none. */
    public PluginSettings settingsFor(String pluginId) {
        return use.getOrDefault(pluginId, PluginSettings.NONE);
    }
}
