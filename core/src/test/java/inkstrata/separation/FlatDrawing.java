package inkstrata.separation;

import inkstrata.artwork.Area;
import inkstrata.artwork.Artwork;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/** Flat shapes on a white sheet of their own size, for tests; each fills in the colour of its ink, or white. */
public final class FlatDrawing {
    private final double width;
    private final double height;
    private final List<FlatShape> shapes = new ArrayList<>();
    private Side side = Side.FRONT;
    private int threads = 1;

    public FlatDrawing(double width, double height) {
        this.width = width;
        this.height = height;
    }

    public FlatDrawing fill(Ink ink, Outline outline) {
        return fill(ink.swatch(), outline);
    }

    public FlatDrawing fill(Rgb colour, Outline outline) {
        shapes.add(FlatShape.opaque(new Area(outline, FillRule.EVENODD), colour, Source.UNKNOWN));
        return this;
    }

    public FlatDrawing onTheBack() {
        side = Side.BACK;
        return this;
    }

    public FlatDrawing withThreads(int number) {
        threads = number;
        return this;
    }

    public Artwork artwork() {
        return new Artwork("test", new Frame(0, 0, width, height), shapes, List.of());
    }

    /** Each stack prints its top colour alone. */
    public Separation knockedOut(Ink... order) {
        return separated((ink, row) -> row.top().equals(Optional.of(ink)), order);
    }

    /** As the predicate says; pulls in that order. */
    public Separation separated(BiPredicate<Ink, Row> prints, Ink... order) {
        PlanarMap map = PlanarMapper.map(artwork(), MapSettings.DEFAULT.withThreads(threads));
        List<Row> rows = IntStream.range(0, map.stacks().size())
                .mapToObj(stack -> row(map, stack, order))
                .toList();
        Sheet sheet = new Sheet(new Size(width, height), Rgb.WHITE, side);
        PlanningTable table = new PlanningTable(sheet, List.of(order), List.of(), rows, map.neighbours());
        List<Pull> pulls = new ArrayList<>();
        for (Ink ink : order) {
            pulls.add(new Pull(
                    ink,
                    StackSet.of(
                            rows.stream().filter(row -> prints.test(ink, row)).mapToInt(Row::stack))));
        }
        List<Region> printed =
                pulls.stream().map(pull -> map.dissolve(pull.prints())).toList();
        return new Separation(artwork(), map, table, new PrintPlan(pulls, List.of()), printed, List.of());
    }

    private static Row row(PlanarMap map, int stack, Ink... inks) {
        List<Optional<Ink>> each = map.stacks().get(stack).paints().stream()
                .map(paint -> List.of(inks).stream()
                        .filter(ink -> ink.swatch().equals(paint.colour()))
                        .findFirst())
                .toList();
        return new Row(stack, map.stacks().get(stack), each, map.areaMm2(stack));
    }

    /** A polygon through these places, x and y in turn. */
    public static Outline polygon(double... xy) {
        Outline.Builder builder = Outline.builder();
        for (int i = 0; i < xy.length; i += 2) {
            if (i == 0) {
                builder.moveTo(xy[0], xy[1]);
            } else {
                builder.lineTo(xy[i], xy[i + 1]);
            }
        }
        return builder.build();
    }

    /** A disc of 720 facets, which reach 1e-5 of the radius inside its circle. */
    public static Outline disc(double x, double y, double radius) {
        double[] xy = new double[2 * 720];
        for (int i = 0; i < 720; i++) {
            xy[2 * i] = x + radius * Math.cos(2 * Math.PI * i / 720);
            xy[2 * i + 1] = y + radius * Math.sin(2 * Math.PI * i / 720);
        }
        return polygon(xy);
    }
}
