package inkstrata.command;

import inkstrata.film.FilmSheet;
import inkstrata.job.Job;
import inkstrata.plan.PrintPlan;
import inkstrata.plugin.FilmFormat;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Which film of a folder is which pull's: as the job says, as the folder's own {@code films.json} says, by the ink's name, or by order.
 *
 * <p>A folder may hold films several times, in several kinds of files. Outlines are read rather than pixels; the others are read as well, unless they and
 * those that were read are as they were written here.
 *
 * @param sets one or more: for each pull, by position, its film; empty where there is none. Later ones hold other kinds of files
 * @param strays those that are no pull's film
 */
record FilmFiles(List<List<Optional<FilmSource>>> sets, StrayFilms strays) {
    /** Pictures of the set, and tiles, in a folder whose list of files was lost. */
    private static final Set<String> COMPANIONS = Set.of("overview.svg", "overview.png", "tiles.pdf");

    FilmFiles {
        sets = List.copyOf(sets);
    }

    /** Whether not one film is known to be an ink's. */
    boolean areAllStrays() {
        return sets.stream().allMatch(set -> set.stream().allMatch(Optional::isEmpty));
    }

    /**
     * Finds them.
     *
     * @param formats that read films, beside SVG
     * @throws CommandFault if the folder or a file that the job names is not there, or two films are one ink's
     * @throws inkstrata.artwork.ArtworkException if a file is damaged
     */
    static FilmFiles in(Path folder, PrintPlan plan, Job job, List<FilmFormat> formats, SetRecord record)
            throws IOException {
        return new Search(folder, plan, job, formats, record).found();
    }

    private static final class Search {
        private final Path folder;
        private final Job job;
        private final List<FilmFormat> formats;
        private final SetRecord record;
        private final FilmNaming naming;
        private final List<String> inks;

        Search(Path folder, PrintPlan plan, Job job, List<FilmFormat> formats, SetRecord record) {
            this.folder = folder;
            this.job = job;
            this.formats = formats;
            this.record = record;
            this.inks = plan.pulls().stream().map(pull -> pull.ink().name()).toList();
            this.naming = new FilmNaming(inks, record);
        }

        FilmFiles found() throws IOException {
            requireFolder();
            requireInks();
            List<FilmSource> all = new ArrayList<>();
            for (Path file : files()) {
                all.addAll(sources(file));
            }
            if (all.isEmpty()) {
                throw new CommandFault(
                        folder + ": there are no films in this folder. They are read from files that end in "
                                + endings() + ".");
            }
            List<List<FilmSource>> candidates = new ArrayList<>();
            for (int pull = 0; pull < inks.size(); pull++) {
                candidates.add(candidates(pull, all));
            }
            return new FilmFiles(sets(candidates), strays(all, candidates));
        }

        private void requireFolder() {
            if (!Files.isDirectory(folder)) {
                throw new CommandFault(folder
                        + (Files.exists(folder)
                                ? ": this is a file. Name the folder that it is in."
                                : ": there is no such folder of films. Look at its name."));
            }
        }

        private void requireInks() {
            for (String named : job.films().keySet()) {
                if (!inks.contains(named)) {
                    throw new CommandFault(job.file() + ": films names '" + named
                            + "', but no pull prints that ink. Mend the name; inks are: " + String.join(", ", inks)
                            + ".");
                }
            }
        }

        private String endings() {
            return Stream.concat(
                            Stream.of("svg", "svgz"), formats.stream().flatMap(format -> format.endings().stream()))
                    .collect(Collectors.joining(", "));
        }

        private Optional<FilmFormat> format(Path file) {
            return formats.stream()
                    .filter(format -> format.endings().contains(FilmSource.ending(file)))
                    .findFirst();
        }

        /** Those that may hold films as a whole. */
        private List<Path> files() throws IOException {
            List<Path> files = new ArrayList<>();
            try (DirectoryStream<Path> listed = Files.newDirectoryStream(folder)) {
                for (Path file : listed) {
                    if (Files.isRegularFile(file) && mayHoldFilms(file)) {
                        files.add(file);
                    }
                }
            }
            Collections.sort(files);
            return files;
        }

        private boolean mayHoldFilms(Path file) throws IOException {
            boolean isKind = List.of("svg", "svgz").contains(FilmSource.ending(file))
                    || format(file).isPresent();
            return isKind
                    && !COMPANIONS.contains(String.valueOf(file.getFileName()))
                    && record.of(file).map(SetRecord.Entry::isFilms).orElse(true)
                    && !FindingsMap.isOne(file);
        }

        /** Files that hold one film by what was written down are not opened yet. */
        private List<FilmSource> sources(Path file) throws IOException {
            Optional<SetRecord.Entry> entry = record.of(file);
            Optional<FilmFormat> format = format(file);
            boolean isOne = format.isEmpty()
                    || entry.filter(known -> known.what().equals("film")).isPresent();
            if (isOne) {
                return List.of(new FilmSource(file, format, 0, 1, "", entry.flatMap(SetRecord.Entry::corner)));
            }
            // Images do not say where on the sheet they lie, and all films of a set lie alike.
            boolean isImage = List.of("tif", "tiff", "png").contains(FilmSource.ending(file));
            List<FilmSheet> sheets = format.get().open(String.valueOf(file.getFileName()), FilmSource.content(file));
            List<FilmSource> sources = new ArrayList<>();
            for (int i = 0; i < sheets.size(); i++) {
                sources.add(new FilmSource(
                        file,
                        format,
                        i,
                        sheets.size(),
                        sheets.get(i).label(),
                        isImage ? record.filmCorner() : Optional.empty()));
            }
            return sources;
        }

        private List<FilmSource> candidates(int pull, List<FilmSource> all) throws IOException {
            String said = job.films().get(inks.get(pull));
            if (said != null) {
                return List.of(said(pull, said));
            }
            return all.stream()
                    .filter(source -> naming.isFilmOf(source, pull))
                    .sorted(Comparator.comparingInt(FilmSource::preference))
                    .toList();
        }

        /** As the job names it: {@code plate1.svg}, {@code films.pdf#3}, {@code inks.pdf#rust}. */
        private FilmSource said(int pull, String named) throws IOException {
            int hash = named.lastIndexOf('#');
            boolean isPart = hash > 0 && !Files.isRegularFile(folder.resolve(named));
            String name = isPart ? named.substring(0, hash) : named;
            String part = isPart ? named.substring(hash + 1) : "";
            Path file = folder.resolve(name);
            if (!Files.isRegularFile(file)) {
                throw new CommandFault(
                        job.file() + ": films names " + name + ", which is not in " + folder + ". Mend the name.");
            }
            List<FilmSource> sources = sources(file);
            Optional<FilmSource> found = sources.size() == 1 && part.isEmpty()
                    ? Optional.of(sources.get(0))
                    : sources.stream()
                            .filter(source -> part.isEmpty()
                                    ? naming.isFilmOf(source, pull)
                                    : source.label().equals(part)
                                            || Integer.toString(source.index() + 1)
                                                    .equals(part))
                            .findFirst();
            return found.orElseThrow(() -> new CommandFault(job.file() + ": films names " + named + ", but " + name
                    + " holds " + sources.size() + " films and none is known by that. Say which: films: {"
                    + inks.get(pull) + ": \"" + name + "#1\"}."));
        }

        private List<List<Optional<FilmSource>>> sets(List<List<FilmSource>> candidates) throws IOException {
            for (int pull = 0; pull < inks.size(); pull++) {
                requireOneOfAKind(inks.get(pull), candidates.get(pull));
            }
            List<List<Optional<FilmSource>>> sets = new ArrayList<>();
            int most = candidates.stream().mapToInt(List::size).max().orElse(0);
            for (int kind = 0; kind < Math.max(1, most); kind++) {
                List<Optional<FilmSource>> set = new ArrayList<>();
                boolean isNews = kind == 0;
                for (List<FilmSource> of : candidates) {
                    set.add(of.isEmpty() ? Optional.empty() : Optional.of(of.get(Math.min(kind, of.size() - 1))));
                    isNews |= kind < of.size() && !isKnownToBeAlike(of.get(0), of.get(kind));
                }
                if (isNews) {
                    sets.add(set);
                }
            }
            return sets;
        }

        /** Whether two films were written here together and are as they were. */
        private boolean isKnownToBeAlike(FilmSource one, FilmSource other) throws IOException {
            return record.isUnchanged(one.file()) && record.isUnchanged(other.file());
        }

        private static void requireOneOfAKind(String ink, List<FilmSource> films) {
            for (FilmSource film : films) {
                List<FilmSource> alike = films.stream()
                        .filter(other -> other.preference() == film.preference() && isAlike(film, other))
                        .toList();
                if (alike.size() > 1) {
                    throw new CommandFault("several files could be the film of " + ink + ": "
                            + alike.stream().map(FilmSource::nameInFolder).collect(Collectors.joining(", "))
                            + ". Say under films in the job file which one is.");
                }
            }
        }

        /** A page of a film and a plate of it are two kinds. */
        private static boolean isAlike(FilmSource one, FilmSource other) {
            return one.isOneOfMany() == other.isOneOfMany()
                    && one.label().isEmpty() == other.label().isEmpty();
        }

        private StrayFilms strays(List<FilmSource> all, List<List<FilmSource>> candidates) {
            Set<FilmSource> known = new HashSet<>();
            candidates.forEach(known::addAll);
            return new StrayFilms(
                    all.stream().filter(source -> !known.contains(source)).toList(),
                    IntStream.range(0, candidates.size())
                            .filter(pull -> candidates.get(pull).isEmpty())
                            .boxed()
                            .toList());
        }
    }
}
