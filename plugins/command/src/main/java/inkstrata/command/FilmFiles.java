package inkstrata.command;

import inkstrata.job.Job;
import inkstrata.plan.PrintPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which file of a folder is which pull's film: as the job says, else by the ink's name. */
final class FilmFiles {
    private static final Pattern NUMBERED =
            Pattern.compile("(\\d*)[^\\p{L}\\d]*(.*?)\\.svgz?", Pattern.CASE_INSENSITIVE);

    /** Names are compared so far: films' names are cut. */
    private static final int COMPARED = 30;

    private FilmFiles() {}

    /**
     * One for each pull, by position; empty where there is none.
     *
     * @throws CommandFault if the folder or a file that the job names is not there, or two files have one ink's name
     */
    static List<Optional<Path>> in(Path folder, PrintPlan plan, Job job) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new CommandFault(folder
                    + (Files.exists(folder)
                            ? ": this is a file. Name the folder that it is in."
                            : ": there is no such folder of films. Look at its name."));
        }
        List<Path> files = films(folder);
        if (files.isEmpty()) {
            throw new CommandFault(folder + ": there is no SVG in this folder. Films are read from SVG files alone.");
        }
        List<String> inks = plan.pulls().stream().map(pull -> pull.ink().name()).toList();
        for (String named : job.films().keySet()) {
            if (!inks.contains(named)) {
                throw new CommandFault(job.file() + ": films names '" + named
                        + "', but no pull prints that ink. Mend the name; inks are: " + String.join(", ", inks) + ".");
            }
        }
        List<Optional<Path>> found = new ArrayList<>();
        for (int pull = 0; pull < inks.size(); pull++) {
            String named = job.films().get(inks.get(pull));
            found.add(named == null ? byName(files, inks, pull) : Optional.of(said(folder, named, job.file())));
        }
        return found;
    }

    private static List<Path> films(Path folder) throws IOException {
        try (Stream<Path> listed = Files.list(folder)) {
            return listed.filter(file -> NUMBERED.matcher(name(file)).matches())
                    .sorted()
                    .toList();
        }
    }

    /** What to say of SVG files that are no pull's film, but for the overview that comes with films. */
    static List<String> strays(Path folder, List<Optional<Path>> films) throws IOException {
        List<Path> known = films.stream().flatMap(Optional::stream).toList();
        return films(folder).stream()
                .filter(file -> !known.contains(file) && !name(file).equals("overview.svg"))
                .map(file -> file
                        + " is no ink's film and was not read. If it should be, say so under films in the job file.")
                .toList();
    }

    private static Path said(Path folder, String named, String jobFile) {
        Path file = folder.resolve(named);
        if (!Files.isRegularFile(file)) {
            throw new CommandFault(
                    jobFile + ": films names " + named + ", which is not in " + folder + ". Mend the name.");
        }
        return file;
    }

    /** Files numbered as other pulls of an ink of that name are theirs. */
    private static Optional<Path> byName(List<Path> files, List<String> inks, int pull) {
        String ink = inks.get(pull);
        List<String> others = IntStream.range(0, inks.size())
                .filter(other -> other != pull && plain(inks.get(other)).equals(plain(ink)))
                .mapToObj(other -> Integer.toString(other + 1))
                .toList();
        List<Path> best = files.stream()
                .filter(file -> plain(words(file)).equals(plain(ink)) && !others.contains(number(file)))
                .toList();
        if (best.size() > 1) {
            throw new CommandFault("several files could be the film of " + ink + ": "
                    + best.stream().map(FilmFiles::name).collect(Collectors.joining(", "))
                    + ". Say under films in the job file which one is.");
        }
        return best.stream().findFirst();
    }

    private static String words(Path file) {
        return matched(file).group(2);
    }

    private static String number(Path file) {
        return matched(file).group(1).replaceFirst("^0+", "");
    }

    private static Matcher matched(Path file) {
        Matcher matcher = NUMBERED.matcher(name(file));
        if (!matcher.matches()) {
            throw new IllegalArgumentException(file + " is no film");
        }
        return matcher;
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static String plain(String words) {
        String letters = Normalizer.normalize(words, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\d]+", "");
        return letters.substring(0, Math.min(COMPARED, letters.length()));
    }
}
