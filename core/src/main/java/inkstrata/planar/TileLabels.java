package inkstrata.planar;

import java.util.Arrays;

/**
 * Gives every face of a tile its stack, walking from face to face across edges and adding up winding numbers.
 *
 * <p>The walk starts in the face inside the lowest edge of the left side, with the winding numbers of the tile's corner once
 * what was bent onto that edge is applied; it never crosses the frame. A tile is convex, so every face is reached.
 */
final class TileLabels {
    private final TileEdges edges;
    private final TileSegments segments;
    private final TileFaces faces;
    private final Covers covers;
    private final int[] shapes;
    private final Stacker stacker;
    private final StackTable stacks;
    private final int[] stackOf;
    private int current = StackTable.BARE;

    private TileLabels(
            Tile tile, TileEdges edges, TileSegments segments, TileFaces faces, Drawing drawing, Workbench bench) {
        this.edges = edges;
        this.segments = segments;
        this.faces = faces;
        this.covers = new Covers(tile, drawing);
        this.shapes = tile.shapes();
        this.stacker = bench.stacker();
        this.stacks = bench.stacks();
        this.stackOf = new int[faces.count()];
    }

    /** For each face the number of its stack in the workbench's table. */
    static int[] of(
            Tile tile, TileEdges edges, TileSegments segments, TileFaces faces, Drawing drawing, Workbench bench) {
        TileLabels labels = new TileLabels(tile, edges, segments, faces, drawing, bench);
        labels.walk();
        return labels.stackOf;
    }

    private void walk() {
        int[] leftSide = edges.leftSide();
        int first = edges.between(leftSide[0], leftSide[1]);
        int upwards = 2 * first + (leftSide[0] < leftSide[1] ? 0 : 1);
        cross(upwards);
        int start = faces.of(upwards ^ 1);

        int[] firstHalf = new int[faces.count() + 1];
        int[] halfOf = halvesByFace(firstHalf);
        int[] cursor = firstHalf.clone();
        Arrays.fill(stackOf, -1);
        Ints path = new Ints(64);
        int face = start;
        label(face);
        while (true) {
            if (cursor[face] < firstHalf[face + 1]) {
                int half = halfOf[cursor[face]++];
                int beyond = edges.onFrame(half >> 1) ? TileFaces.OUTSIDE : faces.of(half ^ 1);
                if (beyond != TileFaces.OUTSIDE && stackOf[beyond] < 0) {
                    cross(half);
                    path.add(half);
                    face = beyond;
                    label(face);
                }
            } else if (path.size() > 0) {
                int half = path.get(path.size() - 1);
                path.dropLast();
                cross(half ^ 1);
                face = faces.of(half);
            } else {
                break;
            }
        }
    }

    private int[] halvesByFace(int[] firstHalf) {
        int n = 2 * edges.count();
        for (int h = 0; h < n; h++) {
            int face = faces.of(h);
            if (face != TileFaces.OUTSIDE) {
                firstHalf[face + 1]++;
            }
        }
        for (int f = 0; f < faces.count(); f++) {
            firstHalf[f + 1] += firstHalf[f];
        }
        int[] at = firstHalf.clone();
        int[] result = new int[n];
        for (int h = 0; h < n; h++) {
            int face = faces.of(h);
            if (face != TileFaces.OUTSIDE) {
                result[at[face]++] = h;
            }
        }
        return result;
    }

    /** From the left of a half-edge to its right: what runs along it no longer winds around us. */
    private void cross(int half) {
        int along = (half & 1) == 0 ? 1 : -1;
        for (int t = edges.firstThread(half >> 1); t >= 0; t = edges.nextThread(t)) {
            int s = edges.threadSegment(t);
            int sign = along * edges.threadForward(t);
            for (int run = segments.firstRun(s); run < segments.firstRun(s + 1); run++) {
                covers.add(segments.runOutline(run), -sign * segments.runCount(run));
            }
        }
    }

    private void label(int face) {
        if (covers.changed()) {
            current = stacks.number(stacker.stack(shapes, covers.bits()));
        }
        stackOf[face] = current;
    }
}
