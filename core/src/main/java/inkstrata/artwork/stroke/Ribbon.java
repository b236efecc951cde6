package inkstrata.artwork.stroke;

import java.awt.geom.Path2D;
import java.util.List;

/**
 * The outline of what the pen covers on one run; not for several threads.
 *
 * <p>Its left and right side, corners and caps are one contour, or two if the run is closed. Where the pen's inner end goes
 * back, that side leads along the centres of curvature, up to which the pen goes forwards; what it covers beyond them is a
 * contour of its own, drawn the other way round. So every contour winds the same way around all places that it covers, and
 * what lies in any of them is covered (SVG 2, section 13.5.8, takes the union). Where two spans meet without going straight
 * on, the sides lead through the corner's vertex: so the contour is the sum of those of the spans and of the wedge.
 */
final class Ribbon {
    private final double half;
    private final Corner corner;
    private final Caps caps;
    private final Path2D.Double outline;
    private final double scale;
    private final Contour left = new Contour();
    private final Contour right = new Contour();
    /** Null, or what the pen covers going back just now. */
    private Fold fold;

    /** Null, or the side whose next line begins where its last one ends, for there they cross. */
    private Contour trimmed;

    private Ribbon(StrokeStyle style, Path2D.Double outline, double scale) {
        this.half = style.width() / 2;
        this.corner = new Corner(style);
        this.caps = new Caps(style);
        this.outline = outline;
        this.scale = scale;
    }

    /** Adds a run's contours to an outline in units of which one is {@code 1 / scale} of the run's. */
    static void add(Run run, StrokeStyle style, Path2D.Double outline, double scale) {
        new Ribbon(style, outline, scale).run(run);
    }

    /** Adds a dot. */
    static void add(Dot dot, StrokeStyle style, Path2D.Double outline, double scale) {
        Contour contour = new Contour();
        new Caps(style).dot(contour, dot.at());
        contour.draw(outline, scale);
    }

    private void run(Run run) {
        List<Span> spans = run.spans();
        Station first = spans.get(0).start();
        if (run.closed()) {
            Station closing = spans.get(spans.size() - 1).end();
            if (corner.isSmooth(closing.turnTo(first))) {
                first = first.heading(closing);
            }
        }
        Station start = first;
        for (int i = 0; i < spans.size(); i++) {
            Station end = span(spans.get(i), start);
            boolean last = i + 1 == spans.size();
            if (last && !run.closed()) {
                finish(first, end);
            } else if (last) {
                corner(spans.get(i), spans.get(0), end, first, true);
                closeUp();
            } else {
                start = corner(
                        spans.get(i), spans.get(i + 1), end, spans.get(i + 1).start(), false);
            }
        }
    }

    /** Goes along a span and tells where it ends. */
    private Station span(Span span, Station start) {
        Station end = start;
        for (Piece piece : Pieces.of(span, start, half)) {
            if (end.tx() * piece.from().tx() + end.ty() * piece.from().ty() < 0) {
                // A cusp: the path turns back on the spot, and the pen, which has no wedge there, ends flat.
                throughVertex(piece.from());
            }
            piece(piece);
            end = piece.to();
        }
        return end;
    }

    private void piece(Piece piece) {
        if (piece.isGentle()) {
            endFold();
            side(left, piece.left(), piece.isLine());
            side(right, piece.right(), piece.isLine());
            return;
        }
        boolean turnsLeft = piece.turnsLeft();
        (turnsLeft ? left : right).through(piece.centres());
        (turnsLeft ? right : left).along(turnsLeft ? piece.right() : piece.left());
        if (fold == null || !fold.continuesWith(piece)) {
            endFold();
            fold = new Fold(turnsLeft);
        }
        fold.along(piece);
    }

    private void side(Contour side, double[] cubic, boolean isLine) {
        if (!isLine) {
            side.along(cubic);
            return;
        }
        if (side == trimmed) {
            trimmed = null;
        } else {
            side.to(cubic[0], cubic[1]);
        }
        side.to(cubic[6], cubic[7]);
    }

    private void endFold() {
        if (fold != null) {
            fold.draw(outline, scale);
            fold = null;
        }
    }

    private void throughVertex(Station at) {
        endFold();
        left.to(at.x(), at.y());
        right.to(at.x(), at.y());
    }

    /** Goes from one span to the next and tells how the next begins. */
    private Station corner(Span span, Span nextSpan, Station end, Station next, boolean closing) {
        double turn = end.turnTo(next);
        if (corner.isSmooth(turn)) {
            return next.heading(end);
        }
        Contour inner = turn > 0 ? left : right;
        Contour outer = turn > 0 ? right : left;
        endFold();
        double aside = turn > 0 ? half : -half;
        outer.to(end.x(-aside), end.y(-aside));
        corner.outside(outer, end, next, turn);
        double trim = corner.inside(turn);
        if (isLongLine(span, trim) && isLongLine(nextSpan, trim)) {
            double x = end.x(aside) - trim * end.tx();
            double y = end.y(aside) - trim * end.ty();
            inner.moveEnd(x, y);
            if (closing) {
                inner.moveStart(x, y);
            } else {
                trimmed = inner;
            }
        } else {
            inner.to(end.x(), end.y());
        }
        return next;
    }

    /** Whether the inner sides of two lines cross in the half of this one that is nearer to the corner. */
    private static boolean isLongLine(Span span, double trim) {
        return span.leg().isLine() && 2 * trim <= span.leg().size() * (span.to() - span.from());
    }

    private void closeUp() {
        endFold();
        left.draw(outline, scale);
        right.backwards().draw(outline, scale);
    }

    private void finish(Station first, Station last) {
        endFold();
        caps.end(left, last);
        left.append(right.backwards());
        caps.start(left, first);
        left.draw(outline, scale);
    }
}
