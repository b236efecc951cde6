package inkstrata.planar;

/** What is known of each edge of a map that may lie beside a strip that nobody drew. */
final class SeamEdges {
    private final EdgeTable edges;
    private final Segments segments;
    private final SeamContours contours;
    private final SeamStacks stacks;
    /** For each edge a bit for its left side and one for its right: whether that stack may be a strip's. */
    private final byte[] faces;

    private final boolean[] isStrip;

    private static final int LEFT = 1;
    private static final int RIGHT = 2;

    SeamEdges(Drawing drawing, PlanarMapper.Noded map, SeamContours contours, SeamStacks stacks) {
        this.edges = map.edges();
        this.segments = map.segments();
        this.contours = contours;
        this.stacks = stacks;
        this.faces = new byte[edges.from().length];
        this.isStrip = new boolean[map.stacks().size()];
        Paints paints = new Paints(drawing);
        int leftBefore = EdgeTable.OUTSIDE;
        int rightBefore = EdgeTable.OUTSIDE;
        boolean leftMay = false;
        boolean rightMay = false;
        for (int e = 0; e < faces.length; e++) {
            int left = edges.left()[e];
            int right = edges.right()[e];
            if (left != leftBefore || right != rightBefore) {
                leftMay = left != EdgeTable.OUTSIDE && stacks.over(right, left) != SeamStacks.Over.NO;
                rightMay = right != EdgeTable.OUTSIDE && stacks.over(left, right) != SeamStacks.Over.NO;
                leftBefore = left;
                rightBefore = right;
            }
            if (leftMay && !isDrawnOver(e, left, right, drawing, paints)) {
                faces[e] |= LEFT;
                isStrip[left] = true;
            }
            if (rightMay && !isDrawnOver(e, right, left, drawing, paints)) {
                faces[e] |= RIGHT;
                isStrip[right] = true;
            }
        }
    }

    /** Whether the edge is that of a shape whose paint shows in the strip and not beside it: then somebody drew the strip. */
    private boolean isDrawnOver(int e, int strip, int beyond, Drawing drawing, Paints paints) {
        int segment = edges.source()[e];
        if (segment < 0 || stacks.shows(strip).isEmpty()) {
            return false;
        }
        int shape = drawing.owner()[segments.outline(segment)];
        return shape >= drawing.marks()
                && paints.paint(paints.packed(paints.colourOf(shape)))
                        .equals(stacks.shows(strip).get())
                && !stacks.shows(beyond).equals(stacks.shows(strip));
    }

    /** Whether the stack at a side of an edge is one in which there may be strips. */
    boolean mayBeStrip(int e, boolean left) {
        int stack = left ? edges.left()[e] : edges.right()[e];
        return stack != EdgeTable.OUTSIDE && isStrip[stack];
    }

    boolean mayFace(int e, boolean left) {
        return (faces[e] & (left ? LEFT : RIGHT)) != 0;
    }

    /** Whether two edges were drawn apart from each other. */
    boolean differ(int one, int other) {
        return contour(one) != contour(other);
    }

    int contour(int e) {
        return contours.of(edges.source()[e]);
    }

    boolean isKnown(int over, int strip) {
        return stacks.over(over, strip) == SeamStacks.Over.YES;
    }

    /** The direction of what an edge follows, 1 long, such that the left or right side is on the left: pieces of a few steps have none of their own. */
    double[] direction(int e, boolean left) {
        double dx = edges.x()[edges.to()[e]] - edges.x()[edges.from()[e]];
        double dy = edges.y()[edges.to()[e]] - edges.y()[edges.from()[e]];
        int segment = edges.source()[e];
        if (segment >= 0) {
            double sx = segments.x1(segment) - segments.x0(segment);
            double sy = segments.y1(segment) - segments.y0(segment);
            double sign = Math.signum(sx * dx + sy * dy);
            if (sign != 0) {
                dx = sign * sx;
                dy = sign * sy;
            }
        }
        double size = (left ? 1 : -1) * SeamWay.size(dx, dy);
        return new double[] {dx / size, dy / size};
    }
}
