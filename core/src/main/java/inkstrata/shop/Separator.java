package inkstrata.shop;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Note;
import inkstrata.colour.NearColours;
import inkstrata.colour.Rgb;
import inkstrata.film.Film;
import inkstrata.film.Sharpening;
import inkstrata.job.Job;
import inkstrata.job.JobException;
import inkstrata.plan.Ink;
import inkstrata.plan.PlanningTable;
import inkstrata.plan.PrintPlan;
import inkstrata.plan.PrintingOrder;
import inkstrata.plan.Pull;
import inkstrata.plan.Sheet;
import inkstrata.planar.MapSettings;
import inkstrata.planar.Neighbours;
import inkstrata.planar.Paint;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.planar.Visible;
import inkstrata.plugin.Inspector;
import inkstrata.plugin.OutputFolder;
import inkstrata.plugin.Planner;
import inkstrata.plugin.Plugins;
import inkstrata.plugin.Shaper;
import inkstrata.plugin.Writer;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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
        return separate(artwork, job, many -> {});
    }

    /**
     * Takes a drawing apart.
     *
     * @param artwork as read; it is put in its place on the sheet here
     * @param ifMany is told where there are more inks than anybody prints, before anything is planned; it may throw
     * @throws JobException if the job asks for something impossible
     */
    public Separation separate(Artwork artwork, Job job, Consumer<ManyInks> ifMany) {
        plugins.check(job);
        Sheet sheet = SheetLayout.sheet(artwork, job);
        List<Planner> planners = Claims.settled(plugins.planners(), job);
        DrawnColours.check(artwork);
        DrawnCurves.check(artwork);
        Visible seen = Visible.of(
                SheetLayout.place(Drawings.bound(artwork, drawings(plugins, job), job), sheet, job),
                MapSettings.DEFAULT);
        Artwork placed = seen.artwork();
        steps.accept("mapping " + placed.shapes().size() + (placed.shapes().size() == 1 ? " shape" : " shapes"));
        PlanarMap drawn = PlanarMapper.map(
                placed,
                MapSettings.DEFAULT
                        .withDepth(depth(placed, planners, job))
                        .withBackdrop(job.sheetColour())
                        .withSeam(job.seamMm()));
        steps.accept("mixing inks");
        List<Neighbours> neighbours = drawn.neighbours();
        Map<Rgb, Double> visible = visible(drawn);
        SharedEdges edges = Tabling.edges(drawn, neighbours);
        Palette mixed = Palette.mix(visible, edges, job);
        ManyInks.of(mixed, visible, edges, job).ifPresent(ifMany);
        PlanarMap map = drawn.repainted(paint -> mixed.asPrinted(paint, job));
        PlanningTable mixedTable = Tabling.table(sheet, map, neighbours, mixed, job);
        List<Ink> usual =
                PrintingOrder.of(mixedTable, List.of(), job.registerMm()).inks();
        Palette palette = mixed.numbered(usual, edges, job);
        PlanningTable table = Tabling.renamed(mixedTable, palette);
        steps.accept("planning " + table.inks().size() + (table.inks().size() == 1 ? " ink" : " inks"));
        PrintPlan plan = plan(table, planners, job);
        List<Region> printed =
                plan.pulls().stream().map(pull -> map.dissolve(pull.prints())).toList();
        List<Note> notes = new ArrayList<>(palette.notes());
        notes.addAll(palette.printsNowhere(plan.pulls().stream().map(Pull::ink).toList(), visible, job));
        Separation separation = new Separation(placed, map, table, plan, printed, notes, palette.joined(job))
                .withNotes(SwallowedNotes.of(seen.swallowed()))
                .withNotes(SeamNotes.of(map, job));
        for (Shaper shaper : plugins.shapers()) {
            steps.accept(shaper.id() + " at work");
            separation = shaper.shape(separation, job);
        }
        return separation;
    }

    /** What every inspector found, in running order. */
    public Inspection inspect(Separation separation, Job job) {
        Inspection inspection = Inspection.NOTHING;
        for (Inspector inspector : plugins.inspectors()) {
            steps.accept(inspector.id() + " at work");
            inspection = inspection.and(inspector.inspect(separation, job));
        }
        return inspection;
    }

    /**
     * What every inspector found when it compared films with what was planned, in running order. What is due to pixels alone is not told.
     *
     * @param films for each pull, by position, its film; empty where there is none
     */
    public Inspection compare(Separation planned, List<Optional<Film>> films, Job job) {
        List<Optional<Film>> sharp = sharpened(planned, films);
        Inspection inspection = Inspection.NOTHING;
        for (Inspector inspector : plugins.inspectors()) {
            steps.accept(inspector.id() + " at work");
            inspection = inspection.and(inspector.compare(planned, sharp, job));
        }
        return inspection;
    }

    private static List<Optional<Film>> sharpened(Separation planned, List<Optional<Film>> films) {
        List<Optional<Film>> sharp = new ArrayList<>();
        for (int pull = 0; pull < films.size(); pull++) {
            Region own = planned.printed().get(pull);
            sharp.add(films.get(pull)
                    .map(film -> Sharpening.of(film, own, planned.artwork().frame())));
        }
        return sharp;
    }

    /** Lets every writer write. */
    public void write(Separation separation, Inspection inspection, Job job, OutputFolder folder) throws IOException {
        for (Writer writer : plugins.writers()) {
            steps.accept(writer.id() + " at work");
            writer.write(separation, inspection, job, folder);
        }
    }

    /** Each colour that shows on the map, with its area in mm². */
    public static Map<Rgb, Double> visible(PlanarMap map) {
        Map<Rgb, Double> areas = new TreeMap<>();
        for (int stack = 0; stack < map.stacks().size(); stack++) {
            double area = map.areaMm2(stack);
            Optional<Paint> shows = Tabling.picture(map.stacks().get(stack));
            if (shows.isPresent() && area > 0) {
                areas.merge(shows.get().colour(), area, Double::sum);
            }
        }
        return areas;
    }

    /** Names of drawings of their own that planners ask about: elements of the artwork, or files that lie over it. */
    public static Set<String> drawings(Plugins plugins, Job job) {
        plugins.check(job);
        Set<String> asked = new TreeSet<>();
        Claims.settled(plugins.planners(), job).forEach(planner -> asked.addAll(planner.drawings(job)));
        return asked;
    }

    /**
     * How deep stacks must be known. Where two colours may become one ink, or the sheet's, whole stacks are needed: what
     * counts as the second paint is only known once they are joined. So they are where drawings of their own may lie anywhere.
     */
    private static int depth(Artwork artwork, List<Planner> planners, Job job) {
        List<Rgb> colours = Stream.concat(
                        artwork.shapes().stream().map(FlatShape::colour),
                        Stream.concat(
                                Stream.of(job.sheetColour()),
                                job.inks().stream().map(Ink::swatch)))
                .distinct()
                .toList();
        boolean isPlain = artwork.shapes().stream()
                .allMatch(shape -> shape.isOpaque() && shape.drawing().isEmpty());
        boolean isMerged = job.merge().inks().isPresent() || !job.also().isEmpty();
        if (!isPlain || isMerged || NearColours.any(colours, job.merge().within())) {
            return MapSettings.ALL;
        }
        return planners.stream().mapToInt(planner -> planner.depth(job)).max().orElse(1);
    }

    private static PrintPlan plan(PlanningTable table, List<Planner> planners, Job job) {
        PrintingOrder order;
        try {
            order = PrintingOrder.of(table, orderOfPrinted(table, job), job.registerMm());
        } catch (IllegalArgumentException e) {
            throw new JobException(job.file(), job.order().line(), e.getMessage());
        }
        PrintPlan plan = new PrintPlan(
                order.inks().stream().map(ink -> new Pull(ink, StackSet.NONE)).toList(), order.decisions());
        for (Planner planner : planners) {
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
