package inkstrata.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a run left beside a folder when the machine or somebody broke it off: its half-written folder, and the old set if that had just
 * been moved away.
 */
final class Leftovers {
    private static final String OLD = "-old";

    /** How many runs this program has begun. */
    private static final AtomicInteger RUNS = new AtomicInteger();

    /** Clocks of processes and of files may differ by so much. */
    private static final Duration CLOCKS = Duration.ofSeconds(2);

    private Leftovers() {}

    /** The hidden folder in which a run of this program writes before it gives it its name; another one at each call. */
    static Path unfinished(Path target) {
        return target.resolveSibling("." + target.getFileName() + ".unfinished-"
                + ProcessHandle.current().pid() + "-" + RUNS.incrementAndGet());
    }

    /** The hidden name that an older set has while it is being replaced. */
    static Path old(Path unfinished) {
        return unfinished.resolveSibling(unfinished.getFileName() + OLD);
    }

    /**
     * Gives an old set its name back where none has taken its place, and takes away the rest, of runs that are no more.
     *
     * @return the number of a process that is still writing this folder; empty if none is
     */
    static OptionalLong tidy(Path target) throws IOException {
        OptionalLong writing = OptionalLong.empty();
        Pattern ours = Pattern.compile(
                Pattern.quote("." + target.getFileName() + ".unfinished-") + "(\\d+)-\\d+(" + OLD + ")?");
        List<Path> left;
        try (Stream<Path> beside = Files.list(target.getParent())) {
            left = beside.filter(path -> ours.matcher(name(path)).matches())
                    .sorted()
                    .toList();
        }
        for (Path path : left) {
            Matcher matcher = ours.matcher(name(path));
            boolean isOver = matcher.matches() && isOver(Long.parseLong(matcher.group(1)), path);
            if (isOver && matcher.group(2) != null && !Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
            } else if (isOver) {
                Trees.delete(path);
            } else {
                writing = OptionalLong.of(Long.parseLong(matcher.group(1)));
            }
        }
        return writing;
    }

    /** Whether the process that made a folder is no more; one that began after it has only got its number. */
    private static boolean isOver(long pid, Path made) throws IOException {
        Optional<ProcessHandle> alive = ProcessHandle.of(pid).filter(ProcessHandle::isAlive);
        if (alive.isEmpty()) {
            return true;
        }
        try {
            Instant touched = Files.getLastModifiedTime(made, LinkOption.NOFOLLOW_LINKS)
                    .toInstant()
                    .plus(CLOCKS);
            return alive.get().info().startInstant().filter(touched::isBefore).isPresent();
        } catch (NoSuchFileException justEnded) {
            return true;
        }
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName());
    }
}
