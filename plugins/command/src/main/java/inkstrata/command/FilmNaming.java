package inkstrata.command;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * By what a film is known: what was written down when it was made, its name, or its place among others.
 *
 * @param inks name of each pull's ink, first printed first
 * @param record what the folder says of itself
 */
record FilmNaming(List<String> inks, SetRecord record) {
    private static final Pattern NUMBERED = Pattern.compile("(\\d*)[^\\p{L}\\p{N}]*(.*)", Pattern.DOTALL);

    /** Names are compared so far: films' names are cut. */
    private static final int COMPARED = 30;

    FilmNaming {
        inks = List.copyOf(inks);
    }

    boolean isFilmOf(FilmSource film, int pull) {
        Optional<SetRecord.Entry> entry = record.of(film.file());
        if (entry.isPresent() && !film.isOneOfMany() && !entry.get().ink().isEmpty()) {
            return isNamed(entry.get().ink(), entry.get().pull(), pull);
        }
        if (!film.label().isEmpty()) {
            return isWritten(film.label(), pull);
        }
        if (film.isOneOfMany()) {
            return inOrder(film, pull);
        }
        return isWritten(film.name().replaceFirst("\\.[^.]*$", ""), pull);
    }

    /** Pages without names lie in print order: of the set as it was written, or of this one if there are as many. */
    private boolean inOrder(FilmSource film, int pull) {
        if (record.of(film.file()).isPresent() && record.inks().size() == film.count()) {
            return isNamed(record.inks().get(film.index()), film.index() + 1, pull);
        }
        return film.count() == inks.size() && film.index() == pull;
    }

    /** Of several pulls of one ink the number tells. */
    private boolean isNamed(String ink, int number, int pull) {
        return inks.get(pull).equals(ink)
                && (inks.stream().filter(ink::equals).count() == 1
                        || number == pull + 1
                        || nearest(ink, number) == pull);
    }

    /** If no pull of that ink has the number, the one whose turn it is. */
    private int nearest(String ink, int number) {
        int turn = (int) record.inks().stream()
                .limit(Math.max(0, number - 1))
                .filter(ink::equals)
                .count();
        int[] pulls = IntStream.range(0, inks.size())
                .filter(pull -> inks.get(pull).equals(ink))
                .toArray();
        return turn < pulls.length ? pulls[turn] : -1;
    }

    /** Files numbered as other pulls of an ink of that name are theirs. */
    private boolean isWritten(String name, int pull) {
        Matcher matcher = NUMBERED.matcher(name);
        if (!matcher.matches()) {
            return false;
        }
        String number = matcher.group(1).replaceFirst("^0+", "");
        String ink = inks.get(pull);
        List<String> others = IntStream.range(0, inks.size())
                .filter(other -> other != pull && plain(inks.get(other)).equals(plain(ink)))
                .mapToObj(other -> Integer.toString(other + 1))
                .toList();
        boolean isNamed =
                plain(matcher.group(2)).equals(plain(ink)) || plain(name).equals(plain(ink));
        return (isNamed && !others.contains(number))
                || (number.equals(Integer.toString(pull + 1))
                        && latin(matcher.group(2)).equals(latin(ink)));
    }

    private static String plain(String words) {
        String letters = Normalizer.normalize(words, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "");
        return letters.substring(0, Math.min(COMPARED, letters.length()));
    }

    /** As film files are named: what is left in ASCII letters and digits, or a word that stands for nothing left. */
    private static String latin(String words) {
        String letters = Normalizer.normalize(words, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "");
        String cut = letters.substring(0, Math.min(COMPARED, letters.length()));
        return cut.isEmpty() ? "ink" : cut;
    }
}
