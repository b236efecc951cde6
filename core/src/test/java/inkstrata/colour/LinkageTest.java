package inkstrata.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Joins in the order that the definition of complete linkage gives: every pair of groups looked at for every join. */
class LinkageTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 20, 60})
    void joinsAsTheDefinitionDoes(int count) {
        for (int seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            double[][] apart = new double[count][count];
            for (int i = 0; i < count; i++) {
                for (int j = i + 1; j < count; j++) {
                    // Few distinct distances, so that ties are many.
                    apart[i][j] = random.nextInt(1 + seed);
                    apart[j][i] = apart[i][j];
                }
            }
            double limit = seed / 2.0;
            assertThat(joined(copy(apart), limit)).as("seed %d", seed).isEqualTo(byDefinition(apart, limit));
        }
    }

    private static List<List<Integer>> joined(double[][] apart, double limit) {
        List<List<Integer>> order = new ArrayList<>();
        Linkage linkage = new Linkage(apart);
        for (int keep = linkage.closest(limit); keep >= 0; keep = linkage.closest(limit)) {
            order.add(List.of(keep, linkage.nearest(keep)));
            linkage.join(keep, linkage.nearest(keep));
        }
        return order;
    }

    private static List<List<Integer>> byDefinition(double[][] apart, double limit) {
        List<List<Integer>> order = new ArrayList<>();
        List<List<Integer>> groups = new ArrayList<>();
        for (int i = 0; i < apart.length; i++) {
            groups.add(List.of(i));
        }
        while (true) {
            int[] best = null;
            double least = limit;
            for (int i = 0; i < groups.size(); i++) {
                for (int j = i + 1; j < groups.size(); j++) {
                    double farthest = farthest(groups.get(i), groups.get(j), apart);
                    if (farthest < least || (best == null && farthest == least)) {
                        least = farthest;
                        best = new int[] {i, j};
                    }
                }
            }
            if (best == null) {
                return order;
            }
            List<Integer> both = new ArrayList<>(groups.get(best[0]));
            List<Integer> other = groups.remove(best[1]);
            order.add(List.of(both.get(0), other.get(0)));
            both.addAll(other);
            groups.set(best[0], both);
        }
    }

    private static double farthest(List<Integer> one, List<Integer> other, double[][] apart) {
        return one.stream()
                .flatMapToDouble(i -> other.stream().mapToDouble(j -> apart[i][j]))
                .max()
                .orElseThrow();
    }

    private static double[][] copy(double[][] apart) {
        double[][] copy = new double[apart.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = apart[i].clone();
        }
        return copy;
    }
}
