package inkstrata.command;

import static inkstrata.command.AtTheCounter.drawing;
import static inkstrata.command.AtTheCounter.say;
import static inkstrata.command.AtTheCounter.write;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A set is replaced by another, and at one of the operations on files, whichever it is, the program ends or the disk refuses. */
class BrokenOffTest {
    /** More than any set here needs. */
    private static final int MANY = 200;

    private static final String OLDER = "older";
    private static final String NEWER = "newer";

    @TempDir
    private Path folder;

    /** The program is no more: nothing of it runs any longer. */
    private static final class Ended extends Error {
        private static final long serialVersionUID = 1L;
    }

    /** Ends the program before an operation, and lets it do nothing after that. */
    private static final class EndsAt implements CountedFiles.Before {
        private final int last;
        private boolean isTestOver;

        EndsAt(int last) {
            this.last = last;
        }

        @Override
        public void operation(int number, String what) throws IOException {
            if (isTestOver) {
                throw new IOException("the test is over");
            }
            if (number >= last) {
                throw new Ended();
            }
        }
    }

    @Test
    void afterEveryOperationTheSetIsTheOldOneTheNewOneOrNone() throws Exception {
        Set<String> states = new HashSet<>();
        int operation = 1;
        boolean isDone = false;
        for (; !isDone; operation++) {
            assertThat(operation).isLessThan(MANY);
            Path shop = Files.createDirectory(folder.resolve("shop" + operation));
            replace(shop.resolve("films"), OLDER);
            EndsAt end = new EndsAt(operation);
            isDone = isDone(new CountedFiles(end).path(shop.resolve("films")));
            end.isTestOver = true;
            String state = state(shop.resolve("films"));
            assertThat(state).as("ended before operation %d", operation).isIn(OLDER, NEWER, "none");
            boolean isOldAside = state.equals("none");
            states.add(state);
            theProcessIsNoMore(shop);
            // The next run gives an old set its name back, before it writes anything.
            Leftovers.tidy(shop.resolve("films"));
            assertThat(state(shop.resolve("films"))).isEqualTo(isOldAside ? OLDER : state);
            replace(shop.resolve("films"), "next");
            assertThat(state(shop.resolve("films"))).isEqualTo("next");
            assertThat(beside(shop)).as("nothing else is left").containsExactly("films");
        }
        assertThat(states).as("all moments were met").containsExactlyInAnyOrder(OLDER, NEWER, "none");
        assertThat(operation).as("operations").isGreaterThan(15);
    }

    @Test
    void whereNoSetWasThereIsNoneOrTheNewOne() throws Exception {
        boolean isDone = false;
        for (int operation = 1; !isDone; operation++) {
            assertThat(operation).isLessThan(MANY);
            Path shop = Files.createDirectory(folder.resolve("shop" + operation));
            EndsAt end = new EndsAt(operation);
            isDone = isDone(new CountedFiles(end).path(shop.resolve("films")));
            end.isTestOver = true;
            assertThat(state(shop.resolve("films"))).isIn(NEWER, "none");
            theProcessIsNoMore(shop);
            replace(shop.resolve("films"), "next");
            assertThat(beside(shop)).containsExactly("films");
        }
    }

    /** One operation fails, as where somebody else holds a file; all others are done. */
    @Test
    void afterOneOperationThatFailsTheSetIsTheOldOneOrTheNewOneWholeAsIsTold() throws Exception {
        boolean isDone = false;
        for (int operation = 1; !isDone; operation++) {
            assertThat(operation).isLessThan(MANY);
            Path shop = Files.createDirectory(folder.resolve("shop" + operation));
            replace(shop.resolve("films"), OLDER);
            int failing = operation;
            CountedFiles files = new CountedFiles((number, what) -> {
                if (number == failing) {
                    throw new FileSystemException(what, null, "refused");
                }
            });
            try {
                replace(files.path(shop.resolve("films")), NEWER);
                isDone = files.operations() < failing;
                // A folder that was there all along need not be made.
                assertThat(state(shop.resolve("films")))
                        .as("operation %d failed and nobody was told", failing)
                        .isEqualTo(NEWER);
            } catch (IOException | CommandFault told) {
                assertThat(state(shop.resolve("films")))
                        .as("operation %d failed: %s", failing, told)
                        .isIn(OLDER, NEWER);
            }
            theProcessIsNoMore(shop);
            replace(shop.resolve("films"), "next");
            assertThat(beside(shop)).containsExactly("films");
        }
    }

    /** From one moment on nothing more can be written; names can be changed and things taken away. */
    @Test
    void aDiskThatIsFullKeepsTheOldSetAndNothingElse() throws Exception {
        boolean isDone = false;
        for (int operation = 1; !isDone; operation++) {
            assertThat(operation).isLessThan(MANY);
            Path shop = Files.createDirectory(folder.resolve("shop" + operation));
            replace(shop.resolve("films"), OLDER);
            int full = operation;
            CountedFiles files = new CountedFiles((number, what) -> {
                if (number >= full && (what.startsWith("write") || what.startsWith("make"))) {
                    throw new FileSystemException(what, null, "No space left on device");
                }
            });
            String left = OLDER;
            try {
                replace(files.path(shop.resolve("films")), NEWER);
                left = NEWER;
                isDone = files.operations() < full;
            } catch (IOException told) {
                assertThat(told).hasMessageContaining("No space left");
            } catch (CommandFault told) {
                assertThat(told).hasRootCauseMessage(told.getCause().getMessage());
            }
            assertThat(state(shop.resolve("films"))).isEqualTo(left);
            assertThat(beside(shop)).containsExactly("films");
        }
    }

    /** Whatever is wrong with a file is 3: look at the disk; and never 4, a fault of the program. */
    @Test
    void faultsOfFilesAreNoFaultsOfTheProgram() {
        for (IOException fault : new IOException[] {
            new IOException("No space left on device"),
            new FileSystemException("a.svg", null, "Read-only file system"),
            new NoSuchFileException("a.svg")
        }) {
            StringWriter said = new StringWriter();
            int code = new Faults(new PrintWriter(new StringWriter()), new PrintWriter(said), false).of(fault, false);
            assertThat(code).isEqualTo(3);
            assertThat(said.toString())
                    .startsWith("inkstrata: a file can't be read or written: ")
                    .contains(fault.getMessage())
                    .doesNotContain("fault of the program");
        }
    }

    @Test
    void aFolderThatIsALinkIsLeftAlone() throws IOException {
        Path boats = write(folder.resolve("boats.svg"), drawing());
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path kept = write(elsewhere.resolve("kept.txt"), "mine");
        Path films = Files.createSymbolicLink(folder.resolve("films"), elsewhere);
        AtTheCounter answer = say("separate", boats, "-o", films, "--replace");
        answer.failsWith(ExitCode.COMMAND_AT_FAULT, "this is not a folder");
        assertThat(films).isSymbolicLink();
        assertThat(kept).hasContent("mine");
        assertThat(beside(folder)).containsExactlyInAnyOrder("boats.svg", "elsewhere", "films");
    }

    @Test
    void aFileThatVanishedWhileItWasWrittenIsTold() throws IOException {
        Path films = folder.resolve("films");
        replace(films, OLDER);
        try (WholeFolder whole = WholeFolder.begin(films, true)) {
            put(whole, "01-sand.svg", NEWER);
            try (var hidden = Files.list(folder)) {
                for (Path path : hidden.filter(path -> !path.equals(films)).toList()) {
                    Trees.delete(path);
                }
            }
            assertThatThrownBy(whole::publish).isInstanceOf(IOException.class);
        }
        assertThat(state(films)).isEqualTo(OLDER);
    }

    private static boolean isDone(Path films) throws IOException {
        try {
            replace(films, NEWER);
            return true;
        } catch (Ended ended) {
            return false;
        }
    }

    private static void replace(Path films, String text) throws IOException {
        try (WholeFolder whole = WholeFolder.begin(films, true)) {
            put(whole, "01-sand.svg", text);
            put(whole, "02-rust.svg", text);
            put(whole, "tiles/01.svg", text);
            whole.publish();
        }
    }

    private static void put(WholeFolder whole, String name, String text) throws IOException {
        try (OutputStream out = whole.create(name)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Which set is there, whole and as it is listed; "none" if there is no folder. */
    private static String state(Path films) throws IOException {
        if (!Files.exists(films)) {
            return "none";
        }
        Map<String, String> texts = new TreeMap<>();
        for (String file : Trees.files(films)) {
            texts.put(file, Files.readString(films.resolve(file)));
        }
        String listed = texts.remove("SHA256SUMS");
        if (listed == null || !texts.keySet().equals(Set.of("01-sand.svg", "02-rust.svg", "tiles/01.svg"))) {
            return "a part: " + texts.keySet();
        }
        Set<String> kinds = new HashSet<>(texts.values());
        Replaceable.check(films, films);
        return kinds.size() == 1 ? kinds.iterator().next() : "mixed: " + texts;
    }

    /** What is left beside a set looks as if a process had made it that has ended. */
    private static void theProcessIsNoMore(Path shop) throws Exception {
        String alive = ".unfinished-" + ProcessHandle.current().pid() + "-";
        String ended = ".unfinished-" + ended() + "-";
        for (String name : beside(shop)) {
            if (name.contains(alive)) {
                Files.move(shop.resolve(name), shop.resolve(name.replace(alive, ended)));
            }
        }
    }

    /** Larger than the number of any process there can be. */
    private static long ended() {
        long none = Integer.MAX_VALUE;
        assertThat(ProcessHandle.of(none)).isEmpty();
        return none;
    }

    private static Set<String> beside(Path shop) throws IOException {
        try (var names = Files.list(shop)) {
            return new HashSet<>(
                    names.map(path -> path.getFileName().toString()).toList());
        }
    }
}
