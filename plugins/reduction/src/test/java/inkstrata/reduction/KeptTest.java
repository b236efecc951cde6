package inkstrata.reduction;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Layer;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import inkstrata.measure.Place;
import inkstrata.planar.Region;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a job keeps, through the whole line, on generated drawings; which shape is on top at a place is found by going through them. */
class KeptTest {
    private static final int DRAWINGS = 40;
    private static final int PLACES = 120;
    private static final double SIDE_MM = 40;
    private static final List<Rgb> STEPS =
            List.of(Rgb.parse("#dddcd9"), Rgb.parse("#9b9a98"), Rgb.parse("#585858"), Rgb.parse("#1c1c1c"));
    private static final String INKS = """
            inks:
              - {name: one,   prints: "#dddcd9"}
              - {name: two,   prints: "#9b9a98"}
              - {name: three, prints: "#585858"}
              - {name: four,  prints: "#1c1c1c"}
            order: [one, two, three, four]
            """;
    private static final Job KEPT =
            JobReader.read("job.yaml", INKS + "use: {reduction: {enabled: true, keep: \"#moon, #lamp\"}}");

    /** One shape of a drawing, and whether it is kept; a step of -1 is white. */
    private record Drawn(Shape shape, int step, String layer) {
        FlatShape flat() {
            Rectangle2D box = shape.getBounds2D();
            Outline outline = shape instanceof Ellipse2D
                    ? disc(box.getCenterX(), box.getCenterY(), box.getWidth() / 2)
                    : Outline.rectangle(box.getX(), box.getY(), box.getWidth(), box.getHeight());
            List<Layer> layers =
                    layer.isEmpty() ? List.of() : List.of(new Layer("g", layer, List.of(), 1, layer.hashCode()));
            return FlatShape.opaque(
                    new Area(outline, FillRule.NONZERO),
                    step < 0 ? Rgb.WHITE : STEPS.get(step),
                    new Source("path", "", 1, layers));
        }
    }

    @Test
    void onlyItsOwnColourPrintsWhereItShowsAndElsewhereFilmsNest() {
        int seenKept = 0;
        int seenHidden = 0;
        for (long seed = 0; seed < DRAWINGS; seed++) {
            List<Drawn> drawn = drawing(new Random(seed));
            List<Optional<Region>> films = films(drawn, KEPT);
            Random random = new Random(seed + 1_000_000);
            for (int i = 0; i < PLACES; i++) {
                Place place = new Place(SIDE_MM * random.nextDouble(), SIDE_MM * random.nextDouble());
                Optional<Drawn> top = top(drawn, place);
                int step = top.map(Drawn::step).orElse(-1);
                boolean kept = top.filter(shape -> !shape.layer().isEmpty()).isPresent();
                seenKept += kept && step > 0 ? 1 : 0;
                seenHidden += !kept && step > 0 && isIn(drawn, place) ? 1 : 0;
                for (int film = 0; film < films.size(); film++) {
                    if (films.get(film).isEmpty()) {
                        continue;
                    }
                    assertThat(films.get(film).get().covers(place))
                            .as("drawing %d, film %d at %s, step %d, kept %s", seed, film, place, step, kept)
                            .isEqualTo(kept ? film == step : film <= step);
                }
            }
        }
        assertThat(seenKept).isGreaterThan(100);
        assertThat(seenHidden).isGreaterThan(100);
    }

    /**
     * What is hidden keeps nothing: taking it out changes no film, but for vertices that its outlines leave on those of others. Such a vertex lies up to
     * half a grid step beside the edge it is on.
     */
    @Test
    void whatIsHiddenIsNotKept() {
        for (long seed = 0; seed < DRAWINGS; seed++) {
            List<Drawn> drawn = drawing(new Random(seed));
            List<Drawn> hidden = new ArrayList<>(drawn);
            hidden.add(0, new Drawn(new Ellipse2D.Double(5, 5, 9, 9), 3, "moon"));
            hidden.add(1, new Drawn(new Rectangle2D.Double(4, 4, 11, 11), 1, ""));
            List<Drawn> without = new ArrayList<>(hidden);
            without.remove(0);
            without.add(0, new Drawn(new Ellipse2D.Double(30, 30, 0.5, 0.5), 0, "moon"));
            without.add(1, new Drawn(new Rectangle2D.Double(29, 29, 2, 2), -1, ""));
            hidden.add(1, without.get(0));
            hidden.add(2, without.get(1));
            List<Optional<Region>> one = films(hidden, KEPT);
            List<Optional<Region>> other = films(without, KEPT);
            for (int film = 0; film < one.size(); film++) {
                Region printed = one.get(film).orElse(Region.EMPTY);
                assertThat(printed.differenceMm2(other.get(film).orElse(Region.EMPTY)))
                        .as("drawing %d, film %d", seed, film)
                        .isLessThanOrEqualTo(printed.perimeterMm() * Grid.STEP_MM / 2);
            }
        }
    }

    private static boolean isIn(List<Drawn> drawn, Place place) {
        return drawn.stream()
                .anyMatch(shape -> !shape.layer().isEmpty() && shape.shape().contains(place.x(), place.y()));
    }

    private static Optional<Drawn> top(List<Drawn> drawn, Place place) {
        return drawn.stream()
                .filter(shape -> shape.shape().contains(place.x(), place.y()))
                .reduce((lower, upper) -> upper);
    }

    private static List<Optional<Region>> films(List<Drawn> drawn, Job job) {
        Artwork artwork = new Artwork(
                "drawing.svg",
                new Frame(0, 0, SIDE_MM, SIDE_MM),
                drawn.stream().map(Drawn::flat).toList(),
                List.of());
        Separation separation = new Separator(new Plugins(List.of(new Reduction()), List.of(), List.of(), List.of()))
                .separate(artwork, job);
        double dx = separation.artwork().frame().x();
        double dy = separation.artwork().frame().y();
        List<Optional<Region>> films = new ArrayList<>();
        for (String ink : List.of("one", "two", "three", "four")) {
            films.add(separation.plan().pulls().stream()
                    .filter(pull -> pull.ink().name().equals(ink))
                    .findFirst()
                    .map(pull -> separation.map().dissolve(pull.prints()).movedBy((int) Math.rint(-dx * 4000), (int)
                            Math.rint(-dy * 4000))));
        }
        return films;
    }

    private static List<Drawn> drawing(Random random) {
        List<Drawn> drawn = new ArrayList<>();
        for (String layer : List.of("", "moon", "", "lamp", "")) {
            int shapes = 2 + random.nextInt(3);
            for (int i = 0; i < shapes; i++) {
                double x = grid(30 * random.nextDouble());
                double y = grid(30 * random.nextDouble());
                double width = 2 + random.nextInt(14);
                Shape shape = random.nextBoolean()
                        ? new Ellipse2D.Double(x, y, width, width)
                        : new Rectangle2D.Double(x, y, width, 2 + random.nextInt(14));
                drawn.add(new Drawn(shape, random.nextInt(STEPS.size() + 1) - 1, layer));
            }
        }
        return drawn;
    }

    /** On the map's grid. */
    private static double grid(double millimetres) {
        return Math.rint(millimetres * 100) / 100;
    }

    private static Outline disc(double x, double y, double radius) {
        Outline.Builder disc = Outline.builder();
        int corners = 720;
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            if (i == 0) {
                disc.moveTo(x + radius, y);
            } else {
                disc.lineTo(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
            }
        }
        return disc.build();
    }
}
