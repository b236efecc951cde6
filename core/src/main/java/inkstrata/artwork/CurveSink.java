package inkstrata.artwork;

/** Receives an outline curve by curve; every contour starts with {@link #moveTo} and closes by itself at its end. */
public interface CurveSink {
    void moveTo(double x, double y);

    void lineTo(double x, double y);

    void quadTo(double x1, double y1, double x, double y);

    void cubicTo(double x1, double y1, double x2, double y2, double x, double y);
}
