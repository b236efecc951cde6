package inkstrata.positive;

import static java.nio.charset.StandardCharsets.UTF_8;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.measure.Size;
import inkstrata.plan.Decision;
import inkstrata.plan.Ink;
import inkstrata.plan.Mesh;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.MapSettings;
import inkstrata.planar.Paint;
import inkstrata.planar.PaintStack;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.RegionExample;
import inkstrata.planar.StackSet;
import inkstrata.separation.Finding;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Prints put together by hand: any number of inks, each with a region of its own, and the files made of them. */
final class PrintExample {
    private PrintExample() {}

    static final List<Finding> FINDINGS = List.of(new Finding(
            Finding.Severity.WARNING, "fine-line", new Place(12.5, 40), "0.1 mm", "0.2 mm", "Make the line wider."));

    /** One ink for each region, named by its number; the picture lies at {@code frame}. */
    static Separation print(Size paper, Frame frame, Side side, Region... regions) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < regions.length; i++) {
            names.add("ink " + (i + 1));
        }
        return print(paper, frame, side, names, regions);
    }

    static Separation print(Size paper, Frame frame, Side side, List<String> names, Region... regions) {
        List<Ink> inks = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        List<Pull> pulls = new ArrayList<>();
        rows.add(new Row(0, PaintStack.BARE, List.of(), 1));
        for (int i = 0; i < names.size(); i++) {
            Optional<Mesh> mesh = i % 2 == 0 ? Optional.of(new Mesh(77, 48)) : Optional.empty();
            Ink ink = new Ink(names.get(i), Rgb.of(0x112233 * (i + 1) & 0xffffff), 0.35, mesh, i == 1);
            inks.add(ink);
            rows.add(new Row(
                    i + 1, new PaintStack(List.of(new Paint(ink.swatch()))), List.of(Optional.of(ink)), 0.123456));
            pulls.add(new Pull(ink, StackSet.of(i + 1)));
        }
        Sheet sheet = new Sheet(paper, Rgb.parse("#fbf7ec"), side);
        Artwork artwork = new Artwork(
                "tide-mill.svg",
                frame,
                List.of(),
                List.of(Note.warning(new Source("text", "sign", 7, List.of()), "Set in another font.")));
        return new Separation(
                artwork,
                PlanarMapper.map(artwork, MapSettings.DEFAULT),
                new PlanningTable(sheet, inks, rows),
                new PrintPlan(
                        pulls, List.of(new Decision("knockout", "", "Each prints alone.", "It keeps its colour."))),
                List.of(regions),
                List.of());
    }

    /** Two inks on a sheet of 300 x 300 mm, seen from the front: the first there, the second on the back, right of it and partly beneath. */
    static Separation onBothSides() {
        Separation front = print(
                new Size(300, 300),
                new Frame(50, 75, 150, 150),
                Side.FRONT,
                RegionExample.of(RegionExample.polygon(RegionExample.rectangle(50, 75, 50, 75))),
                RegionExample.of(RegionExample.polygon(RegionExample.rectangle(70, 100, 80, 40))));
        List<Ink> inks = front.table().inks();
        Ink back = new Ink(
                inks.get(1).name(),
                inks.get(1).swatch(),
                inks.get(1).hiding(),
                inks.get(1).mesh(),
                false,
                inks.get(1).film(),
                Optional.of(Side.BACK),
                Optional.empty());
        List<Pull> pulls = List.of(
                front.plan().pulls().get(0),
                new Pull(back, front.plan().pulls().get(1).prints()));
        return new Separation(
                front.artwork(),
                front.map(),
                new PlanningTable(
                        front.table().sheet(),
                        List.of(inks.get(0), back),
                        front.table().rows()),
                new PrintPlan(pulls, List.of()),
                front.printed(),
                List.of());
    }

    /** Three inks on a sheet of 500 x 700 mm. */
    static Separation poster(Side side) {
        return print(
                new Size(500, 700),
                new Frame(50, 75, 400, 550),
                side,
                List.of("sand", "r\u00f6t & <blue>", "night"),
                RegionExample.of(RegionExample.polygon(
                        RegionExample.rectangle(50, 75, 400, 550), RegionExample.rectangle(100, 125.00025, 50, 60))),
                RegionExample.of(RegionExample.polygon(RegionExample.ringMm(60, 80, 140.12345, 90.5, 77, 200))),
                Region.EMPTY);
    }

    static Map<String, byte[]> written(Separation separation, Job job) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        new Positive().write(separation, Inspection.of(FINDINGS), job, name -> new ByteArrayOutputStream() {
            @Override
            public void close() {
                files.put(name, toByteArray());
            }
        });
        return files;
    }

    /** The films alone, as text. */
    static List<String> films(Separation separation) throws IOException {
        return written(separation, Job.DEFAULT).entrySet().stream()
                .filter(file -> file.getKey().matches("\\d.*\\.svg"))
                .map(file -> new String(file.getValue(), UTF_8))
                .toList();
    }
}
