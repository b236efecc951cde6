package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Frame;
import inkstrata.planar.SeamDrawings;
import inkstrata.plugin.Plugins;
import inkstrata.samples.PlannedFilms.PlannedFilm;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Films of drawings whose shapes miss each other, moved off register and laid over each other by JTS, from their files
 * ({@link FilmPolygons}).
 *
 * <ul>
 *   <li>No sheet shows but as near to sheet that is wider than a seam as films are moved, though traps are no wider than the register.
 *   <li>On what is wider than a seam nothing is printed: a strip of 60 µm stays sheet.
 *   <li>No ink covers more than without closing but within strips, and none covers less.
 * </ul>
 *
 * <p>{@code -Dseams.from=0 -Dseams.drawings=4} asks for other seeds, or more, {@code -Dseams.offsets=12} for more offsets of each.
 */
class SeamFilmsTest {
    private static final double REGISTER_UM = 400;
    private static final double SEAM_UM = 50;

    /** A wedge shorter than so many times its width is none ({@code core/docs/seams.md}). */
    private static final double BLUNT = 10;

    /** What the limit takes for no gap ({@code plugins/check/docs/limit.md}). */
    private static final double NO_GAP_UM = 5;

    /** Curves may be followed that far off, here and in films, and buffers of discs are polygons. */
    private static final double NEAR_UM = 6;

    private static final List<String> KINDS =
            List.of("bricks", "sectors", "rings", "cells", "noise", "voronoi", "stacked", "butted");
    private static final int[] DECIMALS = {1, 2, 3};
    private static final double[] GAPS = {0, 0.001, 0.005, 0.02, 0.045, 0.06};
    private static final int OFFSET_SETS = Integer.getInteger("seams.offsets", 4);

    private static final Job CLOSING = JobReader.read("", "register: 0.4 mm");
    private static final Job LEAVING = JobReader.read("", "register: 0.4 mm\nseam: 0 mm");

    @Test
    void aFewHold(TestReporter reporter) throws IOException {
        int drawing = 0;
        for (String kind : KINDS) {
            Tally tally = new Tally(kind);
            tally.hold(DECIMALS[drawing % 3], GAPS[(5 * drawing + 3) % 6], drawing++);
            reporter.publishEntry(tally.toString());
            assertThat(tally.faults).isEmpty();
        }
    }

    @Test
    @Tag("long")
    void manyHold(TestReporter reporter) throws IOException {
        int from = Integer.getInteger("seams.from", 0);
        int count = Integer.getInteger("seams.drawings", 4);
        List<String> faults = new ArrayList<>();
        for (String kind : KINDS) {
            Tally tally = new Tally(kind);
            for (int seed = from; seed < from + count; seed++) {
                for (int decimals : DECIMALS) {
                    for (double gap : GAPS) {
                        tally.hold(decimals, gap, seed);
                    }
                }
            }
            reporter.publishEntry(tally.toString());
            tally.faults.forEach(reporter::publishEntry);
            faults.addAll(tally.faults);
        }
        assertThat(faults).isEmpty();
    }

    /** The first law is broken where strips are left open. */
    @Test
    void openSeamsAreSeen() throws IOException {
        for (String kind : List.of("bricks", "rings")) {
            Case drawing = Case.of(kind, 3, 0.02, 1);
            assertThat(drawing.bare(LEAVING, 1, new ArrayList<>())).as(kind).isPositive();
            assertThat(drawing.bare(CLOSING, 1, new ArrayList<>())).as(kind).isZero();
        }
    }

    /** A drawing, and what JTS says of it, in micrometres from the picture's corner. */
    private record Case(String name, Artwork artwork, Geometry frame, Geometry inked, Geometry sheet) {
        static Case of(String kind, int decimals, double gap, long seed) {
            Artwork artwork = TracedDrawings.KINDS.contains(kind)
                    ? TracedDrawings.of(kind, decimals, gap, seed)
                    : SeamDrawings.of(kind, decimals, gap, seed);
            Frame picture = artwork.frame();
            Geometry frame = FilmPolygons.rectangle(0, 0, picture.width(), picture.height());
            Geometry inked = FilmPolygons.union(artwork.shapes().stream()
                    .map(shape -> FilmPolygons.area(shape.area()))
                    .toList());
            return new Case(artwork.name(), artwork, frame, inked, FilmPolygons.minus(frame, inked));
        }

        /** Sheet where it is wider than so much, with what of its corners is narrower. */
        Geometry sheetWiderThan(double um) {
            return FilmPolygons.both(sheet, sheet.buffer(-um / 2, 16).buffer(um / 2 + 0.5, 16));
        }

        List<Geometry> films(Job job, Plugins plugins) throws IOException {
            return List.copyOf(byInk(job, plugins).values());
        }

        Map<String, Geometry> byInk(Job job, Plugins plugins) throws IOException {
            PlannedFilms planned = PlannedFilms.of(Press.files(artwork, job, plugins));
            Map<String, Geometry> films = new LinkedHashMap<>();
            for (PlannedFilm film : planned.films()) {
                Geometry onSheet = FilmPolygons.film(film.svg());
                films.put(
                        film.swatch().hex(),
                        FilmPolygons.moved(
                                onSheet,
                                -1000 * planned.picture().x(),
                                -1000 * planned.picture().y()));
            }
            return films;
        }

        /** How often of some sets of offsets sheet shows where none should. */
        int bare(Job job, int sets, List<String> faults) throws IOException {
            List<Geometry> films = films(job, withoutInspectors(Press.plugins()));
            // With the tips of blunt wedges: what opens wider than a seam, and is not ten times as long as wide up to
            // there, was drawn.
            Geometry own = FilmPolygons.both(sheet, sheetWiderThan(SEAM_UM - 1).buffer(BLUNT * SEAM_UM, 8));
            Random random = new Random(name.hashCode());
            int bare = 0;
            for (int set = 0; set < sets; set++) {
                double[][] offsets = offsets(random, films.size());
                double farthest = 0;
                List<Geometry> moved = new ArrayList<>();
                for (int i = 0; i < offsets.length; i++) {
                    farthest = Math.max(farthest, Math.hypot(offsets[i][0], offsets[i][1]));
                    moved.add(FilmPolygons.moved(films.get(i), offsets[i][0], offsets[i][1]));
                }
                Geometry shows = FilmPolygons.wide(FilmPolygons.minus(frame, FilmPolygons.union(moved)), NO_GAP_UM);
                Geometry wrong =
                        FilmPolygons.wide(FilmPolygons.minus(shows, own.buffer(farthest + NEAR_UM, 32)), NO_GAP_UM);
                if (!wrong.isEmpty()) {
                    bare++;
                    faults.add(name + ", offset set " + set + ": sheet shows, " + wrong.getArea() + " µm² "
                            + wrong.getNumGeometries() + " at " + wrong.getCoordinate());
                }
            }
            return bare;
        }

        /** No two farther apart than the register, all about 0: on two or three opposite places, or anywhere. */
        private static double[][] offsets(Random random, int films) {
            int places = 2 + random.nextInt(3);
            double turn = 2 * Math.PI * random.nextDouble();
            // 4 µm less: what is said to hold is rounded, and curves are followed to 2 µm by each film.
            double register = REGISTER_UM - 4;
            double radius = places == 3 ? register / Math.sqrt(3) : register / 2;
            double[][] offsets = new double[films][];
            for (int film = 0; film < films; film++) {
                double share = places == 4 ? random.nextDouble() : (double) random.nextInt(places) / places;
                double angle = turn + 2 * Math.PI * share;
                offsets[film] = new double[] {radius * Math.cos(angle), radius * Math.sin(angle)};
            }
            return offsets;
        }
    }

    private static Plugins withoutInspectors(Plugins all) {
        return new Plugins(all.planners(), all.shapers(), List.of(), all.writers());
    }

    private static final class Tally {
        private final String kind;
        private final List<String> faults = new ArrayList<>();
        private int drawings;
        private double stripsMm2;
        private double closedMm2;

        Tally(String kind) {
            this.kind = kind;
        }

        void hold(int decimals, double gap, long seed) throws IOException {
            Case drawing = Case.of(kind, decimals, gap, seed);
            drawings++;
            drawing.bare(CLOSING, OFFSET_SETS, faults);
            Plugins plain = withoutInspectors(Press.withoutShapers());
            Map<String, Geometry> closed = drawing.byInk(CLOSING, plain);
            Map<String, Geometry> open = drawing.byInk(LEAVING, plain);
            Geometry wider = drawing.sheetWiderThan(SEAM_UM + 3);
            double strips = drawing.sheet.getArea() - wider.getArea();
            stripsMm2 += strips / 1e6;
            Geometry printed = FilmPolygons.both(FilmPolygons.union(List.copyOf(closed.values())), wider.buffer(-4));
            note(drawing, "prints on sheet", withoutHoles(FilmPolygons.wide(printed, NO_GAP_UM)));
            double gainedInAll = 0;
            for (Map.Entry<String, Geometry> ink : closed.entrySet()) {
                Geometry before = open.get(ink.getKey());
                Geometry gained = FilmPolygons.minus(ink.getValue(), before);
                gainedInAll += gained.getArea();
                note(
                        drawing,
                        ink.getKey() + " lost",
                        FilmPolygons.wide(FilmPolygons.minus(before, ink.getValue()), NEAR_UM));
                note(
                        drawing,
                        ink.getKey() + " gained beyond strips",
                        FilmPolygons.wide(FilmPolygons.minus(gained, drawing.sheet), NEAR_UM));
            }
            closedMm2 += gainedInAll / 1e6;
            double rounding = drawing.inked.getLength() * 0.25;
            if (gainedInAll > strips + rounding) {
                faults.add(drawing.name + ": inks gained " + gainedInAll + " µm², strips have " + strips);
            }
        }

        private void note(Case drawing, String what, Geometry where) {
            if (!where.isEmpty()) {
                faults.add(drawing.name + ": " + what + ", " + where.getArea() + " µm² " + where.getNumGeometries()
                        + " at " + where.getCoordinate());
            }
        }

        /** Holes between three neighbours are closed up to four seams both ways. */
        private static Geometry withoutHoles(Geometry printed) {
            List<Geometry> left = new ArrayList<>();
            for (int i = 0; i < printed.getNumGeometries(); i++) {
                Envelope box = printed.getGeometryN(i).getEnvelopeInternal();
                if (Math.max(box.getWidth(), box.getHeight()) > 4 * SEAM_UM) {
                    left.add(printed.getGeometryN(i));
                }
            }
            return FilmPolygons.FACTORY.buildGeometry(left);
        }

        @Override
        public String toString() {
            return kind + ": " + drawings + " drawings, strips " + stripsMm2 + " mm², closed " + closedMm2;
        }
    }
}
