package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.planar.CoverMap;
import inkstrata.planar.EdgeSink;
import inkstrata.planar.Region;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Films laid over each other in register: which of them cover which place of the picture. */
final class FilmMap {
    /** Stands for what lies outside the picture. */
    static final int SHEET = -1;

    private final CoverMap map;
    private final int picture;
    private final boolean[] isInPicture;
    private final List<BitSet> films;

    private FilmMap(CoverMap map, int picture) {
        this.map = map;
        this.picture = picture;
        this.isInPicture = new boolean[map.count()];
        this.films = new ArrayList<>();
        for (int number = 0; number < map.count(); number++) {
            BitSet cover = map.cover(number);
            isInPicture[number] = cover.get(picture);
            cover.clear(picture);
            films.add(cover);
        }
    }

    /**
     * Lays them.
     *
     * @param films what each prints
     * @param picture all places that the artwork inks
     * @param frame what lies outside it counts for nothing
     */
    static FilmMap of(List<Region> films, Region picture, Frame frame) {
        List<Region> all = new ArrayList<>(films);
        all.add(picture);
        return new FilmMap(CoverMap.of(frame, all), films.size());
    }

    /** How many sets of films there are; they are numbered from 0. */
    int count() {
        return map.count();
    }

    /** The films of one set, by position; not to be changed. */
    BitSet films(int number) {
        return films.get(number);
    }

    /** All places of the picture without any film. */
    Region gaps() {
        return map.where(cover -> cover.get(picture) && cover.cardinality() == 1);
    }

    /** The edges between places under different sets of films, and those of the picture, beyond which lies {@link #SHEET}. */
    void sendEdgesTo(EdgeSink sink) {
        map.sendEdgesTo((x0, y0, x1, y1, left, right) -> {
            int one = inPicture(left);
            int other = inPicture(right);
            if (one != other) {
                sink.edge(x0, y0, x1, y1, one, other);
            }
        });
    }

    private int inPicture(int number) {
        return number >= 0 && isInPicture[number] ? number : SHEET;
    }
}
