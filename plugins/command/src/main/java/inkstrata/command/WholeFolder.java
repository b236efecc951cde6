package inkstrata.command;

import inkstrata.plugin.OutputFolder;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * A folder that appears whole or not at all.
 *
 * <p>Files are written into a hidden folder beside it, which takes its name at the end; a run that was broken off leaves the old set,
 * the new one or none there, and the next one tidies up ({@link Leftovers}). With them goes a list of
 * {@link Checksums}: by it a later run knows a folder it may replace.
 */
final class WholeFolder implements OutputFolder, AutoCloseable {
    /** Letters, digits and what file systems everywhere allow between them; no part begins with a dot. */
    private static final Pattern NAME =
            Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_. +-]*(/[A-Za-z0-9_][A-Za-z0-9_. +-]*)*");

    private final Path asGiven;
    private final Path target;
    private final Path unfinished;
    private final String before;
    private final Thread onBreak;
    private final TreeSet<String> names = new TreeSet<>();

    private WholeFolder(Path asGiven, Path target, Path unfinished, String before) {
        this.asGiven = asGiven;
        this.target = target;
        this.unfinished = unfinished;
        this.before = before;
        this.onBreak = new Thread(() -> Trees.deleteQuietly(unfinished), "tidy up");
        Runtime.getRuntime().addShutdownHook(onBreak);
    }

    /**
     * Begins a folder.
     *
     * @param replaces whether one that was written here before may be replaced
     * @throws CommandFault if something is in the way: an older set that may not be replaced, something that was not written
     *     here, or was changed since
     */
    static WholeFolder begin(Path folder, boolean replaces) throws IOException {
        Path target = folder.toAbsolutePath().normalize();
        Path name = target.getFileName();
        if (name == null) {
            throw new CommandFault(folder + ": films need a folder of their own. Name another.");
        }
        Path parent = target.getParent();
        make(parent, folder);
        if (!Files.isWritable(parent)) {
            throw new CommandFault(
                    parent + ": nothing can be written here. Name another folder, or change its rights.");
        }
        OptionalLong writing = Leftovers.tidy(target);
        if (writing.isPresent()) {
            throw new CommandFault(folder + ": another run (process " + writing.getAsLong()
                    + ") is writing this folder. Wait until it has ended, or name another folder.");
        }
        Replaceable.check(folder, target);
        if (!replaces && Files.exists(target) && !Trees.files(target).isEmpty()) {
            throw new CommandFault(folder + ": the folder holds an older set. Add --replace, or name another folder.");
        }
        Path unfinished = Leftovers.unfinished(target);
        make(unfinished, folder);
        return new WholeFolder(folder, target, unfinished, Checksums.list(target));
    }

    private static void make(Path made, Path folder) throws IOException {
        try {
            Files.createDirectories(made);
        } catch (FileSystemException refused) {
            throw new CommandFault(
                    folder
                            + ": no folder can be made here. Name another: one whose parents are folders that may be written.",
                    refused);
        }
    }

    @Override
    public OutputStream create(String name) throws IOException {
        if (!NAME.matcher(name).matches() || name.equals(Checksums.FILE)) {
            throw new IOException("'" + name + "' is not a name for an output file");
        }
        Path file = unfinished.resolve(name);
        Files.createDirectories(file.getParent());
        if (!names.add(name)) {
            throw new FileAlreadyExistsException(name, null, "two plug-ins want to write it");
        }
        return new BufferedOutputStream(Files.newOutputStream(file, StandardOpenOption.CREATE_NEW), 1 << 16);
    }

    /** What was written, in order of name. */
    List<String> names() {
        return List.copyOf(names);
    }

    /**
     * Lets the folder take its name; what had that name before is gone.
     *
     * @throws CommandFault if something came into the old folder meanwhile, or another run wrote one; it is left as it is then
     */
    void publish() throws IOException {
        Checksums.write(unfinished, names());
        if (!Checksums.list(target).equals(before)) {
            throw anotherWasFaster();
        }
        Path old = Leftovers.old(unfinished);
        boolean isReplaced = Files.exists(target, LinkOption.NOFOLLOW_LINKS);
        if (isReplaced) {
            Files.move(target, old, StandardCopyOption.ATOMIC_MOVE);
        }
        try {
            Replaceable.check(asGiven, old);
            if (!Checksums.list(old).equals(before)) {
                throw anotherWasFaster();
            }
            takeName(unfinished);
        } catch (IOException | CommandFault failed) {
            if (isReplaced) {
                takeName(old);
            }
            throw failed;
        }
        Trees.delete(old);
    }

    /** A folder that holds something is never replaced by this: the file system refuses that, and at once. */
    private void takeName(Path folder) throws IOException {
        try {
            Files.move(folder, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (FileSystemException refused) {
            if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                throw anotherWasFaster();
            }
            throw refused;
        }
    }

    private CommandFault anotherWasFaster() {
        return new CommandFault(asGiven
                + ": another run has written this folder meanwhile. What it wrote stays; name another folder, or add --replace"
                + " and run again.");
    }

    /** Takes away what was not published. */
    @Override
    public void close() throws IOException {
        Trees.delete(unfinished);
        try {
            Runtime.getRuntime().removeShutdownHook(onBreak);
        } catch (IllegalStateException endingAnyway) {
            // The hook is already at work.
            return;
        }
    }
}
