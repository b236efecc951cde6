package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.svg.Flags;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.film.FilmReader;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Grid;
import inkstrata.planar.Region;
import inkstrata.planar.Ring;
import inkstrata.plugin.Plugins;
import inkstrata.positive.page.MmText;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * Films of flags, 200 mm wide and with traps, read back from their files: as many faces as were printed, or as many of a square grid step and
 * more (but for a few films of one drawing); slivers along outlines apart the same, where a curve is cut into chords at other places than in
 * the map; and the same area, to a millionth of the picture and to a quarter of a grid step along the outline. How many have the area to a
 * millionth of their own is told and not asked: rounding to the grid leaves small films with long outlines more.
 */
class ReadBackTest {
    /** Half of what a sliver may be wide: the curves' distance from the map, and the chords' from the curves. */
    private static final double SLIVER_MM = 0.0055;

    private static final double MILLIONTH = 1e-6;

    /** Less is asked of no film: the area of a dot of 0.04 mm. */
    private static final double DOT_MM2 = 0.001;

    /**
     * A coat of arms with a colour for every shade: 160 inks and more, whose faces of a single grid step lie side by side. Four of its
     * films have a face or two more or less.
     */
    private static final String FINEST = "sv.svg";

    @TempDir
    private Path folder;

    @Test
    void filmsReadBackAreWhatWasPrinted(TestReporter reporter) throws IOException {
        tell(12, reporter);
    }

    @Test
    @Tag("long")
    void allFilmsReadBackAreWhatWasPrinted(TestReporter reporter) throws IOException {
        tell(Integer.MAX_VALUE, reporter);
    }

    private void tell(int flags, TestReporter reporter) throws IOException {
        Tally tally = new Tally();
        tally.flags(flags);
        reporter.publishEntry(tally.toString());
        assertThat(tally.faults).isEmpty();
        assertThat(tally.otherFaces).isLessThanOrEqualTo(4);
        assertThat(tally.films).isGreaterThan(40);
    }

    private final class Tally {
        private final List<String> faults = new ArrayList<>();
        private final Plugins plugins = withoutInspectors(Press.plugins());
        private final Job job = JobReader.read("", "merge: 0");
        private int flags;
        private int films;
        private int within1e6;
        private int otherFaces;
        private double worst;
        private long curveBytes;
        private long polygonBytes;

        /** What is found wrong with films is nothing to do with how they are read. */
        private static Plugins withoutInspectors(Plugins all) {
            return new Plugins(all.planners(), all.shapers(), List.of(), all.writers());
        }

        void flags(int count) throws IOException {
            for (String name : Flags.names()) {
                if (flags < count) {
                    flag(name);
                }
            }
        }

        private void flag(String name) throws IOException {
            Artwork artwork;
            try (InputStream in = Flags.open(name)) {
                artwork = SvgReader.read(
                        name, in, new ReadOptions(OptionalDouble.of(200), OptionalDouble.empty(), false));
            } catch (ArtworkException refused) {
                assertThat(refused).hasMessageContaining("fill is a gradient");
                return;
            }
            flags++;
            Separation separation = new Separator(plugins).separate(artwork, job);
            Map<String, byte[]> files = Press.files(separation, job, plugins);
            List<byte[]> svgs = files.entrySet().stream()
                    .filter(file -> file.getKey().matches("\\d.*\\.svg"))
                    .map(Map.Entry::getValue)
                    .toList();
            for (int pull = 0; pull < svgs.size(); pull++) {
                film(name + " " + (pull + 1), separation, pull, svgs.get(pull));
            }
        }

        private void film(String name, Separation separation, int pull, byte[] svg) throws IOException {
            Path path = folder.resolve("film.svg");
            Files.write(path, svg);
            FilmReader reader = new FilmReader(
                    separation.table().sheet(), separation.artwork().frame());
            Region printed = separation.printed().get(pull);
            Region read =
                    reader.read(path, separation.plan().pulls().get(pull).ink()).picture();
            double picture = separation.artwork().frame().width()
                    * separation.artwork().frame().height();
            double off = Math.abs(read.areaMm2() - printed.areaMm2());
            String text = new String(svg, StandardCharsets.UTF_8);
            curveBytes += text.indexOf("</g>", text.indexOf("<g id=\"picture\"")) - text.indexOf("<g id=\"picture\"");
            polygonBytes += polygonBytes(printed);
            films++;
            within1e6 += off <= MILLIONTH * printed.areaMm2() ? 1 : 0;
            worst = Math.max(worst, off / picture);
            boolean isSliver = printed.minus(read).shrunk(SLIVER_MM).isEmpty()
                    && read.minus(printed).shrunk(SLIVER_MM).isEmpty();
            boolean hasOtherFaces =
                    read.polygons().size() != printed.polygons().size() && faces(read) != faces(printed);
            if (hasOtherFaces && name.contains(FINEST)) {
                otherFaces++;
            } else if (hasOtherFaces) {
                faults.add(name + ": " + faces(read) + " faces for " + faces(printed));
            }
            double rounding =
                    MILLIONTH * printed.areaMm2() + Math.max(DOT_MM2, Grid.STEP_MM / 4 * printed.perimeterMm());
            if (!isSliver || !(off <= MILLIONTH * picture) || !(off <= rounding)) {
                faults.add(name + ": " + off + " mm2 off, slivers alone: " + isSliver);
            }
        }

        /** Those of a square grid step at least: that is 0.06 square micrometres. */
        private static long faces(Region region) {
            return region.polygons().stream()
                    .filter(polygon -> doubledArea(polygon.shell()) >= 2)
                    .count();
        }

        /** In square grid steps. */
        private static long doubledArea(Ring ring) {
            long doubled = 0;
            for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
                doubled += (long) ring.x(j) * ring.y(i) - (long) ring.x(i) * ring.y(j);
            }
            return Math.abs(doubled);
        }

        /** What its vertices alone would take as text. */
        private static long polygonBytes(Region region) {
            long bytes = 0;
            for (Region.Polygon polygon : region.polygons()) {
                List<Ring> rings = new ArrayList<>(polygon.holes());
                rings.add(polygon.shell());
                for (Ring ring : rings) {
                    for (int i = 0; i < ring.size(); i++) {
                        bytes += MmText.of(Grid.millimetres(ring.x(i))).length() + 1;
                        bytes += MmText.of(Grid.millimetres(ring.y(i))).length() + 1;
                    }
                }
            }
            return bytes;
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%d flags, %d films: all but %d with as many faces, %d with the area to 1e-6 of their own, at worst %.2e of the picture off;"
                            + " pictures take %.2f of what polygons would",
                    flags,
                    films,
                    otherFaces,
                    within1e6,
                    worst,
                    (double) curveBytes / polygonBytes);
        }
    }
}
