package inkstrata.check;

import inkstrata.measure.Frame;
import inkstrata.planar.CoverMap;
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
    private final List<Edge> edges;

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
        this.edges = collected();
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

    /**
     * An edge between places under different sets of films, or of the picture.
     *
     * @param way from start to end
     * @param left number of the set on the side of positive cross products; {@link #SHEET} outside the picture
     * @param right likewise on the other side
     */
    record Edge(Stretch way, int left, int right) {
        boolean isShore() {
            return left == SHEET || right == SHEET;
        }
    }

    /** All of them, each once. */
    List<Edge> edges() {
        return edges;
    }

    private List<Edge> collected() {
        List<Edge> found = new ArrayList<>();
        map.sendEdgesTo((x0, y0, x1, y1, left, right) -> {
            int one = inPicture(left);
            int other = inPicture(right);
            if (one != other) {
                found.add(new Edge(new Stretch(x0, y0, x1, y1), one, other));
            }
        });
        return found;
    }

    private int inPicture(int number) {
        return number >= 0 && isInPicture[number] ? number : SHEET;
    }
}
