package inkstrata.shop;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What is in a drawing, before anything is planned.
 *
 * @param map the drawing's, down to the first paint; with its strips closed, if it is not too large to look for them
 * @param visible how much of each colour shows, in square millimetres
 * @param notes of reading, and of what was seen in the map
 */
public record Look(PlanarMap map, Map<Rgb, Double> visible, List<Note> notes) {
    /** Never throws for a drawing's size: what is too large for films is looked at all the same, but for strips. */
    public static Look at(Artwork artwork, Job job) {
        return at(artwork, job, DrawnCurves.MOST);
    }

    static Look at(Artwork artwork, Job job, int mostCurves) {
        long curves = DrawnCurves.count(artwork);
        boolean looksForStrips = job.seamMm() > 0 && curves <= mostCurves;
        PlanarMap map = PlanarMapper.map(
                artwork,
                MapSettings.DEFAULT
                        .withDepth(1)
                        .withBackdrop(job.sheetColour())
                        .withSeam(looksForStrips ? job.seamMm() : 0));
        Stream<Note> large = curves > mostCurves
                ? Stream.of(Note.warning(
                        Source.UNKNOWN,
                        String.format(
                                Locale.ROOT,
                                "%d lines and curves: strips between shapes were not looked for, and films can be made of no more than %d."
                                        + " Simplify the paths, merge shapes of one colour, or split the drawing.",
                                curves,
                                mostCurves)))
                : Stream.empty();
        List<Note> notes = Stream.of(
                        artwork.notes().stream(),
                        large,
                        SwallowedNotes.inPicture(map.swallowed()).stream(),
                        SeamNotes.inPicture(map, job).stream())
                .flatMap(part -> part)
                .toList();
        return new Look(map, Separator.visible(map), notes);
    }
}
