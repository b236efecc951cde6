package inkstrata.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Layer;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobException;
import inkstrata.job.JobReader;
import inkstrata.measure.Frame;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plugin.Plugins;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class DrawingsTest {
    private static final double SIDE_MM = 100;
    private static final Rgb RED = Rgb.parse("#d04030");
    private static final Rgb BLUE = Rgb.parse("#3060c0");
    private static final Rgb GREEN = Rgb.parse("#30a060");
    private static final Job THREE = JobReader.read("three.yaml", """
            inks:
              - {name: one,   prints: "#d04030", from: "#a"}
              - {name: two,   prints: "#3060c0", from: "#b"}
              - {name: three, prints: "#30a060", from: "#c"}
            """);

    /**
     * Of three drawings that know nothing of each other, overlaps take shares as the product of what is covered and what is not. Demichel
     * (1924); Neugebauer (1937) weighs colours with them. A column, a row, and fine upright stripes are independent of one another.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "demichel.csv", numLinesToSkip = 1)
    void overlapsOfIndependentDrawingsHaveDemichelsShares(
            double a,
            double b,
            double c,
            double paper,
            double one,
            double two,
            double three,
            double oneTwo,
            double oneThree,
            double twoThree,
            double all) {
        List<FlatShape> shapes = new ArrayList<>();
        if (a > 0) {
            shapes.add(shape(RED, "a", Outline.rectangle(0, 0, a * SIDE_MM, SIDE_MM)));
        }
        if (b > 0) {
            shapes.add(shape(BLUE, "b", Outline.rectangle(0, 0, SIDE_MM, b * SIDE_MM)));
        }
        for (int stripe = 0; stripe < SIDE_MM && c > 0; stripe++) {
            shapes.add(shape(GREEN, "c", Outline.rectangle(stripe, 0, c, SIDE_MM)));
        }
        List<String> names = new ArrayList<>();
        if (a > 0) {
            names.add("one");
        }
        if (b > 0) {
            names.add("two");
        }
        if (c > 0) {
            names.add("three");
        }
        Job job = JobExample.withInks(
                THREE,
                THREE.inks().stream().filter(ink -> names.contains(ink.name())).toList());
        PlanningTable table = separated(shapes, job);
        double whole = SIDE_MM * SIDE_MM;
        assertThat(share(table, Set.of())).isCloseTo(paper * whole, within(1e-6));
        assertThat(share(table, Set.of("one"))).isCloseTo(one * whole, within(1e-6));
        assertThat(share(table, Set.of("two"))).isCloseTo(two * whole, within(1e-6));
        assertThat(share(table, Set.of("three"))).isCloseTo(three * whole, within(1e-6));
        assertThat(share(table, Set.of("one", "two"))).isCloseTo(oneTwo * whole, within(1e-6));
        assertThat(share(table, Set.of("one", "three"))).isCloseTo(oneThree * whole, within(1e-6));
        assertThat(share(table, Set.of("two", "three"))).isCloseTo(twoThree * whole, within(1e-6));
        assertThat(share(table, Set.of("one", "two", "three"))).isCloseTo(all * whole, within(1e-6));
    }

    private static double share(PlanningTable table, Set<String> drawings) {
        return table.rows().stream()
                .filter(row -> row.drawings().equals(drawings))
                .mapToDouble(Row::areaMm2)
                .sum();
    }

    @Test
    void whatABoundGroupPaintsLeavesThePictureButNotWhatLiesBeneath() {
        List<FlatShape> shapes = List.of(
                shape(BLUE, "sea", Outline.rectangle(0, 0, 60, 60)),
                shape(RED, "a", Outline.rectangle(20, 20, 20, 20)),
                shape(GREEN, "top", Outline.rectangle(30, 0, 30, 60)));
        Job job = JobReader.read("job.yaml", "inks: [{name: rust, prints: '#d04030', from: '#a'}]");
        PlanningTable table = separated(shapes, job);
        assertThat(table.inks())
                .extracting(ink -> ink.swatch())
                .contains(RED, BLUE, GREEN)
                .hasSize(3);
        assertThat(share(table, Set.of("rust")))
                .as("all of it, above or beneath")
                .isEqualTo(400);
        Set<Optional<Rgb>> beside = new TreeSet<>((one, other) -> one.toString().compareTo(other.toString()));
        table.rows().stream()
                .filter(row -> row.drawings().contains("rust"))
                .forEach(row -> beside.add(row.top().map(ink -> ink.swatch())));
        assertThat(beside)
                .as("what shows of the picture there")
                .containsExactlyInAnyOrder(Optional.of(BLUE), Optional.of(GREEN));
    }

    @Test
    void paintInTheSheetsColourIsAHoleInItsDrawingOnly() {
        List<FlatShape> shapes = List.of(
                shape(RED, "a", Outline.rectangle(0, 0, 50, 50)),
                shape(Rgb.WHITE, "a", Outline.rectangle(10, 10, 10, 10)),
                shape(BLUE, "b", Outline.rectangle(0, 0, 30, 30)));
        Job job = JobExample.withInks(THREE, THREE.inks().subList(0, 2));
        PlanningTable table = separated(shapes, job);
        assertThat(share(table, Set.of("one"))).isEqualTo(2500 - 900);
        assertThat(share(table, Set.of("two"))).isEqualTo(100);
        assertThat(share(table, Set.of("one", "two"))).isEqualTo(800);
    }

    @Test
    void anElementThatIsNotThereIsTheJobsFault() {
        List<FlatShape> shapes = List.of(shape(BLUE, "sea", Outline.rectangle(0, 0, 60, 60)));
        assertThatThrownBy(() -> separated(shapes, THREE))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("'#a': no element of test.svg")
                .hasMessageContaining("#sea");
    }

    @Test
    void aFileLiesOverThePictureIfItsPageIsAsLarge() {
        Artwork picture = artwork(List.of(shape(BLUE, "sea", Outline.rectangle(0, 0, 60, 60))), SIDE_MM);
        Artwork more = artwork(List.of(shape(RED, "x", Outline.rectangle(50, 50, 20, 20))), SIDE_MM);
        Artwork both = Drawings.over(picture, more, "rust", Job.DEFAULT);
        assertThat(both.shapes()).extracting(FlatShape::drawing).containsExactly("", "rust");
        Artwork small = artwork(List.of(), 50);
        assertThatThrownBy(() -> Drawings.over(picture, small, "rust", Job.DEFAULT))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("Draw both on pages of one size.");
    }

    private static PlanningTable separated(List<FlatShape> shapes, Job job) {
        return new Separator(new Plugins(List.of(), List.of(), List.of(), List.of()))
                .separate(artwork(shapes, SIDE_MM), job)
                .table();
    }

    private static Artwork artwork(List<FlatShape> shapes, double side) {
        return new Artwork("test.svg", new Frame(0, 0, side, side), shapes, List.of());
    }

    private static FlatShape shape(Rgb colour, String group, Outline outline) {
        return FlatShape.opaque(
                new Area(outline, FillRule.NONZERO),
                colour,
                new Source("path", "", 1, List.of(layer("page"), layer(group))));
    }

    private static Layer layer(String id) {
        return new Layer("g", id, List.of(), 1, id.hashCode());
    }
}
