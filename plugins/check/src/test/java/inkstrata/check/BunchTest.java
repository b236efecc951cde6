package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BunchTest {
    private static final double FAR = 1e9;

    /** Against all pairs of their stretches, for runs along curves, for heaps of any, and for halves of both. */
    @Test
    void noPlaceOfOneIsNearerThanTold() {
        Random random = new Random(2026);
        for (int drawing = 0; drawing < 2_000; drawing++) {
            Bunch one = new Bunch(0, stretches(random));
            Bunch other = new Bunch(1, stretches(random));
            for (Bunch first : List.of(one, one.firstHalf(), one.secondHalf())) {
                for (Bunch second : List.of(other, other.firstHalf(), other.secondHalf())) {
                    double least = nearest(first, second);
                    assertThat(first.distanceTo(second, FAR)).isLessThanOrEqualTo(least + 1e-6);
                    assertThat(first.distanceTo(second, 0)).isLessThanOrEqualTo(least + 1e-6);
                }
            }
        }
    }

    /** Two lines of 64 stretches each that run aslant 100 steps apart: the boxes around them meet. */
    @Test
    void bordersSideBySideAreToldApartAtOnce() {
        List<Stretch> near = new ArrayList<>();
        List<Stretch> far = new ArrayList<>();
        for (int i = 0; i < 64; i++) {
            near.add(new Stretch(30 * i, 40 * i, 30 * i + 30, 40 * i + 40));
            far.add(new Stretch(30 * i + 80, 40 * i - 60, 30 * i + 110, 40 * i - 20));
        }
        assertThat(new Bunch(0, near).distanceTo(new Bunch(1, far), FAR)).isCloseTo(100, within(1e-9));
    }

    /** Along an arc in a row, or anywhere. */
    private static List<Stretch> stretches(Random random) {
        List<Stretch> stretches = new ArrayList<>();
        int count = 1 + random.nextInt(20);
        boolean isRun = random.nextBoolean();
        double radius = 50 + random.nextInt(2_000);
        double turn = random.nextDouble() * 7;
        double x = random.nextInt(1_000);
        double y = random.nextInt(1_000);
        for (int i = 0; i < count; i++) {
            if (isRun) {
                stretches.add(new Stretch(
                        x + radius * Math.cos(turn + 0.05 * i),
                        y + radius * Math.sin(turn + 0.05 * i),
                        x + radius * Math.cos(turn + 0.05 * (i + 1)),
                        y + radius * Math.sin(turn + 0.05 * (i + 1))));
            } else {
                stretches.add(new Stretch(
                        random.nextInt(2_000), random.nextInt(2_000), random.nextInt(2_000), random.nextInt(2_000)));
            }
        }
        return stretches;
    }

    private static double nearest(Bunch one, Bunch other) {
        double least = FAR;
        for (Bunch a : singles(one)) {
            for (Bunch b : singles(other)) {
                least = Math.min(least, a.stretch().distanceTo(b.stretch()));
            }
        }
        return least;
    }

    private static List<Bunch> singles(Bunch bunch) {
        if (bunch.isSingle()) {
            return List.of(bunch);
        }
        List<Bunch> all = new ArrayList<>(singles(bunch.firstHalf()));
        all.addAll(singles(bunch.secondHalf()));
        return all;
    }
}
