package inkstrata.shop;

import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.Note;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobExample;
import inkstrata.job.JobException;
import inkstrata.job.Merge;
import inkstrata.plan.Ink;
import inkstrata.planar.Paint;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class PaletteTest {
    private static final Rgb RED = Rgb.parse("#c03020");
    private static final Rgb NEARLY_RED = Rgb.parse("#c13121");
    private static final Rgb BLUE = Rgb.parse("#2030c0");
    private static final SharedEdges APART = new SharedEdges();
    private static final Rgb NEARLY_WHITE = Rgb.parse("#fefefe");

    @Test
    void everyColourThatShowsGetsAnInkOrIsTheSheet() {
        Palette palette = Palette.mix(Map.of(RED, 5.0, BLUE, 2.0, Rgb.WHITE, 9.0), APART, Job.DEFAULT);
        assertThat(palette.inks()).extracting(Ink::name).containsExactlyInAnyOrder("red", "dark blue");
        assertThat(palette.inkOf().get(Rgb.WHITE)).isEmpty();
        assertThat(palette.asPrinted(new Paint(Rgb.WHITE), Job.DEFAULT)).isEqualTo(new Paint(Rgb.WHITE));
    }

    @Test
    void nearColoursShareAnInkOfTheirMeanByArea() {
        Palette palette = Palette.mix(Map.of(RED, 1.0, NEARLY_RED, 60.0, NEARLY_WHITE, 1.0), APART, Job.DEFAULT);
        assertThat(palette.inks()).singleElement().extracting(Ink::swatch).isEqualTo(NEARLY_RED);
        assertThat(palette.asPrinted(new Paint(RED), Job.DEFAULT)).isEqualTo(new Paint(NEARLY_RED));
        assertThat(palette.inkOf().get(NEARLY_WHITE)).isEmpty();
        assertThat(palette.notes()).extracting(Note::text).anyMatch(text -> text.contains(RED.hex()));
    }

    @Test
    void aListedInkTakesColoursNearItAndKeepsItsOwnSwatch() {
        Ink rust = ink("rust", NEARLY_RED.hex());
        Ink gold = ink("gold", "#d0b040");
        Palette palette = Palette.mix(Map.of(RED, 5.0), APART, withInks(rust, gold));
        assertThat(palette.inkOf()).containsEntry(RED, Optional.of(rust));
        assertThat(palette.inks()).containsExactly(rust);
        assertThat(palette.printsNowhere(palette.inks(), Map.of(RED, 5.0), withInks(rust, gold)))
                .singleElement()
                .satisfies(note -> assertThat(note.text()).contains("'gold'").contains("prints nowhere"));
    }

    @Test
    void aHiddenColourTakesTheInkNearItOrNone() {
        Palette palette = Palette.mix(Map.of(RED, 5.0), APART, Job.DEFAULT);
        assertThat(palette.asPrinted(new Paint(NEARLY_RED), Job.DEFAULT)).isEqualTo(new Paint(RED));
        assertThat(palette.asPrinted(new Paint(NEARLY_WHITE), Job.DEFAULT)).isEqualTo(new Paint(Rgb.WHITE));
        assertThat(palette.asPrinted(new Paint(BLUE), Job.DEFAULT)).isEqualTo(new Paint(BLUE));
    }

    @Test
    void theMeanIsTakenInLinearLight() {
        Map<Rgb, Double> visible = Map.of(Rgb.parse("#646464"), 1.0, Rgb.parse("#686868"), 3.0);
        Palette palette = Palette.mix(visible, APART, Job.DEFAULT.withMerge(new Merge(5, false, OptionalInt.empty())));
        // ((100/255+0.055)/1.055)^2.4 = 0.127438, of 104: 0.138432; a quarter and three quarters: 0.135683, coded
        // 103.03
        assertThat(palette.inks()).singleElement().extracting(Ink::swatch).isEqualTo(Rgb.parse("#676767"));
    }

    @Test
    void coloursThatTouchAreJoinedOnlyIfTold() {
        SharedEdges edges = new SharedEdges();
        Rgb other = Rgb.parse("#c53322");
        edges.add(RED, NEARLY_RED, 7);
        edges.add(RED, other, 12.5);
        assertThat(Palette.mix(Map.of(RED, 5.0, NEARLY_RED, 6.0), edges, Job.DEFAULT)
                        .inks())
                .as("an edge that nobody sees")
                .hasSize(1);
        Map<Rgb, Double> visible = Map.of(RED, 5.0, other, 6.0);
        assertThat(Palette.mix(visible, edges, Job.DEFAULT).inks()).hasSize(2);
        Palette told = Palette.mix(visible, edges, Job.DEFAULT.withMerge(new Merge(2, true, OptionalInt.empty())));
        assertThat(told.inks()).hasSize(1);
        assertThat(told.notes()).extracting(Note::text).anyMatch(text -> text.contains("12.5 mm"));
    }

    @Test
    void fewerInksAreMadeOfTheClosestColours() {
        SharedEdges edges = new SharedEdges();
        edges.add(RED, NEARLY_RED, 12.5);
        Rgb dark = Rgb.parse("#181830");
        Map<Rgb, Double> visible = Map.of(RED, 5.0, NEARLY_RED, 6.0, BLUE, 5.0, dark, 4.0);
        Palette three = Palette.mix(visible, edges, Job.DEFAULT.withMerge(Merge.DEFAULT.withInks(3)));
        assertThat(three.inks()).hasSize(3);
        assertThat(three.inkOf().get(RED)).isEqualTo(three.inkOf().get(NEARLY_RED));
        Palette two = Palette.mix(visible, edges, Job.DEFAULT.withMerge(Merge.DEFAULT.withInks(2)));
        assertThat(two.inks()).hasSize(2);
        assertThat(two.inkOf().get(dark)).isEqualTo(two.inkOf().get(BLUE));
    }

    @Test
    void listedInksAreNeverJoinedToMakeThemFewer() {
        Job listed = withInks(ink("red", RED.hex()), ink("blue", BLUE.hex()));
        Map<Rgb, Double> visible = Map.of(RED, 5.0, BLUE, 5.0, Rgb.parse("#2838b0"), 1.0);
        Palette two = Palette.mix(visible, APART, listed.withMerge(Merge.DEFAULT.withInks(2)));
        assertThat(two.inks()).extracting(Ink::name).containsExactly("red", "blue");
        assertThatThrownBy(() -> Palette.mix(visible, APART, listed.withMerge(Merge.DEFAULT.withInks(1))))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("lists 2 inks");
    }

    @Test
    void inksOfOneWordAreNumbered() {
        Palette palette = Palette.mix(Map.of(RED, 5.0, Rgb.parse("#e01010"), 5.0), APART, Job.DEFAULT);
        assertThat(palette.inks()).extracting(Ink::name).containsExactlyInAnyOrder("red", "red 2");
    }

    private static Job withInks(Ink... inks) {
        return JobExample.withInks(Job.DEFAULT, List.of(inks));
    }
}
