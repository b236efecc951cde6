package inkstrata.artwork.stroke;

import java.util.List;

/**
 * What is drawn without lifting the pen: a subpath, or one dash of it.
 *
 * @param spans one behind the other, none without length
 * @param closed whether the last meets the first in a corner
 */
record Run(List<Span> spans, boolean closed) {
    Run {
        spans = List.copyOf(spans);
    }
}
