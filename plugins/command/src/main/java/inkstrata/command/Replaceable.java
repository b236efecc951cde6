package inkstrata.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;

/** Says which folders may be replaced: those that are empty, or hold what was written here, unchanged, and nothing else. */
final class Replaceable {
    private Replaceable() {}

    /**
     * Looks at what has that name now.
     *
     * @param asGiven for messages
     * @param target the same, absolute
     * @throws CommandFault if it may not be replaced, naming the first file that is in the way
     */
    static void check(Path asGiven, Path target) throws IOException {
        if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (!Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new CommandFault(asGiven + ": this is not a folder. Name another, or take it away.");
        }
        Map<String, String> written =
                Files.isRegularFile(target.resolve(Checksums.FILE)) ? Checksums.read(target) : Map.of();
        for (String file : Trees.files(target)) {
            if (file.equals(Checksums.FILE) && !written.isEmpty()) {
                continue;
            }
            String sum = written.get(file);
            if (sum == null) {
                throw new CommandFault(asGiven + ": the folder holds " + file
                        + ", which was not written here. Name another folder, or take that file away.");
            }
            if (!sum.equals(Checksums.of(target.resolve(file)))) {
                throw new CommandFault(asGiven + ": " + file
                        + " was changed after it was written. Move it elsewhere, or name another folder.");
            }
        }
    }
}
