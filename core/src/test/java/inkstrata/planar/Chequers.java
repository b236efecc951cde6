package inkstrata.planar;

import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.measure.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Maps made of square cells with a stack each, edges given in random order and direction: all there is to know about their
 * regions can be counted. Cells that touch in corners, islands and islands within them come by themselves.
 */
final class Chequers {
    private final int side;
    private final int size;
    private final int[] stackOf;

    private Chequers(int side, int size, int[] stackOf) {
        this.side = side;
        this.size = size;
        this.stackOf = stackOf;
    }

    /** {@code side} x {@code side} cells of {@code size} grid steps, each with one of some stacks. */
    static Chequers random(int side, int size, int stacks, Random random) {
        return new Chequers(
                side, size, random.ints((long) side * side, 0, stacks).toArray());
    }

    static Chequers of(int side, int size, int[] stackOf) {
        return new Chequers(side, size, stackOf);
    }

    int stack(int column, int row) {
        boolean inside = column >= 0 && row >= 0 && column < side && row < side;
        return inside ? stackOf[row * side + column] : EdgeTable.OUTSIDE;
    }

    long doubledArea(StackSet set) {
        long cells = 0;
        for (int stack : stackOf) {
            cells += set.contains(stack) ? 1 : 0;
        }
        return 2L * cells * size * size;
    }

    PlanarMap map(int stacks, Random random) {
        List<int[]> edges = new ArrayList<>();
        for (int row = 0; row <= side; row++) {
            for (int column = 0; column <= side; column++) {
                int here = stack(column, row);
                int corner = row * (side + 1) + column;
                add(edges, corner, corner + 1, here, stack(column, row - 1), random);
                add(edges, corner + side + 1, corner, here, stack(column - 1, row), random);
            }
        }
        int[] x = new int[(side + 1) * (side + 1)];
        int[] y = new int[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = i % (side + 1) * size;
            y[i] = i / (side + 1) * size;
        }
        double millimetres = Grid.millimetres(side * size);
        List<PaintStack> paints = new ArrayList<>();
        for (int i = 0; i < stacks; i++) {
            paints.add(new PaintStack(List.of(new Paint(new Rgb(i, i, i)))));
        }
        EdgeTable table = new EdgeTable(
                x, y, column(edges, 0), column(edges, 1), column(edges, 2), column(edges, 3), new int[edges.size()]);
        return new PlanarMap(
                table, new Segments(), new Frame(0, 0, millimetres, millimetres), paints, List.of(), List.of(), 1);
    }

    private static void add(List<int[]> edges, int from, int to, int left, int right, Random random) {
        if (left != right) {
            int[] edge = random.nextBoolean() ? new int[] {from, to, left, right} : new int[] {to, from, right, left};
            edges.add(random.nextInt(edges.size() + 1), edge);
        }
    }

    private static int[] column(List<int[]> edges, int column) {
        return edges.stream().mapToInt(edge -> edge[column]).toArray();
    }
}
