package inkstrata.trap;

import inkstrata.planar.Border;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.Region;
import inkstrata.planar.Spread;
import inkstrata.planar.StackSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Draws the rims of a map. */
record Rims(PlanarMap map, TrapSettings settings) {
    /** One for each meeting whose two areas share edges, in that order. */
    List<Rim> of(List<Meeting> meetings) {
        Map<StackSet, Region> receivers = new HashMap<>();
        List<Rim> rims = new ArrayList<>();
        for (Meeting meeting : meetings) {
            Border border = map.border(meeting.from(), meeting.receiver());
            if (!border.chains().isEmpty()) {
                Region receiver = receivers.computeIfAbsent(meeting.receiver(), map::dissolve);
                Region gained = Spread.along(border, receiver, settings.widthMm(), settings.corners());
                rims.add(new Rim(meeting, border.lengthMm(), gained));
            }
        }
        return rims;
    }
}
