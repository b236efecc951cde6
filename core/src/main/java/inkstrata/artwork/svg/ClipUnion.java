package inkstrata.artwork.svg;

import inkstrata.artwork.Area;
import inkstrata.artwork.Clip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Unites clips: a place shows if at least one of several lists of clips lets it show. */
final class ClipUnion {
    /** More clips than this from one clip path would slow down everything after; drawings need one to three. */
    static final int MOST = 64;

    private ClipUnion() {}

    /**
     * By the distributive law: (a and b) or c = (a or c) and (b or c).
     *
     * @param alternatives each a list of clips that must all let a place show; none at all means that nothing shows
     * @return clips that must all let a place show; empty if there would be more than {@link #MOST}
     */
    static Optional<List<Clip>> of(List<List<Clip>> alternatives) {
        List<List<Area>> all = new ArrayList<>();
        all.add(List.of());
        for (List<Clip> alternative : alternatives) {
            if ((long) all.size() * alternative.size() > MOST) {
                return Optional.empty();
            }
            List<List<Area>> next = new ArrayList<>();
            for (List<Area> parts : all) {
                for (Clip clip : alternative) {
                    List<Area> more = new ArrayList<>(parts);
                    more.addAll(clip.parts());
                    next.add(more);
                }
            }
            all = next;
        }
        return Optional.of(all.stream().map(Clip::new).toList());
    }
}
