package inkstrata.trap;

import inkstrata.artwork.Note;
import inkstrata.job.Job;
import inkstrata.planar.Region;
import inkstrata.plugin.Option;
import inkstrata.plugin.Shaper;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The lighter of two neighbours grows under the darker by the width of the trap. */
public final class Trap implements Shaper {
    @Override
    public String id() {
        return "trap";
    }

    @Override
    public String description() {
        return "the lighter of two neighbours grows under the darker, so that no sheet shows between them";
    }

    @Override
    public List<Option> options() {
        return TrapSettings.OPTIONS;
    }

    /** With a width of 0 the separation as it came; else with rims and a note for each two pulls that meet. */
    @Override
    public Separation shape(Separation separation, Job job) {
        TrapSettings settings = TrapSettings.of(this, job);
        if (settings.widthMm() == 0) {
            return separation;
        }
        List<Rim> rims = new Rims(separation.map(), settings).of(Meeting.of(separation));
        List<Note> notes = TrapNotes.of(rims, settings.widthMm(), separation);
        return separation.withPrinted(grown(separation.printed(), rims)).withNotes(notes);
    }

    /** Regions that gain nothing stay the very same. */
    private static List<Region> grown(List<Region> printed, List<Rim> rims) {
        Map<Integer, List<Region>> gains = new TreeMap<>();
        rims.forEach(rim -> gains.computeIfAbsent(rim.meeting().giving(), pull -> new ArrayList<>())
                .add(rim.region()));
        List<Region> grown = new ArrayList<>(printed);
        gains.forEach((pull, gained) -> {
            List<Region> parts = new ArrayList<>(gained);
            parts.add(printed.get(pull));
            grown.set(pull, Region.union(parts));
        });
        return grown;
    }
}
