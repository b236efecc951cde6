package inkstrata.command;

import inkstrata.film.Film;
import inkstrata.film.FilmReader;
import inkstrata.job.Job;
import inkstrata.plan.Ink;
import inkstrata.report.Json;
import inkstrata.report.Remarks;
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
            "Films may come from here or from any program: SVG, PDF (a page or a plate for each ink), PNG or TIFF, black on"
                    + " clear, in any units. A film is known by its ink's name (01-sand.svg, Sand.tif), by its page, or the job"
                    + " file says which is which: films: {sand: plate1.svg, rust: \"films.pdf#2\"}.",
            "A set that was made here is checked at the size at which its plan.json says it was made, unless the command says"
                    + " a size.",
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
            description =
                    "Draw what was found onto the drawing, into this file. It may take the place of such a map alone.")
    private Path map;

    @Option(names = "--replace", description = "Let --map take the place of any file but those that are read.")
    private boolean replaces;

    @Mixin
    private FailOn failOn;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Desk desk = new Desk(spec.commandLine().getErr(), inkstrata);
        try (Progress progress = desk.progress();
                FoundPlugins found = FoundPlugins.in(inkstrata.plugins())) {
            requireRoom();
            Job job = desk.job(arguments);
            progress.begins("reading the drawing");
            SetRecord record = SetRecord.in(folder);
            Separator separator = new Separator(found.plugins(), progress::begins);
            AsMade made = AsMade.of(folder, record, arguments, job, found.plugins(), separator, desk, inkstrata.in());
            Separation planned = made.planned();
            FilmFiles files =
                    FilmFiles.in(folder, planned.plan(), job, found.plugins().formats(), record);
            Optional<String> strays = files.strays().said(planned);
            if (files.areAllStrays()) {
                throw new CommandFault(folder + ": not one film here is known to be an ink's. " + strays.orElse(""));
            }
            requireUnread(files);
            strays.ifPresent(desk::warning);
            List<Finding> ofTheSet = new ArrayList<>(made.findings());
            ChangedTiles.in(folder, record, planned.artwork().frame()).ifPresent(ofTheSet::add);
            Inspection inspection = Inspection.of(ofTheSet);
            for (List<Optional<FilmSource>> set : files.sets()) {
                inspection = news(inspection, separator.compare(planned, films(set, planned, progress), job));
            }
            if (map != null) {
                Files.writeString(map, new FindingsMap(planned, inspection).svg(), StandardCharsets.UTF_8);
            }
            if (inkstrata.json()) {
                out.println(Json.text(json(planned, files.sets().get(0), inspection)));
            } else {
                inspection.findings().forEach(finding -> out.println(Notices.line(finding)));
                inspection.verdict().ifPresent(verdict -> out.println(verdict.line()));
            }
            return failOn.exitCode(inspection.findings());
        }
    }

    /** What a second set of the same films adds to what was found in the first. */
    private static Inspection news(Inspection known, Inspection more) {
        List<Finding> news = more.findings().stream()
                .filter(finding -> !known.findings().contains(finding))
                .toList();
        return known.and(new Inspection(news, more.verdict()));
    }

    private static List<Optional<Film>> films(List<Optional<FilmSource>> sources, Separation planned, Progress progress)
            throws IOException {
        FilmReader reader =
                new FilmReader(planned.table().sheet(), planned.artwork().frame());
        List<Optional<Film>> films = new ArrayList<>();
        for (int pull = 0; pull < sources.size(); pull++) {
            Optional<FilmSource> source = sources.get(pull);
            Ink ink = planned.plan().pulls().get(pull).ink();
            progress.begins("reading " + source.map(FilmSource::toString).orElse("nothing"));
            films.add(
                    source.isEmpty()
                            ? Optional.empty()
                            : Optional.of(source.get().read(reader, ink)));
        }
        return films;
    }

    /** @throws CommandFault if the map would take the place of a file that is no such map */
    private void requireRoom() throws IOException {
        if (map != null && Files.exists(map) && !replaces && !FindingsMap.isOne(map)) {
            throw new CommandFault("--map " + map
                    + ": there is such a file, and it is no map that was drawn here. Name another, or add --replace.");
        }
    }

    /** @throws CommandFault if the map would take the place of a drawing, the job file or a film */
    private void requireUnread(FilmFiles films) throws IOException {
        List<Path> read = new ArrayList<>(arguments.files());
        films.sets().forEach(set -> set.forEach(film -> film.ifPresent(source -> read.add(source.file()))));
        for (Path file : read) {
            if (map != null && Files.exists(map) && Files.exists(file) && Files.isSameFile(map, file)) {
                throw new CommandFault(
                        "--map " + map + ": this file was read, and the map would take its place. Name another.");
            }
        }
    }

    private static Map<String, Object> json(
            Separation planned, List<Optional<FilmSource>> files, Inspection inspection) {
        List<Map<String, Object>> films = new ArrayList<>();
        for (int pull = 0; pull < files.size(); pull++) {
            Map<String, Object> film = new LinkedHashMap<>();
            film.put("pull", pull + 1);
            film.put("ink", planned.plan().pulls().get(pull).ink().name());
            files.get(pull).ifPresent(file -> film.put("file", file.toString()));
            films.add(film);
        }
        Map<String, Object> result = Remarks.result(inspection);
        result.put("films", films);
        result.put("findings", Remarks.findings(inspection.findings()));
        return result;
    }
}
