package inkstrata.positive.page.read;

import inkstrata.artwork.Area;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Outline;
import inkstrata.measure.Frame;
import java.awt.BasicStroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Everything that a page of PDF paints, in order: fills, strokes, letters and images under their clips. */
final class PdfMarks extends PDFGraphicsStreamEngine {
    /** What a page may ask for; films stay far below. */
    private static final int MOST_MARKS = 2_000_000;

    private static final int MOST_COMMANDS = 20_000_000;
    private static final int MOST_OPERATORS = 60_000_000;
    private static final int MOST_FORMS = 200_000;

    /** A line of no width is one device pixel wide (ISO 32000-1, 8.4.3.2): in points, that of a film at 1,440 to the inch. */
    private static final double HAIRLINE = 72.0 / 1440;

    /** Strokes are made this much larger, so that the facets of round ends and joins stay far below a micrometre. */
    private static final double ENLARGED = 64;

    private final AffineTransform toMm;
    private final List<PdfMark> marks = new ArrayList<>();
    private final IdentityHashMap<Path2D, Clip> clips = new IdentityHashMap<>();
    private GeneralPath path = new GeneralPath();
    private GeneralPath letters = new GeneralPath();
    private int pendingClip = -1;
    private int commands;
    private int operators;
    private int forms;
    private double blurMm;

    private PdfMarks(PDPage page, AffineTransform toMm) {
        super(page);
        this.toMm = toMm;
    }

    /**
     * What was painted.
     *
     * @param blurMm side of the largest pixel of an image; 0 without images
     */
    record Painted(List<PdfMark> marks, double blurMm) {}

    /**
     * Paints a page.
     *
     * @throws TooMuchException if it asks for more than any film
     * @throws UnsupportedOperationException if it paints what no film can hold
     */
    static Painted of(PDPage page, AffineTransform toMm) throws IOException {
        PdfMarks marks = new PdfMarks(page, toMm);
        marks.processPage(page);
        return new Painted(List.copyOf(marks.marks), marks.blurMm);
    }

    /** A page asks for more than any film. */
    static final class TooMuchException extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x3, y3);
        } else {
            path.curveTo(x1, y1, x2, y2, x3, y3);
        }
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        if (path.getCurrentPoint() != null) {
            path.closePath();
        }
    }

    @Override
    public void clip(int windingRule) {
        pendingClip = windingRule;
    }

    @Override
    public void endPath() {
        if (pendingClip >= 0) {
            path.setWindingRule(pendingClip);
            getGraphicsState().intersectClippingPath(path);
            pendingClip = -1;
        }
        path = new GeneralPath();
    }

    @Override
    public void fillPath(int windingRule) throws IOException {
        fill(path, windingRule);
        endPath();
    }

    @Override
    public void strokePath() throws IOException {
        stroke(path);
        endPath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) throws IOException {
        fill(path, windingRule);
        stroke(path);
        endPath();
    }

    @Override
    public void shadingFill(COSName shadingName) {
        throw new UnsupportedOperationException("a gradient");
    }

    @Override
    public void drawImage(PDImage image) throws IOException {
        Matrix place = getGraphicsState().getCurrentTransformationMatrix();
        AffineTransform unit = new AffineTransform(toMm);
        unit.concatenate(place.createAffineTransform());
        double xMm = Math.hypot(unit.getScaleX(), unit.getShearY()) / image.getWidth();
        double yMm = Math.hypot(unit.getShearX(), unit.getScaleY()) / image.getHeight();
        if (!(xMm > 0 && yMm > 0)) {
            return;
        }
        AffineTransform pixel = new AffineTransform(unit);
        pixel.translate(0, 1);
        pixel.scale(1.0 / image.getWidth(), -1.0 / image.getHeight());
        Tracing.Placing placing = new Tracing.Placing(
                pixel.getScaleX(),
                pixel.getShearY(),
                pixel.getShearX(),
                pixel.getScaleY(),
                pixel.getTranslateX(),
                pixel.getTranslateY());
        blurMm = Math.max(blurMm, Math.max(xMm, yMm));
        Tracing tracing = new Tracing(image.getWidth());
        PdfPixels.send(image, tracing);
        if (image.isStencil()) {
            mark(tracing.stencil(placing), nonStroking(), nonStrokingOpacity());
            return;
        }
        Path2D square = new Path2D.Double(new Rectangle2D.Double(0, 0, 1, 1));
        mark(PdfOutline.area(square, unit), PdfPaint.ofLight(255, 255, 255), nonStrokingOpacity());
        for (FlatShape shape : tracing.shapes(placing)) {
            int grey = shape.colour().red();
            mark(shape.area(), PdfPaint.ofLight(grey, grey, grey), nonStrokingOpacity());
        }
    }

    @Override
    public void beginText() {
        letters = new GeneralPath();
    }

    @Override
    public void endText() {
        if (letters.getCurrentPoint() != null) {
            letters.setWindingRule(PathIterator.WIND_NON_ZERO);
            getGraphicsState().intersectClippingPath(letters);
            letters = new GeneralPath();
        }
    }

    @Override
    protected void showFontGlyph(Matrix rendering, PDFont font, int code, Vector displacement) throws IOException {
        if (!(font instanceof PDVectorFont outlines)) {
            throw new UnsupportedOperationException("letters of a font without outlines");
        }
        AffineTransform place = rendering.createAffineTransform();
        Matrix scale = font.getFontMatrix();
        place.concatenate(scale.createAffineTransform());
        GeneralPath letter = normalised(outlines, code, scale);
        letter.transform(place);
        RenderingMode mode = getGraphicsState().getTextState().getRenderingMode();
        if (mode.isFill()) {
            fill(letter, PathIterator.WIND_NON_ZERO);
        }
        if (mode.isStroke()) {
            stroke(letter);
        }
        if (mode.isClip()) {
            letters.append(letter, false);
        }
    }

    /** Outlines are a thousand to the letter's height; the font's own units may be others. */
    private static GeneralPath normalised(PDVectorFont font, int code, Matrix scale) throws IOException {
        GeneralPath letter = new GeneralPath(font.getNormalizedPath(code));
        double own = scale.getScaleX();
        if (own != 0) {
            letter.transform(AffineTransform.getScaleInstance(0.001 / own, 0.001 / scale.getScaleY()));
        }
        return letter;
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        if (++forms > MOST_FORMS) {
            throw new TooMuchException();
        }
        super.showForm(form);
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        PDGraphicsState state = getGraphicsState();
        if (++forms > MOST_FORMS) {
            throw new TooMuchException();
        }
        if (state.getSoftMask() != null) {
            throw new UnsupportedOperationException("a mask with half-tones");
        }
        if (state.getNonStrokeAlphaConstant() < 1) {
            throw new UnsupportedOperationException("a group that shines through as a whole");
        }
        super.showTransparencyGroup(form);
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if (++operators > MOST_OPERATORS) {
            throw new TooMuchException();
        }
        super.processOperator(operator, operands);
    }

    /** An operator that fails would leave something out of the film. */
    @Override
    protected void operatorException(Operator operator, List<COSBase> operands, IOException failed) throws IOException {
        throw failed;
    }

    private void fill(Path2D filled, int windingRule) throws IOException {
        mark(PdfOutline.area(filled, windingRule, toMm), nonStroking(), nonStrokingOpacity());
    }

    private void stroke(Path2D stroked) throws IOException {
        PDGraphicsState state = getGraphicsState();
        AffineTransform ctm = state.getCurrentTransformationMatrix().createAffineTransform();
        double scale = Math.sqrt(Math.abs(ctm.getDeterminant()));
        AffineTransform back;
        try {
            back = ctm.createInverse();
        } catch (NoninvertibleTransformException flat) {
            return;
        }
        double width = Math.max(state.getLineWidth(), HAIRLINE / scale);
        AffineTransform enlarged = AffineTransform.getScaleInstance(ENLARGED, ENLARGED);
        enlarged.concatenate(back);
        AffineTransform there = new AffineTransform(toMm);
        there.concatenate(ctm);
        there.scale(1 / ENLARGED, 1 / ENLARGED);
        Path2D.Double own = new Path2D.Double(stroked, enlarged);
        float[] dashes = dashes(state);
        BasicStroke pen = new BasicStroke(
                (float) (width * ENLARGED),
                Math.max(0, Math.min(2, state.getLineCap())),
                Math.max(0, Math.min(2, state.getLineJoin())),
                Math.max(1, state.getMiterLimit()),
                dashes,
                dashes == null ? 0 : (float) (state.getLineDashPattern().getPhase() * ENLARGED));
        mark(
                PdfOutline.area(pen.createStrokedShape(own), PathIterator.WIND_NON_ZERO, there),
                PdfColours.paint(state.getStrokingColor()).overprinting(state.isOverprint()),
                state.getAlphaConstant());
    }

    private static float[] dashes(PDGraphicsState state) {
        float[] pattern = state.getLineDashPattern().getDashArray();
        float sum = 0;
        float[] enlarged = new float[pattern.length];
        for (int i = 0; i < pattern.length; i++) {
            enlarged[i] = (float) (pattern[i] * ENLARGED);
            sum += Math.max(0, enlarged[i]);
        }
        return sum > 0 ? enlarged : null;
    }

    private PdfPaint nonStroking() throws IOException {
        PDColor colour = getGraphicsState().getNonStrokingColor();
        return PdfColours.paint(colour).overprinting(getGraphicsState().isNonStrokingOverprint());
    }

    private double nonStrokingOpacity() {
        return getGraphicsState().getNonStrokeAlphaConstant();
    }

    private void mark(Area area, PdfPaint paint, double opacity) {
        if (getGraphicsState().getSoftMask() != null) {
            throw new UnsupportedOperationException("a mask with half-tones");
        }
        commands += area.outline().commandCount();
        if (marks.size() >= MOST_MARKS || commands > MOST_COMMANDS) {
            throw new TooMuchException();
        }
        if (!area.outline().isEmpty() && opacity > 0) {
            marks.add(new PdfMark(area, paint, Math.min(1, opacity), clips(area)));
        }
    }

    /** All but the first, which is the page, and those that hold all of the area. */
    private List<Clip> clips(Area area) {
        List<Clip> held = new ArrayList<>();
        List<Path2D> paths = getGraphicsState().getCurrentClippingPaths();
        for (Path2D clip : paths.subList(Math.min(1, paths.size()), paths.size())) {
            Clip known = clips.computeIfAbsent(clip, c -> new Clip(List.of(PdfOutline.area(c, toMm))));
            if (!isRoundAll(clip, area.outline())) {
                held.add(known);
            }
        }
        return held;
    }

    private boolean isRoundAll(Path2D clip, Outline outline) {
        Frame box = outline.controlBox().orElse(null);
        Rectangle2D bounds = toMm.createTransformedShape(clip).getBounds2D();
        return box != null && isUpright(clip) && bounds.contains(box.x(), box.y(), box.width(), box.height());
    }

    private boolean isUpright(Path2D clip) {
        int lines = 0;
        double[] c = new double[6];
        double x = Double.NaN;
        double y = Double.NaN;
        for (PathIterator at = clip.getPathIterator(toMm); !at.isDone(); at.next()) {
            int command = at.currentSegment(c);
            if (command == PathIterator.SEG_QUADTO || command == PathIterator.SEG_CUBICTO) {
                return false;
            }
            if (command == PathIterator.SEG_MOVETO && lines > 0) {
                return false;
            }
            if (command == PathIterator.SEG_LINETO) {
                lines++;
                if (c[0] != x && c[1] != y) {
                    return false;
                }
            }
            x = c[0];
            y = c[1];
        }
        return lines >= 3 && lines <= 4;
    }
}
