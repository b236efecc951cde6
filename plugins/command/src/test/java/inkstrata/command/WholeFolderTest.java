package inkstrata.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WholeFolderTest {
    @TempDir
    private Path folder;

    @Test
    void isNotThereBeforeAllOfItIs() throws IOException {
        Path films = folder.resolve("prints/films");
        try (WholeFolder whole = WholeFolder.begin(films, true)) {
            put(whole, "01-sand.svg", "sand");
            put(whole, "proofs/all.svg", "all");
            assertThat(films).doesNotExist();
            whole.publish();
        }
        assertThat(Trees.files(films)).containsExactly("01-sand.svg", "SHA256SUMS", "proofs/all.svg");
        assertThat(Trees.files(folder.resolve("prints")))
                .as("nothing else is left")
                .hasSize(3);
    }

    @Test
    void isNeverThereWhereWritingBrokeOff() throws IOException {
        try (WholeFolder whole = WholeFolder.begin(folder.resolve("films"), true)) {
            put(whole, "01-sand.svg", "sand");
        }
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void saysWhereNoFolderCanBeMade() throws IOException {
        Files.writeString(folder.resolve("notes"), "not a folder");
        Path films = folder.resolve("notes/films");
        assertThatThrownBy(() -> WholeFolder.begin(films, false))
                .isInstanceOf(CommandFault.class)
                .hasMessage(
                        films
                                + ": no folder can be made here. Name another: one whose parents are folders that may be written.");
    }

    /** SHA-256 of "abc": FIPS 180-4, example of the standard (SHA256 example, one-block message). */
    @Test
    void listsChecksums() throws IOException {
        write("films", "abc");
        assertThat(folder.resolve("films/SHA256SUMS")).hasContent("""
                        # Written by Inkstrata, which replaces this folder when asked as long as all of it is unchanged.
                        ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  01-sand.svg
                        """);
    }

    @Test
    void leavesAFolderAloneWhoseListSomebodyElseWrote() throws IOException {
        Path films = Files.createDirectory(folder.resolve("films"));
        Files.writeString(films.resolve("a.txt"), "abc");
        Files.writeString(
                films.resolve("SHA256SUMS"),
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  a.txt\n");
        refuses("holds SHA256SUMS, which was not written here");
        Files.delete(films.resolve("a.txt"));
        refuses("holds SHA256SUMS, which was not written here");
    }

    @Test
    void leavesAFolderAloneIntoWhichSomethingCameMeanwhile() throws IOException {
        write("films", "sand");
        try (WholeFolder whole = WholeFolder.begin(folder.resolve("films"), true)) {
            put(whole, "01-rust.svg", "rust");
            Files.writeString(folder.resolve("films/mine.txt"), "mine");
            assertThatThrownBy(whole::publish)
                    .isInstanceOf(CommandFault.class)
                    .hasMessageContaining("holds mine.txt, which was not written here");
        }
        assertThat(Trees.files(folder)).containsExactly("films/01-sand.svg", "films/SHA256SUMS", "films/mine.txt");
    }

    @Test
    void ofTwoRunsIntoOneNewFolderTheSecondIsToldAtOnce() throws IOException {
        try (WholeFolder first = WholeFolder.begin(folder.resolve("films"), false)) {
            put(first, "01-sand.svg", "sand");
            assertThatThrownBy(() -> WholeFolder.begin(folder.resolve("films"), true))
                    .isInstanceOf(CommandFault.class)
                    .hasMessageContaining("another run (process ")
                    .hasMessageContaining("is writing this folder");
            first.publish();
        }
        assertThat(Trees.files(folder)).containsExactly("films/01-sand.svg", "films/SHA256SUMS");
    }

    /** As where both looked before either had begun. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void ofTwoRunsIntoOneNewFolderTheSlowerLoses(boolean replaces) throws IOException {
        try (WholeFolder slower = WholeFolder.begin(folder.resolve("films"), replaces)) {
            put(slower, "01-rust.svg", "rust");
            write("elsewhere", "sand");
            Files.move(folder.resolve("elsewhere"), folder.resolve("films"));
            assertThatThrownBy(slower::publish)
                    .isInstanceOf(CommandFault.class)
                    .hasMessageContaining("another run has written this folder meanwhile");
        }
        assertThat(Trees.files(folder)).containsExactly("films/01-sand.svg", "films/SHA256SUMS");
        assertThat(folder.resolve("films/01-sand.svg")).hasContent("sand");
    }

    @Test
    void ofTwoRunsThatReplaceOneSetTheSlowerLoses() throws IOException {
        write("films", "old");
        try (WholeFolder slower = WholeFolder.begin(folder.resolve("films"), true)) {
            put(slower, "01-rust.svg", "rust");
            write("elsewhere", "new");
            Trees.delete(folder.resolve("films"));
            Files.move(folder.resolve("elsewhere"), folder.resolve("films"));
            assertThatThrownBy(slower::publish).hasMessageContaining("another run has written this folder meanwhile");
        }
        assertThat(Trees.files(folder)).containsExactly("films/01-sand.svg", "films/SHA256SUMS");
        assertThat(folder.resolve("films/01-sand.svg")).hasContent("new");
    }

    /** Many at once: whoever loses says so, and what is there in the end is one run's set and whole. */
    @Test
    void ofManyRunsAtOnceOneWins() throws Exception {
        int runs = 8;
        CyclicBarrier together = new CyclicBarrier(runs);
        ExecutorService crew = Executors.newFixedThreadPool(runs);
        List<Future<String>> ends = new ArrayList<>();
        for (int i = 0; i < runs; i++) {
            String mine = "set " + i;
            ends.add(crew.submit(() -> {
                together.await();
                try (WholeFolder whole = WholeFolder.begin(folder.resolve("films"), false)) {
                    put(whole, "01-sand.svg", mine);
                    put(whole, "02-rust.svg", mine);
                    whole.publish();
                    return mine;
                } catch (CommandFault lost) {
                    return lost.getMessage();
                }
            }));
        }
        List<String> ended = new ArrayList<>();
        for (Future<String> end : ends) {
            ended.add(end.get(60, TimeUnit.SECONDS));
        }
        crew.shutdown();
        assertThat(ended).filteredOn(end -> end.startsWith("set ")).hasSize(1);
        assertThat(ended)
                .filteredOn(end -> !end.startsWith("set "))
                .allMatch(end -> end.contains("another run") || end.contains("holds an older set"));
        String won =
                ended.stream().filter(end -> end.startsWith("set ")).findFirst().orElseThrow();
        assertThat(Trees.files(folder)).containsExactly("films/01-sand.svg", "films/02-rust.svg", "films/SHA256SUMS");
        assertThat(folder.resolve("films/01-sand.svg")).hasContent(won);
        assertThat(folder.resolve("films/02-rust.svg")).hasContent(won);
    }

    @Test
    void replacesWhatWasWrittenHere() throws IOException {
        write("films", "sand");
        try (WholeFolder whole = WholeFolder.begin(folder.resolve("films"), true)) {
            put(whole, "01-rust.svg", "rust");
            whole.publish();
        }
        assertThat(Trees.files(folder)).containsExactly("films/01-rust.svg", "films/SHA256SUMS");
    }

    @Test
    void replacesNothingUnasked() throws IOException {
        write("films", "sand");
        assertThatThrownBy(() -> WholeFolder.begin(folder.resolve("films"), false))
                .isInstanceOf(CommandFault.class)
                .hasMessageEndingWith("films: the folder holds an older set. Add --replace, or name another folder.");
        assertThat(folder.resolve("films/01-sand.svg")).hasContent("sand");
    }

    @Test
    void takesAnEmptyFolder() throws IOException {
        Files.createDirectory(folder.resolve("films"));
        write("films", "sand");
        assertThat(folder.resolve("films/01-sand.svg")).hasContent("sand");
    }

    @Test
    void leavesAFolderAloneThatHoldsSomethingElse() throws IOException {
        write("films", "sand");
        Files.writeString(folder.resolve("films/notes.txt"), "mine");
        refuses("holds notes.txt, which was not written here");
        assertThat(folder.resolve("films/notes.txt")).hasContent("mine");
    }

    @Test
    void leavesAFolderAloneWhereAFilmWasTouchedUp() throws IOException {
        write("films", "sand");
        Files.writeString(folder.resolve("films/01-sand.svg"), "sand, and a scratch");
        refuses("01-sand.svg was changed after it was written");
    }

    @Test
    void doesNotFollowLinks() throws IOException {
        write("films", "sand");
        Files.createDirectory(folder.resolve("elsewhere"));
        Files.writeString(folder.resolve("elsewhere/mine.txt"), "mine");
        Files.createSymbolicLink(folder.resolve("films/link"), folder.resolve("elsewhere"));
        refuses("holds link");
        Files.createSymbolicLink(folder.resolve("other"), folder.resolve("elsewhere"));
        assertThatThrownBy(() -> WholeFolder.begin(folder.resolve("other"), true))
                .hasMessageContaining("not a folder");
        assertThat(folder.resolve("elsewhere/mine.txt")).exists();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"../out.svg", "/out.svg", "a//b", "a/", ".hidden", "a/.hidden", "", "SHA256SUMS", "a\\b", "ü.svg"
            })
    void namesStayInside(String name) throws IOException {
        try (WholeFolder whole = WholeFolder.begin(folder.resolve("films"), true)) {
            assertThatThrownBy(() -> whole.create(name))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("not a name");
        }
    }

    @Test
    void aNameIsTakenOnce() throws IOException {
        try (WholeFolder whole = WholeFolder.begin(folder.resolve("films"), true)) {
            put(whole, "a.svg", "one");
            assertThatThrownBy(() -> whole.create("a.svg")).hasMessageContaining("two plug-ins want to write it");
        }
    }

    private void refuses(String why) throws IOException {
        List<String> before = Trees.files(folder);
        assertThatThrownBy(() -> WholeFolder.begin(folder.resolve("films"), true))
                .isInstanceOf(CommandFault.class)
                .hasMessageContaining(why);
        assertThat(Trees.files(folder)).isEqualTo(before);
    }

    private void write(String name, String text) throws IOException {
        try (WholeFolder whole = WholeFolder.begin(folder.resolve(name), true)) {
            put(whole, "01-sand.svg", text);
            whole.publish();
        }
    }

    private static void put(WholeFolder whole, String name, String text) throws IOException {
        try (OutputStream out = whole.create(name)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }
}
