package inkstrata.positive.page.read;

import inkstrata.artwork.Area;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import java.util.List;
import java.util.Optional;

/**
 * Something painted on a page of PDF, in millimetres from the page's upper left corner.
 *
 * @param area what it covers before clipping
 * @param paint with what
 * @param opacity of this paint alone, more than 0 and at most 1
 * @param clips it shows only where all of them let it
 */
record PdfMark(Area area, PdfPaint paint, double opacity, List<Clip> clips) {
    PdfMark {
        clips = List.copyOf(clips);
    }

    FlatShape in(Rgb shade) {
        return new FlatShape(area, shade, opacity, Optional.empty(), clips, Source.UNKNOWN);
    }
}
