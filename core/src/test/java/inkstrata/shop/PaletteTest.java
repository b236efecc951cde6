package inkstrata.shop;

import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Note;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PaletteTest {
    private static final Rgb RED = Rgb.parse("#c03020");
    private static final Rgb NEARLY_RED = Rgb.parse("#c13121");
    private static final Rgb BLUE = Rgb.parse("#2030c0");
    private static final Rgb NEARLY_WHITE = Rgb.parse("#fefefe");

    @Test
    void everyColourThatShowsGetsAnInkOrIsTheSheet() {
        Palette palette = Palette.mix(Map.of(RED, 5.0, BLUE, 2.0, Rgb.WHITE, 9.0), Job.DEFAULT);
        assertThat(palette.inks()).extracting(Ink::name).containsExactlyInAnyOrder("red", "dark blue");
        assertThat(palette.inkOf().get(Rgb.WHITE)).isEmpty();
        assertThat(palette.asPrinted(Rgb.WHITE, Job.DEFAULT)).isEqualTo(Rgb.WHITE);
    }

    @Test
    void nearColoursShareTheInkOfTheLargerOne() {
        Palette palette = Palette.mix(Map.of(RED, 5.0, NEARLY_RED, 6.0, NEARLY_WHITE, 1.0), Job.DEFAULT);
        assertThat(palette.inks()).singleElement().extracting(Ink::swatch).isEqualTo(NEARLY_RED);
        assertThat(palette.asPrinted(RED, Job.DEFAULT)).isEqualTo(NEARLY_RED);
        assertThat(palette.inkOf().get(NEARLY_WHITE)).isEmpty();
        assertThat(palette.notes()).extracting(Note::text).anyMatch(text -> text.contains(RED.hex()));
    }

    @Test
    void aListedInkTakesColoursNearItAndKeepsItsOwnSwatch() {
        Ink rust = ink("rust", NEARLY_RED.hex());
        Ink gold = ink("gold", "#d0b040");
        Palette palette = Palette.mix(Map.of(RED, 5.0), withInks(rust, gold));
        assertThat(palette.inkOf()).containsEntry(RED, Optional.of(rust));
        assertThat(palette.inks()).containsExactly(rust);
        assertThat(palette.notes())
                .filteredOn(note -> note.severity() == Note.Severity.WARNING)
                .singleElement()
                .satisfies(note -> assertThat(note.text()).contains("'gold'").contains("prints nowhere"));
    }

    @Test
    void aHiddenColourTakesTheInkNearItOrNone() {
        Palette palette = Palette.mix(Map.of(RED, 5.0), Job.DEFAULT);
        assertThat(palette.asPrinted(NEARLY_RED, Job.DEFAULT)).isEqualTo(RED);
        assertThat(palette.asPrinted(NEARLY_WHITE, Job.DEFAULT)).isEqualTo(Rgb.WHITE);
        assertThat(palette.asPrinted(BLUE, Job.DEFAULT)).isEqualTo(BLUE);
    }

    @Test
    void inksOfOneWordAreNumbered() {
        Palette palette = Palette.mix(Map.of(RED, 5.0, Rgb.parse("#e01010"), 5.0), Job.DEFAULT);
        assertThat(palette.inks()).extracting(Ink::name).containsExactlyInAnyOrder("red", "red 2");
    }

    private static Job withInks(Ink... inks) {
        Job d = Job.DEFAULT;
        return new Job(
                d.file(),
                d.title(),
                d.sheet(),
                d.sheetColour(),
                d.side(),
                d.artworkWidthMm(),
                d.artworkPlace(),
                d.registerMm(),
                d.merge(),
                List.of(inks),
                d.order(),
                d.edition(),
                Map.of(),
                d.use());
    }
}
