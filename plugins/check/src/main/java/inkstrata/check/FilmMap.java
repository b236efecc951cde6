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
    private final int filmCount;
    private final boolean[] isInPicture;
    private final List<BitSet> films;
    private final boolean[] isLost;
    private final List<Edge> edges;

    /**
     * One of a map of films, what was planned for each if that is known, and the picture.
     *
     * @param count of films
     * @param picture its number in the map
     */
    private FilmMap(CoverMap map, int count, int picture) {
        this.map = map;
        this.picture = picture;
        this.filmCount = count;
        this.isInPicture = new boolean[map.count()];
        this.films = new ArrayList<>();
        this.isLost = new boolean[map.count()];
        for (int number = 0; number < map.count(); number++) {
            BitSet cover = map.cover(number);
            isInPicture[number] = cover.get(picture);
            cover.clear(picture);
            BitSet lacking = cover.get(count, picture);
            cover.clear(count, picture);
            lacking.andNot(cover);
            isLost[number] = !lacking.isEmpty();
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
        return new FilmMap(CoverMap.of(frame, all), films.size(), films.size());
    }

    /**
     * Likewise, with what was planned: so it is known where a film lacks some of it.
     *
     * @param planned for each film what it was to print
     */
    static FilmMap of(List<Region> films, List<Region> planned, Region picture, Frame frame) {
        List<Region> all = new ArrayList<>(films);
        all.addAll(planned);
        all.add(picture);
        return new FilmMap(CoverMap.of(frame, all), films.size(), all.size() - 1);
    }

    /** Whether there is any place where a film was to print, and does not, though others do. */
    boolean hasLost() {
        for (boolean lost : isLost) {
            if (lost) {
                return true;
            }
        }
        return false;
    }

    /** Whether some film was to print where the films of a set are, and does not. */
    boolean isLost(int number) {
        return isLost[number];
    }

    /** How many sets of films there are; they are numbered from 0. */
    int count() {
        return map.count();
    }

    /** The films of one set, by position; not to be changed. */
    BitSet films(int number) {
        return films.get(number);
    }

    private BitSet films(BitSet cover) {
        return cover.get(0, filmCount);
    }

    /** All places of the picture without any film. */
    Region gaps() {
        return map.where(cover -> cover.get(picture) && films(cover).isEmpty());
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
