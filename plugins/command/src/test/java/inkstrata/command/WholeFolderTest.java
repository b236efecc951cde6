package inkstrata.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
