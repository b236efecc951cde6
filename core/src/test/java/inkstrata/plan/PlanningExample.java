package inkstrata.plan;

import inkstrata.colour.Rgb;
import inkstrata.measure.Size;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.planar.Paint;
import inkstrata.planar.PaintStack;
import inkstrata.planar.StackSet;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Small planning tables for tests of planners. */
public final class PlanningExample {
    private PlanningExample() {}

    public static Ink ink(String name, String swatch) {
        return new Ink(name, Rgb.parse(swatch), 0.9, Optional.empty(), false);
    }

    public static Ink key(String name, String swatch) {
        return new Ink(name, Rgb.parse(swatch), 0.9, Optional.empty(), true);
    }

    /** A stack of these inks, top first, on 1 mm²; null is paint in the sheet's colour. */
    public static Row row(int stack, Ink... inks) {
        List<Optional<Ink>> each = Arrays.stream(inks).map(Optional::ofNullable).toList();
        List<Paint> paints = each.stream()
                .map(ink -> new Paint(ink.map(Ink::swatch).orElse(Rgb.WHITE)))
                .toList();
        return new Row(stack, new PaintStack(paints), each, 1);
    }

    /** On a white sheet of 100 x 100 mm. */
    public static PlanningTable table(List<Ink> inks, Row... rows) {
        return new PlanningTable(new Sheet(new Size(100, 100), Rgb.WHITE, Side.FRONT), inks, List.of(rows));
    }

    /** One pull for each ink, in that order, none printing anywhere. */
    public static PrintPlan start(List<Ink> inks) {
        return new PrintPlan(
                inks.stream().map(ink -> new Pull(ink, StackSet.NONE)).toList(), List.of());
    }
}
