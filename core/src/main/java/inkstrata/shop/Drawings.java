package inkstrata.shop;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Source;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.plan.Ink;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Drawings of their own: parts of the artwork, or other files, whose place is known whatever lies above.
 *
 * <p>What an ink is bound to leaves the picture; what a planner asks about stays in it, and is there twice.
 */
public final class Drawings {
    /** Pages of two files may differ by so much, in millimetres (our own choice). */
    private static final double SAME_PAGE_MM = 0.1;

    private Drawings() {}

    /** Whether a name of a drawing is that of an element of the artwork, {@code #id}, and not a file's. */
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
     * @throws JobException if there is no such element
     */
    static Artwork bound(Artwork artwork, Set<String> asked, Job job) {
        List<FlatShape> shapes = new ArrayList<>();
        Set<String> found = new TreeSet<>();
        for (FlatShape shape : artwork.shapes()) {
            List<Ink> bound = job.inks().stream()
                    .filter(ink -> ink.from().filter(from -> isIn(from, shape)).isPresent())
                    .toList();
            bound.forEach(ink -> {
                found.add(ink.from().orElseThrow());
                shapes.add(shape.in(ink.name()));
            });
            if (bound.isEmpty()) {
                shapes.add(shape);
            }
            for (String name : asked) {
                if (isIn(name, shape)) {
                    found.add(name);
                    shapes.add(shape.in(name));
                }
            }
        }
        Stream.concat(job.inks().stream().map(Ink::from).flatMap(Optional::stream), asked.stream())
                .filter(name -> isElement(name) && !found.contains(name))
                .findFirst()
                .ifPresent(name -> {
                    throw new JobException(job.file(), 0, missing(name, artwork));
                });
        return artwork.withShapes(shapes);
    }

    private static boolean isIn(String name, FlatShape shape) {
        if (!isElement(name) || !shape.drawing().isEmpty()) {
            return false;
        }
        String id = name.substring(1);
        return shape.source().id().equals(id) || shape.source().groups().contains(id);
    }

    private static String missing(String name, Artwork artwork) {
        Set<String> known = new TreeSet<>();
        for (FlatShape shape : artwork.shapes()) {
            Source source = shape.source();
            source.groups().forEach(known::add);
            if (!source.id().isEmpty()) {
                known.add(source.id());
            }
        }
        return "'" + name + "': no element of " + artwork.name() + " that shows has that id. "
                + (known.isEmpty()
                        ? "None has an id: give the group one."
                        : "There are "
                                + String.join(
                                        ", ",
                                        known.stream()
                                                .limit(20)
                                                .map(id -> "#" + id)
                                                .toList()) + (known.size() > 20 ? ", …" : "") + ".");
    }
}
