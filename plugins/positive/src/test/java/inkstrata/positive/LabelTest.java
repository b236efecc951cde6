package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.measure.Grid;
import inkstrata.plan.PlanningExample;
import inkstrata.plan.Pull;
import inkstrata.planar.StackSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class LabelTest {
    private static final Pull SAND = new Pull(PlanningExample.ink("sand", "#e8cf9a"), StackSet.NONE);
    private static final int NARROW = 104 * Grid.STEPS_PER_MM;

    @Test
    void saysTitlePullInkAndSide() {
        assertThat(Label.lines("Tide mill", 3, 9, SAND, Label.side(false), "", NARROW))
                .containsExactly(
                        "Tide mill \u00b7 pull 3 of 9 \u00b7 sand",
                        "emulsion side up, reads right \u00b7 print at 100 %");
    }

    @Test
    void saysThatThePictureIsMirrored() {
        assertThat(String.join(" ", Label.lines("Tide mill", 3, 9, SAND, Label.side(true), "", NARROW)))
                .contains("mirrored for the back of the sheet");
    }

    @Test
    void linesAreBrokenBetweenWordsAndWithinAWordThatIsTooLong() {
        String long1 = "word ".repeat(18).strip();
        List<String> lines = Label.lines(long1, 1, 1, SAND, Label.side(false), "", NARROW);
        assertThat(String.join(" ", lines)).startsWith(long1);
        assertThat(lines).hasSizeGreaterThan(1).allMatch(LabelTest::fits);
        String long2 = "\ud83d\udc1f".repeat(90);
        List<String> wide = Label.lines(long2, 1, 1, SAND, Label.side(false), "", NARROW);
        assertThat(String.join("", wide)).startsWith(long2);
        assertThat(wide).hasSizeGreaterThan(1).allMatch(LabelTest::fits);
    }

    @Test
    void aTitleWithoutEndIsCut() {
        List<String> lines = Label.lines("x".repeat(10_000), 1, 1, SAND, Label.side(false), "", NARROW);
        assertThat(String.join("", lines)).contains("x\u2026").hasSizeLessThan(250);
    }

    /** Text is 2.8 mm high. */
    private static boolean fits(String line) {
        return Letters.width(line) * 2.8 * Grid.STEPS_PER_MM <= NARROW;
    }
}
