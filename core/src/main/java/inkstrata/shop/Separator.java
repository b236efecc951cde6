package inkstrata.shop;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.colour.NearColours;
import inkstrata.colour.Rgb;
import inkstrata.film.Film;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PlanningTable.Row;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.PrintingOrder;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.planar.MapSettings;
import inkstrata.planar.Paint;
import inkstrata.planar.PaintStack;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Inspector;
import inkstrata.plugin.OutputFolder;
import inkstrata.plugin.Planner;
import inkstrata.plugin.Plugins;
import inkstrata.plugin.Shaper;
import inkstrata.plugin.Writer;
import inkstrata.separation.Finding;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Runs the line: artwork to planar map, stacks to plan, plan to printed regions, through whatever plug-ins there are.
 *
 * @param plugins those that take part
 * @param steps is told what is being done, each time something new begins
 */
public record Separator(Plugins plugins, Consumer<String> steps) {
    /** Runs it without telling anybody. */
    public Separator(Plugins plugins) {
        this(plugins, step -> {});
    }

    /**
     * Takes a drawing apart.
     *
     * @param artwork as read; it is put in its place on the sheet here
     * @throws JobException if the job asks for something impossible
     */
    public Separation separate(Artwork artwork, Job job) {
        plugins.check(job);
        Sheet sheet = SheetLayout.sheet(artwork, job);
        Artwork placed = SheetLayout.place(artwork, sheet, job);
        steps.accept("mapping " + placed.shapes().size() + " shapes");
        PlanarMap drawn = PlanarMapper.map(
                placed, MapSettings.DEFAULT.withDepth(depth(placed, job)).withBackdrop(job.sheetColour()));
        steps.accept("mixing inks");
        Palette palette = Palette.mix(visible(drawn), job);
        PlanarMap map = drawn.repainted(paint -> new Paint(palette.asPrinted(paint.colour(), job)));
        PlanningTable table = new PlanningTable(sheet, palette.inks(), rows(map, palette));
        steps.accept("planning " + table.inks().size() + " inks");
        PrintPlan plan = plan(table, job);
        List<Region> printed =
                plan.pulls().stream().map(pull -> map.dissolve(pull.prints())).toList();
        Separation separation =
                new Separation(placed, map, table, plan, printed, palette.notes()).withNotes(SwallowedNotes.of(map));
        for (Shaper shaper : plugins.shapers()) {
            steps.accept(shaper.id() + " at work");
            separation = shaper.shape(separation, job);
        }
        return separation;
    }

    /** What every inspector found, in running order. */
    public List<Finding> inspect(Separation separation, Job job) {
        List<Finding> findings = new ArrayList<>();
        for (Inspector inspector : plugins.inspectors()) {
            steps.accept(inspector.id() + " at work");
            findings.addAll(inspector.inspect(separation, job));
        }
        return List.copyOf(findings);
    }

    /**
     * What every inspector found when it compared films with what was planned, in running order.
     *
     * @param films for each pull, by position, its film; empty where there is none
     */
    public List<Finding> compare(Separation planned, List<Optional<Film>> films, Job job) {
        List<Finding> findings = new ArrayList<>();
        for (Inspector inspector : plugins.inspectors()) {
            steps.accept(inspector.id() + " at work");
            findings.addAll(inspector.compare(planned, films, job));
        }
        return List.copyOf(findings);
    }

    /** Lets every writer write. */
    public void write(Separation separation, List<Finding> findings, Job job, OutputFolder folder) throws IOException {
        for (Writer writer : plugins.writers()) {
            steps.accept(writer.id() + " at work");
            writer.write(separation, findings, job, folder);
        }
    }

    /** Each colour that shows on the map, with its area in mm². */
    public static Map<Rgb, Double> visible(PlanarMap map) {
        Map<Rgb, Double> areas = new TreeMap<>();
        for (int stack = 0; stack < map.stacks().size(); stack++) {
            PaintStack paints = map.stacks().get(stack);
            double area = map.areaMm2(stack);
            if (!paints.isBare() && area > 0) {
                areas.merge(paints.paints().get(0).colour(), area, Double::sum);
            }
        }
        return areas;
    }

    /**
     * How deep stacks must be known. Where two colours may become one ink, or the sheet's, whole stacks are needed: what
     * counts as the second paint is only known once they are joined.
     */
    private int depth(Artwork artwork, Job job) {
        List<Rgb> colours = Stream.concat(
                        artwork.shapes().stream().map(FlatShape::colour),
                        Stream.concat(
                                Stream.of(job.sheetColour()),
                                job.inks().stream().map(Ink::swatch)))
                .distinct()
                .toList();
        boolean translucent = !artwork.shapes().stream().allMatch(FlatShape::isOpaque);
        if (translucent || NearColours.any(colours, job.merge())) {
            return MapSettings.ALL;
        }
        return plugins.planners().stream()
                .mapToInt(planner -> planner.depth(job))
                .max()
                .orElse(1);
    }

    private static List<Row> rows(PlanarMap map, Palette palette) {
        Map<Rgb, Ink> bySwatch = new TreeMap<>();
        palette.inks().forEach(ink -> bySwatch.put(ink.swatch(), ink));
        List<Row> rows = new ArrayList<>();
        for (int stack = 0; stack < map.stacks().size(); stack++) {
            PaintStack paints = map.stacks().get(stack);
            List<Optional<Ink>> inks = paints.paints().stream()
                    .map(paint -> Optional.ofNullable(bySwatch.get(paint.colour())))
                    .toList();
            rows.add(new Row(stack, paints, inks, map.areaMm2(stack)));
        }
        return rows;
    }

    private PrintPlan plan(PlanningTable table, Job job) {
        List<Ink> ordered;
        try {
            ordered = PrintingOrder.asAsked(
                    table.inks(), orderOfPrinted(table, job), table.sheet().side());
        } catch (IllegalArgumentException e) {
            throw new JobException(job.file(), job.order().line(), e.getMessage());
        }
        PrintPlan plan = new PrintPlan(
                ordered.stream().map(ink -> new Pull(ink, StackSet.NONE)).toList(), List.of());
        for (Planner planner : Claims.settled(plugins.planners(), job)) {
            plan = planner.plan(table, plan, job);
        }
        return plan;
    }

    /** The job's order without the inks it lists that print nowhere; of those the palette's notes speak. */
    private static List<String> orderOfPrinted(PlanningTable table, Job job) {
        return job.order().names().stream()
                .filter(name -> isAnInk(name, table.inks()) || !isAnInk(name, job.inks()))
                .toList();
    }

    private static boolean isAnInk(String name, List<Ink> inks) {
        return inks.stream().anyMatch(ink -> ink.name().equals(name));
    }
}
