package inkstrata.trap;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static inkstrata.plan.PlanningExample.key;
import static inkstrata.plan.PlanningExample.start;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import inkstrata.artwork.Note;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.job.PluginSettings.Setting;
import inkstrata.measure.Size;
import inkstrata.plan.Ink;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.plugin.Plugins;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TrapTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");
    private static final Ink NIGHT = ink("night", "#1d2440");
    private static final Ink LIGHT_KEY = key("light key", "#e8cf9a");

    @Test
    void isFoundAtTheDoor() {
        assertThat(Plugins.load(getClass().getClassLoader()).shapers()).hasExactlyElementsOfTypes(Trap.class);
    }

    @Test
    void widthFollowsRegisterUnlessItIsSet() {
        assertThat(grownBy(TrapJob.withRegister(0.25, Map.of()), SAND, NIGHT)).isEqualTo(20 * 0.25);
        assertThat(grownBy(TrapJob.with(0.5, "round"), SAND, NIGHT)).isEqualTo(20 * 0.5);
    }

    @Test
    void withoutWidthNothingChanges() {
        Separation drawn = sideBySide(SAND, NIGHT);
        assertThat(new Trap().shape(drawn, TrapJob.with(0, "round"))).isSameAs(drawn);
        assertThat(new Trap().shape(drawn, TrapJob.withRegister(0, Map.of()))).isSameAs(drawn);
    }

    @Test
    void aWidthOutOfBoundsIsTheJobsFault() {
        Separation drawn = sideBySide(SAND, NIGHT);
        assertThatThrownBy(() -> new Trap().shape(drawn, TrapJob.with(6, "round")))
                .isInstanceOf(JobException.class)
                .hasMessage("job.yaml:7: trap.width: '6.0 mm' is outside 0 to 5 mm.");
        assertThatThrownBy(() -> new Trap().shape(drawn, TrapJob.withRegister(6, Map.of())))
                .isInstanceOf(JobException.class)
                .hasMessage(
                        "job.yaml: a trap as wide as the register, 6.0 mm, is outside 0 to 5 mm. Set use.trap.width or register.");
        assertThatThrownBy(() -> new Trap().shape(drawn, TrapJob.using(Map.of("corners", new Setting("square", 9)))))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("job.yaml:9")
                .hasMessageContaining("round, mitre, bevel");
    }

    @Test
    void saysWhatRunsUnderWhat() {
        assertThat(notes(sideBySide(SAND, NIGHT))).containsExactly("Trap: sand runs 0.40 mm under night (20.0 mm).");
    }

    @Test
    void oneNoteTellsAllThatAnInkRunsUnderAndOver() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(NIGHT, rectangle(5, 10, 10, 20))
                .fill(SAND, rectangle(15, 10, 10, 20))
                .fill(RUST, rectangle(25, 10, 10, 20))
                .knockedOut(NIGHT, SAND, RUST);
        assertThat(notes(drawn)).containsExactly("Trap: sand runs 0.40 mm under rust (20.0 mm); over night (20.0 mm).");
    }

    @Test
    void aLighterInkPrintedLaterRunsOver() {
        Separation drawn = sideBySide(NIGHT, SAND);
        assertThat(notes(drawn)).containsExactly("Trap: sand runs 0.40 mm over night (20.0 mm).");
    }

    @Test
    void seenThroughTheSheetTheFirstPullLiesOnTop() {
        Separation drawn = new FlatDrawing(60, 40)
                .onTheBack()
                .fill(NIGHT, rectangle(10, 10, 20, 20))
                .fill(SAND, rectangle(30, 10, 20, 20))
                .knockedOut(NIGHT, SAND);
        assertThat(notes(drawn)).containsExactly("Trap: sand runs 0.40 mm under night (20.0 mm).");
    }

    /** Behind a key that runs over everything nothing parts; beside it, and on behind it, the light ink gives way to the dark one. */
    @Test
    void seenThroughTheSheetWhatRunsOnBehindTheKeyNeedsNone() {
        Separation drawn = new FlatDrawing(60, 40)
                .onTheBack()
                .fill(SAND, rectangle(10, 10, 40, 20))
                .fill(NIGHT, rectangle(20, 15, 10, 10))
                .separated((ink, row) -> row.inks().contains(Optional.of(ink)), NIGHT, SAND);
        assertThat(notes(drawn)).isEmpty();
        Separation beside = new FlatDrawing(60, 40)
                .onTheBack()
                .fill(SAND, rectangle(10, 10, 20, 20))
                .fill(RUST, rectangle(30, 10, 20, 20))
                .fill(NIGHT, rectangle(15, 15, 30, 10))
                .separated(
                        (ink, row) -> row.inks().indexOf(Optional.of(ink))
                                == (row.top().equals(Optional.of(NIGHT)) && !ink.equals(NIGHT) ? 1 : 0),
                        NIGHT,
                        RUST,
                        SAND);
        assertThat(notes(beside)).containsExactly("Trap: sand runs 0.40 mm under rust (20.0 mm).");
    }

    @Test
    void aKeyNeverGrows() {
        assertThat(notes(sideBySide(NIGHT, LIGHT_KEY)))
                .containsExactly("Trap: night runs 0.40 mm under light key (20.0 mm).");
    }

    @Test
    void theLighterOneGivesWayOnEitherSideOfTheSheet() {
        PrintPlan plan = sideBySide(NIGHT, SAND).plan();
        for (Side side : Side.values()) {
            assertThat(GivingWay.gives(sheet(side), plan, 1, 0)).isTrue();
            assertThat(GivingWay.gives(sheet(side), plan, 0, 1)).isFalse();
        }
    }

    @Test
    void ofEquallyLightInksTheOneFartherFromTheEyeGivesWay() {
        Ink twin = new Ink("twin", SAND.swatch(), SAND.hiding(), SAND.mesh(), false);
        PrintPlan twins = start(List.of(SAND, twin));
        assertThat(GivingWay.gives(sheet(Side.FRONT), twins, 0, 1)).isTrue();
        assertThat(GivingWay.gives(sheet(Side.FRONT), twins, 1, 0)).isFalse();
        assertThat(GivingWay.gives(sheet(Side.BACK), twins, 0, 1)).isFalse();
        assertThat(GivingWay.gives(sheet(Side.BACK), twins, 1, 0)).isTrue();
    }

    private static Sheet sheet(Side side) {
        return new Sheet(new Size(100, 100), Rgb.WHITE, side);
    }

    @Test
    void pullsThatGainNothingStayTheVerySame() {
        Separation drawn = sideBySide(SAND, NIGHT);
        Separation trapped = new Trap().shape(drawn, TrapJob.with(0.4, "round"));
        assertThat(trapped.printed().get(1)).isSameAs(drawn.printed().get(1));
        assertThat(trapped.plan()).isEqualTo(drawn.plan());
    }

    /** The ground beneath both would show between them: sheet is not the only wrong colour. */
    @Test
    void whatLiesBeneathBothMustNotShowEither() {
        Separation drawn = new FlatDrawing(60, 40)
                .fill(SAND, rectangle(5, 5, 50, 30))
                .fill(RUST, rectangle(10, 10, 20, 20))
                .fill(NIGHT, rectangle(30, 10, 20, 20))
                .separated(
                        (ink, row) -> ink.equals(SAND)
                                ? !row.inks().isEmpty()
                                : row.top().filter(ink::equals).isPresent(),
                        SAND,
                        RUST,
                        NIGHT);
        assertThat(notes(drawn)).containsExactly("Trap: rust runs 0.40 mm under night (20.0 mm).");
    }

    private static Separation sideBySide(Ink left, Ink right) {
        return new FlatDrawing(60, 40)
                .fill(left, rectangle(10, 10, 20, 20))
                .fill(right, rectangle(30, 10, 20, 20))
                .knockedOut(left, right);
    }

    private static double grownBy(Job job, Ink left, Ink right) {
        Separation drawn = sideBySide(left, right);
        return new Trap().shape(drawn, job).printed().get(0).areaMm2()
                - drawn.printed().get(0).areaMm2();
    }

    private static List<String> notes(Separation drawn) {
        return new Trap()
                .shape(drawn, TrapJob.with(0.4, "round")).notes().stream()
                        .map(Note::text)
                        .toList();
    }
}
