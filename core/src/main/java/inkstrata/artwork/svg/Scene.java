package inkstrata.artwork.svg;

import inkstrata.artwork.Clip;
import inkstrata.artwork.Layer;
import inkstrata.artwork.TranslucentGroup;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where in the picture an element stands.
 *
 * @param toMm from the element's user units to millimetres on the sheet; not to be changed
 * @param viewport what percentages refer to
 * @param clips what hides parts of it
 * @param group the innermost group that shines through as a whole
 * @param layers the elements around it that have a name, outermost first, references followed
 */
record Scene(
        AffineTransform toMm,
        Viewport viewport,
        List<Clip> clips,
        Optional<TranslucentGroup> group,
        List<Layer> layers) {

    /** The same place in other units. */
    Scene transformed(AffineTransform local) {
        if (local.isIdentity()) {
            return this;
        }
        AffineTransform combined = new AffineTransform(toMm);
        combined.concatenate(local);
        return new Scene(combined, viewport, clips, group, layers);
    }

    Scene within(Viewport inner) {
        return new Scene(toMm, inner, clips, group, layers);
    }

    Scene clippedBy(List<Clip> more) {
        if (more.isEmpty()) {
            return this;
        }
        List<Clip> all = new ArrayList<>(clips);
        all.addAll(more);
        return new Scene(toMm, viewport, List.copyOf(all), group, layers);
    }

    Scene inGroup(Optional<TranslucentGroup> inner) {
        return new Scene(toMm, viewport, clips, inner, layers);
    }

    Scene inside(Optional<Layer> layer) {
        if (layer.isEmpty()) {
            return this;
        }
        List<Layer> all = new ArrayList<>(layers);
        all.add(layer.get());
        return new Scene(toMm, viewport, clips, group, List.copyOf(all));
    }
}
