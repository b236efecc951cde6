package inkstrata.command;

import inkstrata.measure.Frame;
import inkstrata.measure.Place;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Subject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tiles of a set made here that are no longer as they were written: they are not read, and somebody may expose them. */
final class ChangedTiles {
    /** So many are named. */
    private static final int NAMED = 5;

    private ChangedTiles() {}

    /**
     * Finds them.
     *
     * @param folder that the set was written into
     * @param picture where it lies on the sheet
     */
    static Optional<Finding> in(Path folder, SetRecord record, Frame picture) throws IOException {
        List<String> changed = new ArrayList<>();
        for (String name : record.tiles()) {
            Path tile = folder.resolve(name).normalize();
            // A list may say anything; only what lies in its own folder is looked at.
            if (tile.startsWith(folder.normalize())
                    && Files.isRegularFile(tile)
                    && !record.files().get(name).sha256().equals(Checksums.of(tile))) {
                changed.add(name);
            }
        }
        if (changed.isEmpty()) {
            return Optional.empty();
        }
        int more = changed.size() - NAMED;
        return Optional.of(new Finding(
                        Severity.ERROR,
                        "changed tiles",
                        new Place(picture.x() + picture.width() / 2, picture.y() + picture.height() / 2),
                        (changed.size() == 1 ? "1 tile is" : changed.size() + " tiles are")
                                + " not as separate wrote them: "
                                + String.join(", ", changed.subList(0, Math.min(NAMED, changed.size())))
                                + (more > 0 ? " and " + more + " more" : ""),
                        "tiles as they were cut from the films",
                        "Separate the drawing anew: tiles are not compared with it.")
                .about(Subject.ALL.withFile(changed.get(0))));
    }
}
