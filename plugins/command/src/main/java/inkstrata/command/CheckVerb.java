package inkstrata.command;

import inkstrata.artwork.Artwork;
import inkstrata.film.Film;
import inkstrata.film.FilmReader;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.separation.Finding;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Reads films back and says what is wrong with them. */
@Command(
        name = "check",
        header = "Checks a folder of films against the drawing, and says how far pulls may be off.",
        description = {
            "",
            "Films may come from here or from any program: one SVG for each ink, black on clear, in any units. A film is"
                    + " known by its ink's name (01-sand.svg, Sand.svg), or the job file says which is which: films: {sand:"
                    + " plate1.svg}.",
            "Nothing is changed. The last line says how far pulls may be off from each other before sheet shows between"
                    + " inks.",
            ""
        },
        footer = {"", "Example: inkstrata check boats.svg films --map faults.svg"})
final class CheckVerb implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @ParentCommand
    private InkstrataCommand inkstrata;

    @Mixin
    private ArtworkArguments arguments;

    @Parameters(index = "1", paramLabel = "FOLDER", description = "The folder that holds the films.")
    private Path folder;

    @Option(
            names = "--map",
            paramLabel = "FILE.svg",
            description = "Draw what was found onto the drawing, into this file.")
    private Path map;

    @Mixin
    private FailOn failOn;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Desk desk = new Desk(spec.commandLine().getErr(), inkstrata);
        try (Progress progress = desk.progress();
                FoundPlugins found = FoundPlugins.in(inkstrata.plugins())) {
            Job job = desk.job(arguments);
            progress.begins("reading the drawing");
            Artwork artwork = arguments.read(job, Separator.drawings(found.plugins(), job), inkstrata.in());
            Separator separator = new Separator(found.plugins(), progress::begins);
            Separation planned = separator.separate(artwork, job);
            List<Optional<Path>> files = FilmFiles.in(folder, planned.plan(), job);
            FilmFiles.strays(folder, files).forEach(desk::warning);
            FilmReader reader =
                    new FilmReader(planned.table().sheet(), planned.artwork().frame());
            List<Optional<Film>> films = new ArrayList<>();
            for (int pull = 0; pull < files.size(); pull++) {
                Optional<Path> file = files.get(pull);
                Ink ink = planned.plan().pulls().get(pull).ink();
                progress.begins("reading " + file.map(Path::toString).orElse("nothing"));
                films.add(file.isEmpty() ? Optional.empty() : Optional.of(reader.read(file.get(), ink)));
            }
            Inspection inspection = separator.compare(planned, films, job);
            if (map != null) {
                requireUnread(files);
                Files.writeString(map, new FindingsMap(planned, inspection.findings()).svg(), StandardCharsets.UTF_8);
            }
            if (inkstrata.json()) {
                out.println(Json.of(json(planned, files, inspection.findings())));
            } else {
                inspection.findings().forEach(finding -> out.println(Notices.line(finding)));
                inspection.verdict().ifPresent(verdict -> out.println(verdict.line()));
            }
            return failOn.exitCode(inspection.findings());
        }
    }

    /** @throws CommandFault if the map would take the place of a drawing, the job file or a film */
    private void requireUnread(List<Optional<Path>> films) throws IOException {
        List<Path> read = new ArrayList<>(arguments.files());
        films.stream().flatMap(Optional::stream).forEach(read::add);
        for (Path file : read) {
            if (Files.exists(map) && Files.exists(file) && Files.isSameFile(map, file)) {
                throw new CommandFault(
                        "--map " + map + ": this file was read, and the map would take its place. Name another.");
            }
        }
    }

    private static Map<String, Object> json(Separation planned, List<Optional<Path>> files, List<Finding> findings) {
        List<Map<String, Object>> films = new ArrayList<>();
        for (int pull = 0; pull < files.size(); pull++) {
            Map<String, Object> film = new LinkedHashMap<>();
            film.put("ink", planned.plan().pulls().get(pull).ink().name());
            film.put("file", files.get(pull).map(Path::toString).orElse(""));
            films.add(film);
        }
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("films", films);
        result.put("findings", findings.stream().map(Notices::json).toList());
        return result;
    }
}
