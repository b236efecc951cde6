package inkstrata.artwork.svg;

import inkstrata.artwork.Clip;
import inkstrata.artwork.FlatShape;
import inkstrata.artwork.Source;
import inkstrata.colour.Rgb;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.w3c.dom.Element;

/** Takes masks that only show or hide for clips (CSS Masking 1, section 7); refuses those that let shine through. */
final class Masks {
    private final Reading reading;
    private final Map<Key, List<Clip>> known = new HashMap<>();

    Masks(Reading reading) {
        this.reading = reading;
    }

    /** One mask as seen from one place. */
    private record Key(Element mask, AffineTransform toMm, Optional<AffineTransform> unitSquare) {}

    /** The clips that an element's mask comes to; a reference that leads nowhere masks nothing. */
    List<Clip> of(Element element, Scene scene, Source source) {
        return through(element, element, scene, source);
    }

    /** What an element is masked by where something that belongs to it, its mask, has a {@code mask}. */
    private List<Clip> through(Element holder, Element element, Scene scene, Source source) {
        String id = Style.reference(holder, SVGCSSEngine.MASK_INDEX);
        if (id.isEmpty()) {
            return List.of();
        }
        if (LocalReferences.isStandIn("mask", id)) {
            throw reading.refusals()
                    .refuse(
                            source,
                            "mask is an image or a gradient, which a single film cannot hold.",
                            "Use a clip path, or a mask of plain opaque white shapes.");
        }
        Optional<Element> mask = reading.references().find(id, "mask");
        if (mask.isEmpty()) {
            reading.notes().warning(source, "mask #" + id + " does not exist; nothing is masked");
            return List.of();
        }
        boolean boxed = !mask.get().getAttributeNS(null, "maskUnits").equals("userSpaceOnUse")
                || mask.get().getAttributeNS(null, "maskContentUnits").equals("objectBoundingBox");
        Optional<AffineTransform> square =
                boxed ? reading.boxes().unitSquare(element, scene.viewport()) : Optional.empty();
        if (boxed && square.isEmpty()) {
            return List.of(new Clip(List.of()));
        }
        Key key = new Key(mask.get(), scene.toMm(), square);
        List<Clip> clips = known.get(key);
        if (clips == null) {
            clips = make(mask.get(), element, scene, square, source);
            known.put(key, clips);
        }
        reading.notes().info(source, "mask #" + id + " only shows or hides and was read as a clip");
        return clips;
    }

    private List<Clip> make(
            Element mask, Element element, Scene scene, Optional<AffineTransform> square, Source source) {
        Scene content = new Scene(scene.toMm(), scene.viewport(), List.of(), Optional.empty(), List.of());
        if (mask.getAttributeNS(null, "maskContentUnits").equals("objectBoundingBox")) {
            content = content.transformed(square.orElseThrow());
        }
        Canvas canvas = reading.newCanvas();
        ArtworkWalk.inside(mask, content, reading, canvas);
        List<List<Clip>> alternatives = new ArrayList<>();
        boolean byAlpha = mask.getAttributeNS(null, "mask-type").trim().equals("alpha");
        for (FlatShape shape : canvas.shapes()) {
            boolean shows = byAlpha || shape.colour().equals(Rgb.WHITE);
            boolean hides = !byAlpha && shape.colour().equals(Rgb.BLACK);
            if (hides && alternatives.isEmpty()) {
                // Black beneath everything hides what would be hidden anyway.
                continue;
            }
            if (!shows || !shape.isOpaque()) {
                throw notPlain(mask, source);
            }
            List<Clip> all = new ArrayList<>();
            all.add(new Clip(List.of(shape.area())));
            all.addAll(shape.clips());
            alternatives.add(all);
        }
        List<Clip> clips = new ArrayList<>();
        clips.add(region(mask, scene, square));
        clips.addAll(ClipUnion.of(alternatives).orElseThrow(() -> notPlain(mask, source)));
        clips.addAll(reading.clips().through(mask, element, scene, source));
        clips.addAll(through(mask, element, scene, source));
        return List.copyOf(clips);
    }

    private RuntimeException notPlain(Element mask, Source source) {
        return reading.refusals()
                .refuse(
                        source,
                        "its mask #" + mask.getAttributeNS(null, "id")
                                + " lets it shine through in part, which a single film cannot hold.",
                        "Use a clip path, or a mask of plain opaque white shapes.");
    }

    /** Nothing shows outside the mask's region, by default 10 % wider than the element on each side. */
    private Clip region(Element mask, Scene scene, Optional<AffineTransform> square) {
        boolean inUserUnits = mask.getAttributeNS(null, "maskUnits").equals("userSpaceOnUse");
        Viewport hundred = inUserUnits ? scene.viewport() : new Viewport(1, 1);
        Lengths lengths = new Lengths(mask, hundred);
        Rectangle2D.Double region = new Rectangle2D.Double(
                lengths.across("x", -0.1 * hundred.width()),
                lengths.down("y", -0.1 * hundred.height()),
                lengths.across("width", 1.2 * hundred.width()),
                lengths.down("height", 1.2 * hundred.height()));
        AffineTransform toMm = new AffineTransform(scene.toMm());
        if (!inUserUnits) {
            toMm.concatenate(square.orElseThrow());
        }
        return Clips.rectangle(region, toMm);
    }
}
