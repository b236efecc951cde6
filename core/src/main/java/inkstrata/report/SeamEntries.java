package inkstrata.report;

import inkstrata.planar.Paint;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.Seam;
import inkstrata.planar.SeamTally;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Strips between shapes that were closed, or kept though they are hardly wider: how many, how long, the widest, and where. */
public final class SeamEntries {
    /** More than these are only counted. */
    private static final int MOST = 100;

    private SeamEntries() {}

    /** Places are in the coordinates of the map: of the sheet, or of a picture that was not put on one. */
    public static Map<String, Object> of(PlanarMap map) {
        Map<String, Object> seams = new LinkedHashMap<>();
        seams.put("closed", tally(SeamTally.closed(map)));
        seams.put("kept", tally(SeamTally.kept(map)));
        seams.put("places", places(map.seams()));
        return seams;
    }

    private static Map<String, Object> tally(SeamTally tally) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("count", tally.count());
        entry.put("lengthMm", Decimals.length(tally.lengthMm()));
        entry.put("widestMm", Decimals.length(tally.widestMm()));
        return entry;
    }

    private static List<Map<String, Object>> places(List<Seam> seams) {
        return seams.stream().limit(MOST).map(SeamEntries::place).toList();
    }

    private static Map<String, Object> place(Seam seam) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("closed", seam.closed());
        entry.put("xMm", Decimals.length(seam.place().x()));
        entry.put("yMm", Decimals.length(seam.place().y()));
        entry.put("lengthMm", Decimals.length(seam.lengthMm()));
        entry.put("widestMm", Decimals.length(seam.widestMm()));
        put("shows", seam.shows(), entry);
        put("one", seam.one(), entry);
        put("other", seam.other(), entry);
        return entry;
    }

    /** Absent is the bare sheet, or at a side the picture's edge. */
    private static void put(String key, Optional<Paint> paint, Map<String, Object> entry) {
        paint.ifPresent(there -> entry.put(key, there.colour().hex()));
    }
}
