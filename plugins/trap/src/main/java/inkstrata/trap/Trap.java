package inkstrata.trap;

import inkstrata.job.Job;
import inkstrata.plan.Pull;
import inkstrata.planar.Region;
import inkstrata.planar.Spreading;
import inkstrata.planar.StackSet;
import inkstrata.plugin.Option;
import inkstrata.plugin.Shaper;
import inkstrata.separation.Separation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

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

    @Override
    public void check(Job job) {
        TrapSettings.of(this, job);
    }

    /** With a width of 0 the separation as it came; else with rims and a note for each pull that gives way; pulls that gain nothing stay the very same. */
    @Override
    public Separation shape(Separation separation, Job job) {
        TrapSettings settings = TrapSettings.of(this, job);
        TrapWidths widths = settings.widths(separation.plan());
        if (widths.isNothing()) {
            return separation;
        }
        List<StackSet> prints =
                separation.plan().pulls().stream().map(Pull::prints).toList();
        List<Meeting> meetings = Meeting.of(separation, widths, settings.alike());
        Spreading spreading = Spreading.of(
                separation.map(),
                prints,
                meetings.stream().map(Meeting::spread).toList(),
                settings.corners(),
                settings.mitreLimit());
        List<Integer> giving = IntStream.range(0, meetings.size())
                .filter(meeting ->
                        spreading.isAnywhere(meeting) && !meetings.get(meeting).isButted())
                .map(meeting -> meetings.get(meeting).giving())
                .distinct()
                .boxed()
                .toList();
        List<Region> grown = giving.parallelStream().map(spreading::grown).toList();
        List<Region> printed = new ArrayList<>(separation.printed());
        for (int i = 0; i < giving.size(); i++) {
            printed.set(giving.get(i), grown.get(i));
        }
        return separation.withPrinted(printed).withNotes(new TrapNotes(meetings, spreading, separation).notes());
    }
}
