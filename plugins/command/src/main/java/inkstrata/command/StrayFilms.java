package inkstrata.command;

import inkstrata.artwork.ArtworkException;
import inkstrata.film.Film;
import inkstrata.film.FilmReader;
import inkstrata.plan.PrintPlan;
import inkstrata.planar.Region;
import inkstrata.separation.Separation;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Films in a folder that are known to be no ink's: their names say nothing. Their pictures may: a film is taken to look like that of an ink
 * if most of what the two cover they share. Nothing is checked on such a guess; the user is told what to write into the job file.
 *
 * @param files that are no ink's film
 * @param lacking positions of pulls that have no film
 */
record StrayFilms(List<FilmSource> files, List<Integer> lacking) {
    /** The least share of what either covers that both must cover (our own choice). */
    private static final double ALIKE = 0.6;

    /** So many are named, and the rest counted. */
    private static final int MOST_NAMED = 5;

    /** Of more files no pictures are looked at. */
    private static final int MOST_READ = 60;

    StrayFilms {
        files = List.copyOf(files);
        lacking = List.copyOf(lacking);
    }

    /** What to say of them; empty if there are none. */
    Optional<String> said(Separation planned) throws IOException {
        if (files.isEmpty()) {
            return Optional.empty();
        }
        List<Guess> guesses = guesses(planned);
        PrintPlan plan = planned.plan();
        String which = files.size() == 1
                ? files.get(0) + " is no ink's film by its name and was not read."
                : files.size() + " films are no ink's by their names and were not read: " + names() + ".";
        if (guesses.isEmpty()) {
            return Optional.of(which
                    + " If any should be, say so under films in the job file; inks without a film: " + inks(plan)
                    + ".");
        }
        String lines = guesses.stream()
                .map(guess -> quoted(ink(plan, guess.pull)) + ": " + quoted(guess.file.inJob()))
                .collect(Collectors.joining(", "));
        return Optional.of(which + " By "
                + (guesses.size() == 1 ? "its picture one looks" : "their pictures " + guesses.size() + " look")
                + " like films that are missing. If that is so, the job file should say films: {" + lines + "}.");
    }

    /** A stray film, and the pull that it may be the film of. */
    private record Guess(FilmSource file, int pull, double alike) {}

    private List<Guess> guesses(Separation planned) throws IOException {
        if (files.size() > MOST_READ) {
            return List.of();
        }
        FilmReader reader =
                new FilmReader(planned.table().sheet(), planned.artwork().frame());
        List<Guess> all = new ArrayList<>();
        for (FilmSource file : files) {
            for (int pull : lacking) {
                Optional<Film> film = read(file, pull, planned, reader);
                film.ifPresent(read -> all.add(new Guess(
                        file, pull, alike(read.picture(), planned.printed().get(pull)))));
            }
        }
        all.sort(Comparator.comparingDouble(Guess::alike).reversed());
        Set<FilmSource> taken = new HashSet<>();
        TreeMap<Integer, Guess> best = new TreeMap<>();
        for (Guess guess : all) {
            if (guess.alike >= ALIKE && !best.containsKey(guess.pull) && taken.add(guess.file)) {
                best.put(guess.pull, guess);
            }
        }
        return List.copyOf(best.values());
    }

    /** A file that cannot be read looks like nothing: it is nobody's film anyway. */
    private static Optional<Film> read(FilmSource file, int pull, Separation planned, FilmReader reader)
            throws IOException {
        try {
            return Optional.of(
                    file.read(reader, planned.plan().pulls().get(pull).ink()));
        } catch (ArtworkException unreadable) {
            return Optional.empty();
        }
    }

    /** The share that both cover of what either covers, 0 to 1. */
    private static double alike(Region one, Region other) {
        double both = one.intersection(other).areaMm2();
        double either = one.areaMm2() + other.areaMm2() - both;
        return either > 0 ? both / either : 0;
    }

    private String names() {
        String named =
                files.stream().limit(MOST_NAMED).map(FilmSource::nameInFolder).collect(Collectors.joining(", "));
        return files.size() > MOST_NAMED ? named + " and " + (files.size() - MOST_NAMED) + " more" : named;
    }

    private String inks(PrintPlan plan) {
        return lacking.isEmpty()
                ? "none"
                : lacking.stream().map(pull -> ink(plan, pull)).collect(Collectors.joining(", "));
    }

    private static String ink(PrintPlan plan, int pull) {
        return plan.pulls().get(pull).ink().name();
    }

    /** As YAML reads it back, whatever is in it. */
    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
