package inkstrata.check;

import static inkstrata.artwork.Outline.rectangle;
import static inkstrata.plan.PlanningExample.ink;
import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.plan.Ink;
import inkstrata.planar.Region;
import inkstrata.separation.FlatDrawing;
import inkstrata.separation.Separation;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SmallestOpeningTest {
    private static final Ink SAND = ink("sand", "#e8cf9a");
    private static final Ink RUST = ink("rust", "#b4512d");

    /** Several in one place cannot be told apart however often others are halved; the search ends all the same. Sheet lies between. */
    @Test
    void exitsThatAreCutToPointsEndTheSearch() {
        Separation drawn = new FlatDrawing(20, 20)
                .fill(SAND, rectangle(0, 0, 10, 20))
                .fill(RUST, rectangle(10, 0, 10, 20))
                .knockedOut(SAND, RUST);
        Region picture = Region.union(drawn.printed());
        FilmMap map = FilmMap.of(drawn.printed(), picture, drawn.artwork().frame());
        Stretch point = new Stretch(40_000, 40_000, 40_000, 40_000);
        Stretch edge = new Stretch(40_100, 40_000, 40_100, 40_050);
        Cells<Bunch> exits = new Cells<>(1000);
        exits.add(40_000, 40_000, new Bunch(number(map, 0), List.of(point, point, point)));
        exits.add(40_000, 40_000, new Bunch(number(map, 1), List.of(edge, edge)));
        Shore shore = new Shore(1000);
        shore.add(new Stretch(40_050, 39_000, 40_050, 41_000));
        Outlines outlines = new Outlines(exits, shore);
        List<Optional<Opening>> found = IntStream.range(0, exits.cells().length)
                .mapToObj(cell -> SmallestOpening.of(map, outlines, exits.cells()[cell], 1000))
                .toList();
        assertThat(found).containsExactly(Optional.empty());
    }

    private static int number(FilmMap map, int film) {
        BitSet alone = new BitSet();
        alone.set(film);
        return IntStream.range(0, map.count())
                .filter(number -> map.films(number).equals(alone))
                .findFirst()
                .orElseThrow();
    }
}
