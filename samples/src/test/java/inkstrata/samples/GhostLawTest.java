package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.artwork.TranslucentGroup;
import inkstrata.colour.Rgb;
import inkstrata.house.HowMany;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import inkstrata.measure.Frame;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.separation.Discs;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Shapes that show nowhere do not show on films: with them and without them films are the same, to the last byte.
 *
 * <p>What is hidden is found by booleans of JTS 1.20, one shape after the other from the top. {@code -Dlaws.drawings=5000 -Dlaws.from=0} asks for
 * more drawings, or others.
 */
class GhostLawTest {
    private static final int FEW = HowMany.of(10);
    private static final int MANY = Integer.getInteger("laws.drawings", 5_000);
    private static final int FROM = Integer.getInteger("laws.from", 0);
    private static final Rgb RED = Rgb.parse("#c8442e");
    private static final Rgb YELLOW = Rgb.parse("#f4d03f");
    private static final Rgb GREEN = Rgb.parse("#3f7a4a");
    private static final Rgb BLACK = Rgb.parse("#1b1b20");

    /** A hidden outline of 0.6 mm around a leaf under plain red cut a slit into the yellow that runs on beneath. */
    @Test
    void aHiddenOutlineLeavesNoSlit() throws IOException {
        List<FlatShape> shapes = new ArrayList<>();
        shapes.add(shape(YELLOW, Outline.rectangle(0, 0, 80, 60)));
        shapes.add(shape(BLACK, Outline.rectangle(19.7, 9.7, 30.6, 40.6)));
        shapes.add(shape(GREEN, Outline.rectangle(20.3, 10.3, 29.4, 39.4)));
        shapes.add(shape(RED, Outline.rectangle(10, 5, 50, 50)));
        shapes.add(shape(BLACK, Outline.rectangle(62, 5, 10, 10)));
        shapes.add(shape(GREEN, Outline.rectangle(62, 25, 10, 10)));
        Artwork with = new Artwork("ghost.svg", new Frame(0, 0, 80, 60), shapes, List.of());
        Job job = JobReader.read("job.yaml", "use: {overprint: {maxFilms: 3, tolerance: 4}}");
        Separation separation = new Separator(Press.plugins()).separate(with, job);
        Region yellow = separation.printed().get(0);
        assertThat(yellow.polygons())
                .as("yellow runs on in one piece, without a hole")
                .singleElement()
                .satisfies(piece -> assertThat(piece.holes().size()).isZero());
        isTheSame(with, with.withShapes(List.of(shapes.get(0), shapes.get(3), shapes.get(4), shapes.get(5))), job, 0);
    }

    static List<Sample> samples() {
        return Sample.all();
    }

    /** In a sample hidden shapes may be bound to inks; those stay. */
    @ParameterizedTest
    @MethodSource("samples")
    void samplesDoNotKnowTheirHiddenShapes(Sample sample) throws IOException {
        Artwork artwork = Press.read(sample);
        Job job = JobReader.read(sample.job());
        boolean isBound = job.inks().stream().anyMatch(ink -> ink.from().isPresent())
                || !Separator.drawings(Press.plugins(), job).isEmpty();
        if (!isBound) {
            isTheSame(withGhosts(artwork, new Random(5)), artwork, job, 0);
        }
    }

    @Test
    void hiddenShapesLeaveNoTrace() throws IOException {
        law(0, FEW);
    }

    @Test
    @Tag("long")
    void hiddenShapesLeaveNoTraceInManyDrawings() throws IOException {
        law(FROM, MANY);
    }

    private static void law(long from, long drawings) throws IOException {
        int hidden = 0;
        int refused = 0;
        for (long seed = from; seed < from + drawings; seed++) {
            Random random = new Random(seed * 31 + 7);
            GeneratedJob drawn = GeneratedJob.of(seed);
            Artwork artwork = withGhosts(StackedDrawing.of(seed), random);
            artwork = random.nextInt(3) == 0 ? translucent(artwork, random) : artwork;
            Set<FlatShape> hiddenShapes = Collections.newSetFromMap(new IdentityHashMap<>());
            hiddenShapes.addAll(hidden(artwork));
            List<FlatShape> left = artwork.shapes().stream()
                    .filter(shape -> !hiddenShapes.contains(shape) || random.nextInt(3) == 0)
                    .toList();
            try {
                Job job = JobReader.read("job.yaml", job(drawn.job()));
                isTheSame(artwork, artwork.withShapes(left), job, seed);
                hidden += artwork.shapes().size() - left.size();
            } catch (JobException said) {
                refused++;
            }
        }
        assertThat(hidden).as("shapes that were taken out").isGreaterThan((int) drawings);
        assertThat(refused).as("jobs that were refused").isLessThan((int) drawings / 2);
    }

    /** Its job, but no drawings of their own, and one format of films. */
    private static String job(String text) {
        return text.replaceAll(", from: '[^']*'", "")
                .replaceAll(", keep: '[^']*'|keep: '[^']*', |keep: '[^']*'", "")
                .replaceAll("formats: '[^']*'", "formats: 'svg'");
    }

    private static void isTheSame(Artwork one, Artwork other, Job job, long seed) throws IOException {
        Separation with = new Separator(Press.plugins()).separate(one, job);
        Separation without = new Separator(Press.plugins()).separate(other, job);
        assertThat(with.printed()).as("drawing %d", seed).isEqualTo(without.printed());
        if (seed % 10 == 0) {
            Map<String, byte[]> films = films(with, job);
            Map<String, byte[]> others = films(without, job);
            assertThat(films).as("drawing %d", seed).containsOnlyKeys(others.keySet());
            films.forEach((name, film) ->
                    assertThat(film).as("drawing %d, %s", seed, name).isEqualTo(others.get(name)));
        }
    }

    private static Map<String, byte[]> films(Separation separation, Job job) throws IOException {
        Map<String, byte[]> films = new TreeMap<>(Press.files(separation, job, Press.plugins()));
        films.keySet().removeIf(name -> !name.matches("\\d+-.*\\.svg"));
        return films;
    }

    private static FlatShape shape(Rgb colour, Outline outline) {
        return FlatShape.opaque(new Area(outline, FillRule.NONZERO), colour, Source.UNKNOWN);
    }

    /** Shapes slipped in beneath others that hide them: right beneath, with clearance, of colours of the drawing and others. */
    private static Artwork withGhosts(Artwork artwork, Random random) {
        List<FlatShape> shapes = new ArrayList<>(artwork.shapes());
        List<Region> areas = new ArrayList<>();
        shapes.forEach(shape -> areas.add(shape.isOpaque() ? area(shape, artwork.frame()) : Region.EMPTY));
        for (int ghosts = 0; ghosts < 3; ghosts++) {
            int at = random.nextInt(artwork.shapes().size());
            Region within = areas.get(at).shrunk(0.4);
            if (within.isEmpty()) {
                continue;
            }
            double x = within.somewhere().x();
            double y = within.somewhere().y();
            Outline outline = random.nextBoolean()
                    ? Discs.circle(x, y, 0.05 + 0.3 * random.nextDouble())
                    : Outline.rectangle(x - 0.2, y - 0.2, 0.4 * random.nextDouble(), 0.4 * random.nextDouble());
            Rgb colour = random.nextBoolean()
                    ? shapes.get(random.nextInt(shapes.size())).colour()
                    : Rgb.of(random.nextInt(1 << 24));
            shapes.add(shapes.indexOf(artwork.shapes().get(at)), shape(colour, outline));
        }
        return artwork.withShapes(shapes);
    }

    private static Artwork translucent(Artwork artwork, Random random) {
        List<FlatShape> shapes = new ArrayList<>();
        Optional<TranslucentGroup> group = Optional.empty();
        int groups = 0;
        for (FlatShape shape : artwork.shapes()) {
            if (random.nextInt(5) == 0) {
                group = group.isPresent()
                        ? Optional.empty()
                        : Optional.of(new TranslucentGroup(groups++, 0.5, Optional.empty()));
            }
            double opacity = random.nextInt(4) == 0 ? 0.5 : 1;
            shapes.add(new FlatShape(shape.area(), shape.colour(), opacity, group, shape.clips(), shape.source()));
        }
        return artwork.withShapes(shapes);
    }

    /** The shapes of which every part lies, by more than the grid's rounding, beneath opaque ones. */
    private static List<FlatShape> hidden(Artwork artwork) {
        List<FlatShape> hidden = new ArrayList<>();
        Region over = Region.EMPTY;
        for (int i = artwork.shapes().size() - 1; i >= 0; i--) {
            FlatShape shape = artwork.shapes().get(i);
            Region area = area(shape, artwork.frame());
            if (area.minus(over).isEmpty()) {
                hidden.add(shape);
            }
            if (shape.isOpaque()) {
                over = over.union(area);
            }
        }
        return hidden;
    }

    private static Region area(FlatShape shape, Frame frame) {
        FlatShape alone = new FlatShape(shape.area(), Rgb.of(1), 1, Optional.empty(), shape.clips(), Source.UNKNOWN);
        PlanarMap map = PlanarMapper.map(new Artwork("one", frame, List.of(alone), List.of()), MapSettings.DEFAULT);
        return map.dissolve(StackSet.of(IntStream.range(0, map.stacks().size())
                .filter(stack -> !map.stacks().get(stack).paints().isEmpty())));
    }
}
