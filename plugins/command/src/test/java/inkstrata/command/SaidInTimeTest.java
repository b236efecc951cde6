package inkstrata.command;

import static inkstrata.command.AtTheCounter.say;
import static inkstrata.command.AtTheCounter.write;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.colour.Ciede2000;
import inkstrata.colour.Rgb;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What spoils films is said on the screen by plan and separate, before anybody makes a screen. */
class SaidInTimeTest {
    @TempDir
    private Path folder;

    private Path films;

    @BeforeEach
    void aFolder() {
        films = folder.resolve("films");
    }

    @Test
    void thatTheSizeWasGuessed() throws IOException {
        Path bare = write(
                folder.resolve("bare.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='72' height='36'><rect width='72' height='36'/></svg>");
        String words = "warning: bare.svg:1 <svg>: the drawing does not say how large it is in mm or inches";
        assertThat(say("plan", bare).isDone().out()).contains(words);
        assertThat(say("separate", bare, "-o", films).isDone().err()).contains(words);
        assertThat(say("plan", bare, "--width", "72 mm").isDone().out()).doesNotContain("warning");
    }

    @Test
    void thatAFontWasReplaced() throws IOException {
        Path text = write(
                folder.resolve("text.svg"),
                svg(
                        "<text y='20' font-size='20' font-family='Flourish, serif'>A</text>"
                                + "<text y='30' font-size='9' font-family='serif'>B</text><text y='40' font-size='9'>C</text>"));
        List<String> warnings = say("plan", text)
                .isDone()
                .out()
                .lines()
                .filter(line -> line.startsWith("warning: "))
                .toList();
        assertThat(warnings)
                .singleElement()
                .asString()
                .startsWith(
                        "warning: text.svg:1 <text>: the font Flourish is not on this machine: text was drawn with ");
        assertThat(say("separate", text, "-o", films).isDone().err())
                .contains("the font Flourish is not on this machine");
    }

    @Test
    void thatLinesAreFinerThanAnyMesh() throws IOException {
        String words =
                "(fine line): black has lines finer than 0.10 mm: 1 of them, 40.0 mm long in all, limit 0.10 mm.";
        Path hair = write(folder.resolve("hair.svg"), svg("<rect x='5' y='5' width='40' height='0.08'/>"));
        assertThat(say("plan", hair).isDone().out()).contains(words);
        assertThat(say("separate", hair, "-o", films).isDone().out()).contains(words);
        Path wider = write(folder.resolve("wider.svg"), svg("<rect x='5' y='5' width='40' height='0.12'/>"));
        assertThat(say("plan", wider).isDone().out()).doesNotContain("(fine line)");
    }

    /** A strip that is seen between two others, and runs on beneath both, is wide on its film; so is one beneath another ink no line. */
    @Test
    void ofLinesOnlyThoseThatAreSeenAndPrinted() throws IOException {
        Path strip = write(
                folder.resolve("strip.svg"),
                svg("<rect width='60' height='30' fill='#f4d78c'/><rect width='30' height='30' fill='#14182c'/>"
                        + "<rect x='30.08' width='29.92' height='30' fill='#14182c'/>"));
        assertThat(say("plan", strip).isDone().out()).doesNotContain("(fine line)");
    }

    @Test
    void thatAnInkPrintsNextToNothing() throws IOException {
        String speck =
                "<rect width='20' height='20' fill='#d2603f'/><rect x='40' width='%s' height='0.9' fill='#2c594d'/>";
        String words = "(little ink): dark teal prints 0.90 mm² in all, limit 1 mm².";
        Path little = write(folder.resolve("little.svg"), svg(speck.formatted("1")));
        assertThat(say("plan", little).isDone().out()).contains(words);
        assertThat(say("separate", little, "-o", films).isDone().out()).contains(words);
        Path enough = write(folder.resolve("enough.svg"), svg(speck.formatted("1.2")));
        assertThat(say("plan", enough).isDone().out()).doesNotContain("(little ink)");
    }

    @Test
    void thatNothingPrintsAtAll() throws IOException {
        Path white = write(folder.resolve("white.svg"), svg("<rect width='20' height='20' fill='white'/>"));
        AtTheCounter plan = say("plan", white);
        assertThat(plan.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(plan.out())
                .containsOnlyOnce(
                        "(nothing prints): every colour that shows is the sheet's, #ffffff (should be: some ink).");
        assertThat(say("separate", white, "-o", films).code()).isEqualTo(ExitCode.FINDINGS);
        Path empty = write(folder.resolve("empty.svg"), svg(""));
        assertThat(say("plan", empty).code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(say("plan", empty).out()).contains("(nothing prints): the drawing has no shapes");
    }

    @Test
    void thatThereAreMoreInksThanAnybodyPrints() throws IOException {
        Path many = write(folder.resolve("many.svg"), svg(stripes(27)));
        AtTheCounter refused = say("separate", many, "-o", films);
        assertThat(refused.code()).isEqualTo(ExitCode.COMMAND_AT_FAULT);
        assertThat(refused.said().get(0))
                .isEqualTo(
                        "inkstrata: many.svg: the drawing has colours for 27 inks, more than anybody prints (over 20)."
                                + " Ask for fewer, or for all of them.");
        assertThat(refused.said()).hasSize(7);
        assertThat(films).doesNotExist();
        AtTheCounter planned = say("plan", many).isDone();
        assertThat(planned.said().subList(1, 7)).isEqualTo(refused.said().subList(1, 7));
        assertThat(planned.out()).startsWith("many.svg: 27 pulls");
        say("separate", many, "-o", films, "--inks", "27").isDone();
        say("separate", many, "-o", films, "--inks", "3", "--replace").isDone();
        say("plan", many, "--starter", folder.resolve("many.yaml")).isDone();
        say("separate", many, "-o", films, "--replace").isDone();
    }

    @Test
    void twentyInksAreNotTooMany() throws IOException {
        Path twenty = write(folder.resolve("twenty.svg"), svg(stripes(20)));
        assertThat(say("separate", twenty, "-o", films).isDone().said()).isEmpty();
    }

    /** The table says of 8 inks what the plan with 8 inks does: colours are 2 mm by 30 mm each, so that the mean by area is the plain mean. */
    @Test
    void whatFewerInksLoseIsWhatTheyLose() throws IOException {
        Path many = write(folder.resolve("many.svg"), svg(stripes(27)));
        Pattern row = Pattern.compile("\\s+8\\s+(\\d+)\\s+(\\S+)\\s+(\\S+)\\s+--inks 8");
        Matcher said = say("separate", many, "-o", films).said().stream()
                .map(row::matcher)
                .filter(Matcher::matches)
                .findFirst()
                .orElseThrow();
        List<Double> apart = Pattern.compile("(#\\w{6}) is printed with ink '[^']*' \\((#\\w{6})\\)")
                .matcher(say("plan", many, "--inks", "8").isDone().out())
                .results()
                .map(match -> Ciede2000.difference(Rgb.parse(match.group(1)), Rgb.parse(match.group(2))))
                .toList();
        assertThat(Integer.parseInt(said.group(1))).isEqualTo(apart.size()).isBetween(19, 27);
        assertThat(Double.parseDouble(said.group(2)))
                .isCloseTo(apart.stream().mapToDouble(d -> d).max().orElseThrow(), within(0.051));
        assertThat(Double.parseDouble(said.group(3)))
                .isCloseTo(apart.stream().mapToDouble(d -> d).sum() / 27, within(0.051));
    }

    @Test
    void howManyPullsGoOnEitherSide() throws IOException {
        Path boats = write(folder.resolve("boats.svg"), AtTheCounter.drawing());
        write(
                folder.resolve("boats.yaml"),
                "inks: [{name: sea, prints: '#d2603f', side: back}, {name: sky, prints: '#14182c', side: back}]");
        assertThat(say("plan", boats).isDone().out())
                .startsWith("boats.svg: 3 pulls, 1 on the front, 2 on the back of a sheet of 130.0 x 90.0 mm");
    }

    /** Greys of every lightness have a few names only, so that most get numbers. */
    @Test
    void inksThatAreCalledAlikeAreNumberedAsTheyPrint() throws IOException {
        String greys = IntStream.of(0x70, 0x90, 0x80, 0x78, 0x88)
                .mapToObj(grey -> String.format(
                        Locale.ROOT,
                        "<rect x='%d' width='4' height='30' fill='#%2$02x%2$02x%2$02x'/>",
                        grey % 60,
                        grey))
                .collect(Collectors.joining());
        Path drawing = write(folder.resolve("greys.svg"), svg(greys));
        List<String> names = say("plan", drawing)
                .isDone()
                .out()
                .lines()
                .filter(line -> line.matches(" +\\d  .*"))
                .map(line ->
                        line.replaceAll(" +\\d  (\\D*(?: \\d)?) +#.*", "$1").strip())
                .toList();
        assertThat(names).containsExactly("grey", "grey 2", "grey 3", "grey 4", "grey 5");
    }

    /** Stripes of 2 mm in colours that nobody takes for each other. */
    private static String stripes(int count) {
        int[] steps = {0x20, 0x80, 0xe0};
        return IntStream.range(0, count)
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "<rect x='%d' width='2' height='30' fill='#%02x%02x%02x'/>",
                        2 * i,
                        steps[i % 3],
                        steps[i / 3 % 3],
                        steps[i / 9 % 3]))
                .collect(Collectors.joining());
    }

    private static String svg(String content) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='40mm' viewBox='0 0 60 40'>" + content
                + "</svg>";
    }
}
