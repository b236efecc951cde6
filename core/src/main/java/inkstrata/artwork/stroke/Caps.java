package inkstrata.artwork.stroke;

/** The ends of lines (SVG 2, section 13.5.4). */
final class Caps {
    private final StrokeStyle.Cap cap;
    private final double half;

    Caps(StrokeStyle style) {
        this.cap = style.cap();
        this.half = style.width() / 2;
    }

    /** Goes around the end of a line, from its left side to its right. */
    void end(Contour contour, Station at) {
        around(contour, at, 1);
    }

    /** Goes around the start of a line, from its right side to its left. */
    void start(Contour contour, Station at) {
        around(contour, at, -1);
    }

    /** A line of no length. */
    void dot(Contour contour, Station at) {
        if (cap != StrokeStyle.Cap.BUTT) {
            end(contour, at);
            start(contour, at);
        }
    }

    /** With the line seen from behind, way is -1 and its left is the right. */
    private void around(Contour contour, Station at, int way) {
        double aside = way * half;
        if (cap == StrokeStyle.Cap.BUTT) {
            return;
        }
        contour.to(at.x(aside), at.y(aside));
        if (cap == StrokeStyle.Cap.ROUND) {
            Arc.draw(contour, at.x(), at.y(), at.x(-aside), at.y(-aside), -Math.PI);
        } else {
            contour.to(at.x(aside) + aside * at.tx(), at.y(aside) + aside * at.ty());
            contour.to(at.x(-aside) + aside * at.tx(), at.y(-aside) + aside * at.ty());
        }
        contour.to(at.x(-aside), at.y(-aside));
    }
}
