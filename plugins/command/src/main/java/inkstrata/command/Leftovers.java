package inkstrata.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a run left beside a folder when the machine or somebody broke it off: its half-written folder, and the old set if that had just
 * been moved away.
 */
final class Leftovers {
    private static final String OLD = "-old";

    private Leftovers() {}

    /** The hidden folder in which a run writes before it gives it its name. */
    static Path unfinished(Path target, long pid) {
        return target.resolveSibling("." + target.getFileName() + ".unfinished-" + pid);
    }

    /** The hidden name that an older set has while it is being replaced. */
    static Path old(Path unfinished) {
        return unfinished.resolveSibling(unfinished.getFileName() + OLD);
    }

    /** Gives an old set its name back where none has taken its place, and takes away the rest, of runs that are no more. */
    static void tidy(Path target) throws IOException {
        Pattern ours =
                Pattern.compile(Pattern.quote("." + target.getFileName() + ".unfinished-") + "(\\d+)(" + OLD + ")?");
        List<Path> left;
        try (Stream<Path> beside = Files.list(target.getParent())) {
            left = beside.filter(path -> ours.matcher(name(path)).matches())
                    .sorted()
                    .toList();
        }
        for (Path path : left) {
            Matcher matcher = ours.matcher(name(path));
            boolean isOver = matcher.matches()
                    && ProcessHandle.of(Long.parseLong(matcher.group(1)))
                            .filter(ProcessHandle::isAlive)
                            .isEmpty();
            if (isOver && matcher.group(2) != null && !Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
            } else if (isOver) {
                Trees.delete(path);
            }
        }
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName());
    }
}
