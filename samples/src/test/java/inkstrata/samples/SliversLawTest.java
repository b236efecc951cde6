package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.Prediction;
import inkstrata.plan.Pull;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Plugins;
import inkstrata.separation.Separation;
import inkstrata.separation.Verdict;
import inkstrata.shop.Separator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Shards left out and slits filled on generated drawings: nothing changes but deep beneath an ink that shows, whose colour stays within the tolerance;
 * no register is lost, by the limit that is proved for the films before and after; and what is left there is as wide as the screen holds, by
 * buffers of JTS 1.20 of whole films.
 *
 * <p>{@code -Dlaws.drawings=1000 -Dlaws.from=0} asks for more drawings, or others.
 */
class SliversLawTest {
    private static final int FEW = 10;
    private static final int MANY = Integer.getInteger("laws.drawings", 1_000);
    private static final int FROM = Integer.getInteger("laws.from", 0);

    /** The limit is found to 2 µm. */
    private static final double EXACT_MM = 0.004;

    /** What holds, of inks whose mesh is not known (common practice, no source). */
    private static final double NARROW_MM = 0.3;

    /** Facets of arcs, and tips of corners that are as long as the width, are not told apart to less than that. */
    private static final double SPARE_MM = 0.02;

    private static final double TOLERANCE = 8;
    private static final GeometryFactory JTS = new GeometryFactory();

    private int different;
    private int narrowBefore;

    @Test
    void shardsGo() {
        law(0, FEW, 1);
    }

    @Test
    @Tag("long")
    void shardsGoInManyDrawings() {
        law(FROM, MANY, MANY / 10);
    }

    private void law(long from, int drawings, int changed) {
        Plugins all = Press.plugins();
        Plugins untidy = new Plugins(
                all.planners(),
                all.shapers().stream()
                        .filter(shaper -> !shaper.id().equals("slivers"))
                        .toList(),
                all.inspectors(),
                all.writers());
        Job job = JobReader.read("job.yaml", "use: {overprint: {tolerance: " + TOLERANCE + "}}");
        for (long seed = from; seed < from + drawings; seed++) {
            Artwork artwork = drawing(seed);
            Separation before = new Separator(untidy).separate(artwork, job);
            Separation after = new Separator(all).separate(artwork, job);
            if (!before.printed().equals(after.printed())) {
                different++;
                nothingIsSeen(before, after, job, seed);
                assertThat(limit(all, after, job))
                        .as("drawing %d", seed)
                        .isGreaterThanOrEqualTo(Math.min(limit(untidy, before, job), job.registerMm()) - EXACT_MM);
            }
            narrowBefore += narrow(before, job).size();
            assertThat(narrow(after, job)).as("drawing %d", seed).isEmpty();
        }
        assertThat(different).as("drawings that were tidied").isGreaterThanOrEqualTo(changed);
        assertThat(narrowBefore).as("narrow parts before").isGreaterThanOrEqualTo(changed);
    }

    /** In every other drawing a dark square lies over the middle, and others stick out from under it, bars thinner than holds among them. */
    private static Artwork drawing(long seed) {
        Artwork stacked = StackedDrawing.of(seed);
        if (seed % 2 == 0) {
            return stacked;
        }
        Random random = new Random(seed);
        List<FlatShape> shapes = new ArrayList<>(stacked.shapes());
        for (int bar = 0; bar < 5; bar++) {
            double at = 4 + 14 * random.nextDouble();
            double thin = 0.1 + 0.18 * random.nextDouble();
            Outline outline = random.nextBoolean()
                    ? Outline.rectangle(24 * random.nextDouble() - 12, at, 18, thin)
                    : Outline.rectangle(at, 24 * random.nextDouble() - 12, thin, 18);
            Rgb colour = shapes.get(random.nextInt(stacked.shapes().size())).colour();
            shapes.add(FlatShape.opaque(new Area(outline, FillRule.NONZERO), colour, Source.UNKNOWN));
        }
        Area square = new Area(Outline.rectangle(3.03, 3.07, 17, 17), FillRule.NONZERO);
        shapes.add(FlatShape.opaque(square, Rgb.parse("#14182c"), Source.UNKNOWN));
        return stacked.withShapes(shapes);
    }

    /** What changed lies beneath an ink that shows and prints there and all around, and the pile comes out within the tolerance. */
    private static void nothingIsSeen(Separation before, Separation after, Job job, long seed) {
        List<Pull> pulls = after.plan().pulls();
        List<Geometry> films = after.printed().stream().map(SliversLawTest::jts).toList();
        for (int pull = 0; pull < pulls.size(); pull++) {
            Geometry changed = overlay(jts(before.printed().get(pull)), films.get(pull), 4);
            double seen = changed.getArea();
            for (Row row : after.table().rows()) {
                Optional<Integer> cover = cover(after, row, pull);
                if (cover.isEmpty() || changed.isEmpty()) {
                    continue;
                }
                Geometry deep = films.get(cover.get()).buffer(-job.registerMm(), 32);
                Geometry there =
                        overlay(overlay(changed, jts(after.map().dissolve(StackSet.of(row.stack()))), 1), deep, 1);
                seen -= there.getArea();
                if (there.getArea() > 1e-4) {
                    Coordinate at = there.getInteriorPoint().getCoordinate();
                    colourHolds(after, row, films, at, seed);
                }
            }
            assertThat(seen)
                    .as("drawing %d, pull %d: mm2 that may be seen", seed, pull)
                    .isLessThan(2e-3);
        }
    }

    private static void colourHolds(Separation after, Row row, List<Geometry> films, Coordinate at, long seed) {
        Ink top = row.top().orElseThrow();
        List<Ink> beneath = new ArrayList<>();
        for (int pull : after.table().sheet().farthestFirst(after.plan().pulls())) {
            Ink ink = after.plan().pulls().get(pull).ink();
            if (!ink.equals(top) && films.get(pull).covers(JTS.createPoint(at))) {
                beneath.add(ink);
            }
        }
        Prediction prediction = new Prediction(after.table().sheet());
        assertThat(prediction.fromSwatch(top, beneath))
                .as("drawing %d at %s", seed, at)
                .isLessThanOrEqualTo(Math.max(TOLERANCE, prediction.fromSwatch(top, List.of())));
    }

    /** Parts of films, longer than they may be narrow, that no disc as wide as what holds reaches, deep beneath an ink where the film may change. */
    private static List<String> narrow(Separation separation, Job job) {
        List<String> found = new ArrayList<>();
        double radius = NARROW_MM / 2 - SPARE_MM / 2;
        for (int pull = 0; pull < separation.printed().size(); pull++) {
            Geometry film = jts(separation.printed().get(pull));
            Geometry opened = film.buffer(-radius, 32).buffer(radius + SPARE_MM / 2, 32);
            Geometry closed = film.buffer(radius, 32).buffer(-radius - SPARE_MM / 2, 32);
            Geometry shards = overlay(film, opened, 3);
            Geometry slits = overlay(closed, film, 3);
            for (int cover = 0; cover < separation.printed().size(); cover++) {
                Geometry mayGo = mayChange(separation, pull, cover, true);
                Geometry mayCome = mayChange(separation, pull, cover, false);
                if (mayGo.isEmpty() && mayCome.isEmpty()) {
                    continue;
                }
                Geometry deep = jts(separation.printed().get(cover)).buffer(-job.registerMm() - SPARE_MM, 32);
                Geometry ends = endsBeneath(separation, pull, cover);
                report(overlay(overlay(shards, mayGo, 1), deep, 1), ends, "pull " + pull + " shard", found);
                report(overlay(overlay(slits, mayCome, 1), deep, 1), ends, "pull " + pull + " slit", found);
            }
        }
        return found;
    }

    /** Where what runs on ends beneath a cover; rims of the trap end there too, and two of them may leave a gap, but they do not run on. */
    private static Geometry endsBeneath(Separation separation, int pull, int cover) {
        List<Pull> pulls = separation.plan().pulls();
        return jts(separation.map().dissolve(pulls.get(pull).prints()))
                .getBoundary()
                .intersection(jts(separation.map().dissolve(pulls.get(cover).prints()))
                        .buffer(-0.001));
    }

    private static void report(Geometry parts, Geometry ends, String what, List<String> found) {
        for (int i = 0; i < parts.getNumGeometries(); i++) {
            Envelope box = parts.getGeometryN(i).getEnvelopeInternal();
            if (parts.getGeometryN(i).isWithinDistance(ends, NARROW_MM - SPARE_MM)
                    && Math.max(box.getWidth(), box.getHeight()) > NARROW_MM + SPARE_MM) {
                found.add(what + " at " + box);
            }
        }
    }

    private static Geometry mayChange(Separation separation, int pull, int cover, boolean prints) {
        return jts(separation
                .map()
                .dissolve(StackSet.of(separation.table().rows().stream()
                        .filter(row -> cover(separation, row, pull).equals(Optional.of(cover)))
                        .filter(row ->
                                separation.plan().pulls().get(pull).prints().contains(row.stack()) == prints)
                        .filter(row -> colourHolds(separation, row, pull))
                        .mapToInt(Row::stack))));
    }

    /** The pull of the ink that shows at a stack, if it prints there and lies nearer to the eye than another. */
    private static Optional<Integer> cover(Separation separation, Row row, int pull) {
        for (int cover = 0; cover < separation.printed().size(); cover++) {
            Pull over = separation.plan().pulls().get(cover);
            if (cover != pull
                    && row.shows(over.ink())
                    && over.prints().contains(row.stack())
                    && separation.isNearer(cover, pull)) {
                return Optional.of(cover);
            }
        }
        return Optional.empty();
    }

    /** Whether the colour holds if the pull prints where it did not, or does not where it did. */
    private static boolean colourHolds(Separation separation, Row row, int changed) {
        Ink top = row.top().orElseThrow();
        List<Ink> beneath = new ArrayList<>();
        for (int pull :
                separation.table().sheet().farthestFirst(separation.plan().pulls())) {
            Pull each = separation.plan().pulls().get(pull);
            if (!each.ink().equals(top) && each.prints().contains(row.stack()) != (pull == changed)) {
                beneath.add(each.ink());
            }
        }
        Prediction prediction = new Prediction(separation.table().sheet());
        return beneath.size() < 3
                && prediction.fromSwatch(top, beneath) <= Math.max(TOLERANCE, prediction.fromSwatch(top, List.of()));
    }

    private static double limit(Plugins plugins, Separation separation, Job job) {
        Verdict verdict =
                new Separator(plugins).inspect(separation, job).verdict().orElseThrow();
        return verdict.heldMm().orElse(Double.POSITIVE_INFINITY);
    }

    /** 1 intersection, 3 difference, 4 what lies in one alone. */
    private static Geometry overlay(Geometry one, Geometry other, int operation) {
        List<?> areas = PolygonExtracter.getPolygons(OverlayNGRobust.overlay(one, other, operation));
        return JTS.createMultiPolygon(areas.toArray(Polygon[]::new));
    }

    /** In millimetres. */
    private static Geometry jts(Region region) {
        return JTS.createMultiPolygon(region.polygons().stream()
                .map(polygon -> JTS.createPolygon(
                        ring(polygon.shell()),
                        polygon.holes().stream().map(SliversLawTest::ring).toArray(LinearRing[]::new)))
                .toArray(Polygon[]::new));
    }

    private static LinearRing ring(Ring ring) {
        Coordinate[] closed = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            int at = i % ring.size();
            closed[i] = new Coordinate(ring.x(at) / 4000.0, ring.y(at) / 4000.0);
        }
        return JTS.createLinearRing(closed);
    }
}
