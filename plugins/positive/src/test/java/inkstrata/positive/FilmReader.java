package inkstrata.positive;

import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.parser.DefaultPathHandler;
import org.apache.batik.parser.PathParser;

/** Reads the picture of a film back through Batik's path grammar, which knows nothing of this project. */
final class FilmReader {
    private static final Pattern PICTURE = Pattern.compile("<g id=\"picture\"[^>]*>\n(.*?)</g>", Pattern.DOTALL);
    private static final Pattern DATA = Pattern.compile(" d=\"([^\"]*)\"");

    private FilmReader() {}

    /** Path data of each path element of the picture. */
    static List<String> paths(String film) {
        Matcher picture = PICTURE.matcher(film);
        if (!picture.find()) {
            throw new IllegalArgumentException("no picture on this film");
        }
        return DATA.matcher(picture.group(1))
                .results()
                .map(data -> data.group(1))
                .toList();
    }

    /** Every ring in order, in grid steps, x and y in turn. */
    static List<int[]> rings(String film) {
        List<int[]> rings = new ArrayList<>();
        for (String data : paths(film)) {
            PathParser parser = new PathParser();
            parser.setPathHandler(new Rings(rings));
            parser.parse(data);
        }
        return rings;
    }

    private static final class Rings extends DefaultPathHandler {
        private final List<int[]> rings;
        private int[] xy = new int[1024];
        private int size;

        Rings(List<int[]> rings) {
            this.rings = rings;
        }

        @Override
        public void movetoAbs(float x, float y) {
            if (size > 0) {
                throw new IllegalStateException("a ring is not closed");
            }
            lineto(x, y);
        }

        @Override
        public void linetoAbs(float x, float y) {
            lineto(x, y);
        }

        @Override
        public void linetoHorizontalAbs(float x) {
            lineto(x, xy[size - 1] * Grid.STEP_MM);
        }

        @Override
        public void linetoVerticalAbs(float y) {
            lineto(xy[size - 2] * Grid.STEP_MM, y);
        }

        @Override
        public void closePath() {
            rings.add(Arrays.copyOf(xy, size));
            size = 0;
        }

        @Override
        public void linetoRel(float x, float y) {
            throw new IllegalStateException("relative lines are not exact");
        }

        private void lineto(double x, double y) {
            if (size == xy.length) {
                xy = Arrays.copyOf(xy, 2 * size);
            }
            xy[size++] = Grid.steps(x);
            xy[size++] = Grid.steps(y);
        }
    }
}
