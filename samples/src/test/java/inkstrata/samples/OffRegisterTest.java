package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.job.JobReader;
import inkstrata.planar.Corners;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * What traps are for: each pull is moved off register in its own direction, and no sheet may show but where it shows in the
 * drawing, a little wider.
 */
class OffRegisterTest {
    /** In grid steps; no two are farther apart than 0.32 mm. */
    private static final int[][] SHIFTS = {{0, 0}, {640, 0}, {-640, 0}, {0, 640}, {0, -640}};

    private static final double TRAP_MM = 0.4;

    /** Two inks that meet beneath a key and beside it, a third at their corner, and bare sheet in the middle. */
    private static final String DRAWING = """
            <svg xmlns='http://www.w3.org/2000/svg' width='50mm' height='50mm' viewBox='0 0 50 50'>
            <rect width='50' height='25' fill='#f4d78c'/><rect y='25' width='50' height='25' fill='#3d6590'/>
            <rect x='35' y='15' width='15' height='20' fill='#d2603f'/>
            <rect x='10' y='10' width='30' height='30' fill='#14182c'/>
            <circle cx='25' cy='25' r='8' fill='#ffffff'/>
            </svg>
            """;

    @Test
    void noSheetShowsWherePullsAreOffRegister() throws IOException {
        assertThat(largestHole("use: {trap: {width: 0.4 mm}}")).isLessThan(1e-4);
    }

    /** The check finds what it looks for. */
    @Test
    void withoutATrapItDoes() throws IOException {
        assertThat(largestHole("use: {trap: {width: 0 mm}}")).isGreaterThan(1);
    }

    /** In square millimetres, of bare sheet farther than the trap from all that is bare in the drawing. */
    private static double largestHole(String job) throws IOException {
        Separation print = new Separator(Press.plugins())
                .separate(
                        SvgReader.read(
                                "off.svg",
                                new ByteArrayInputStream(DRAWING.getBytes(StandardCharsets.UTF_8)),
                                ReadOptions.DEFAULT),
                        JobReader.read("off.yaml", job));
        Region drawn = print.map().dissolve(StackSet.of(stacks(print, false)));
        Region bare = print.map().dissolve(StackSet.of(stacks(print, true)));
        // The edge of the picture is left out: nothing prints beyond it.
        Region looked = drawn.union(bare).shrunk(1).minus(bare.grown(TRAP_MM, Corners.ROUND));
        double largest = 0;
        int pulls = print.printed().size();
        int ways = (int) Math.pow(SHIFTS.length, pulls);
        for (int way = 0; way < ways; way++) {
            List<Region> moved = new ArrayList<>();
            int rest = way;
            for (Region printed : print.printed()) {
                int[] shift = SHIFTS[rest % SHIFTS.length];
                rest /= SHIFTS.length;
                moved.add(printed.movedBy(shift[0], shift[1]));
            }
            largest = Math.max(largest, looked.minus(Region.union(moved)).areaMm2());
        }
        return largest;
    }

    private static IntStream stacks(Separation print, boolean bare) {
        return print.table().rows().stream()
                .filter(row -> row.top().isEmpty() == bare)
                .mapToInt(row -> row.stack());
    }
}
