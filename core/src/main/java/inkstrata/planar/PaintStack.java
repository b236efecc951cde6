package inkstrata.planar;

import java.util.List;

/**
 * The paints that lie on top of each other at a place, top first, each once; empty on bare sheet.
 *
 * <p>A translucent shape counts as the flat colour it makes with all that lies beneath it.
 */
public record PaintStack(List<Paint> paints) {
    public static final PaintStack BARE = new PaintStack(List.of());

    public PaintStack {
        paints = List.copyOf(paints);
    }

    public boolean isBare() {
        return paints.isEmpty();
    }
}
