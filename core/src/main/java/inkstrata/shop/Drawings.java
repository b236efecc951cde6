package inkstrata.shop;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Layer;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.plan.Ink;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Drawings of their own: parts of the artwork, or other files, whose place is known whatever lies above.
 *
 * <p>What an ink is bound to leaves the picture; what a planner asks about stays in it, and is there twice where nothing hides it.
 */
public final class Drawings {
    /** Pages of two files may differ by so much, in millimetres (our own choice). */
    private static final double SAME_PAGE_MM = 0.1;

    private Drawings() {}

    /** Whether a name of a drawing is that of an element of the artwork, {@code #name}, and not a file's. */
    public static boolean isElement(String name) {
        return name.startsWith("#");
    }

    /**
     * An artwork over which a file's drawing lies.
     *
     * @param drawing read at true size
     * @param name under which planners know it
     * @throws JobException if the two are not drawn on pages of one size
     */
    public static Artwork over(Artwork artwork, Artwork drawing, String name, Job job) {
        if (Math.abs(artwork.frame().width() - drawing.frame().width()) > SAME_PAGE_MM
                || Math.abs(artwork.frame().height() - drawing.frame().height()) > SAME_PAGE_MM) {
            throw new JobException(
                    job.file(),
                    0,
                    String.format(
                            Locale.ROOT,
                            "%s is %.2f x %.2f mm and %s %.2f x %.2f mm. Draw both on pages of one size.",
                            drawing.name(),
                            drawing.frame().width(),
                            drawing.frame().height(),
                            artwork.name(),
                            artwork.frame().width(),
                            artwork.frame().height()));
        }
        Artwork there = drawing.movedBy(
                artwork.frame().x() - drawing.frame().x(),
                artwork.frame().y() - drawing.frame().y());
        return artwork.withShapes(
                Stream.concat(artwork.shapes().stream(), there.shapes().stream().map(shape -> shape.in(name)))
                        .toList());
    }

    /**
     * An artwork whose elements that inks are bound to, or that planners ask about, are drawings of their own.
     *
     * @param asked names that planners ask about
     * @throws JobException if there is no such element, or two have the same name
     */
    static Artwork bound(Artwork artwork, Set<String> asked, Job job) {
        if (Stream.concat(job.inks().stream().map(Ink::from).flatMap(Optional::stream), asked.stream())
                .noneMatch(Drawings::isElement)) {
            return artwork;
        }
        NamedLayers layers = NamedLayers.of(artwork, job);
        Map<Ink, Layer> ofInks = new LinkedHashMap<>();
        for (Ink ink : job.inks()) {
            ink.from().filter(Drawings::isElement).ifPresent(name -> ofInks.put(ink, layers.find(name)));
        }
        Map<String, Layer> ofPlanners = new LinkedHashMap<>();
        asked.stream().filter(Drawings::isElement).forEach(name -> ofPlanners.put(name, layers.find(name)));
        Map<String, Uncovered> kept = new LinkedHashMap<>();
        ofPlanners.forEach((name, layer) -> kept.put(name, new Uncovered(name, layer, job.sheetColour())));
        List<FlatShape> shapes = new ArrayList<>();
        for (FlatShape shape : artwork.shapes()) {
            List<Ink> bound = ofInks.keySet().stream()
                    .filter(ink -> isIn(ofInks.get(ink), shape))
                    .toList();
            bound.forEach(ink -> shapes.add(shape.in(ink.name())));
            if (bound.isEmpty()) {
                shapes.add(shape);
            }
            if (bound.isEmpty()) {
                kept.values().forEach(drawing -> drawing.add(shape, shapes));
            }
        }
        return artwork.withShapes(shapes);
    }

    static boolean isIn(Layer layer, FlatShape shape) {
        return shape.drawing().isEmpty()
                && shape.source().layers().stream().anyMatch(around -> around.number() == layer.number());
    }
}
