package inkstrata.artwork.svg;

import inkstrata.artwork.Area;
import inkstrata.artwork.Clip;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Source;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.w3c.dom.Element;

/** Brings {@code clip-path} (CSS Masking 1, section 5) into the form of {@link Clip}, each only once. */
final class Clips {
    private final Reading reading;
    private final Map<Key, List<Clip>> known = new HashMap<>();

    Clips(Reading reading) {
        this.reading = reading;
    }

    /** One clip path as seen from one place. */
    private record Key(Element clipPath, AffineTransform toMm, AffineTransform unitSquare) {}

    /** A clip that lets one rectangle show. */
    static Clip rectangle(Rectangle2D rectangle, AffineTransform toMm) {
        return new Clip(List.of(area(rectangle, toMm, FillRule.NONZERO)));
    }

    /** What clips an element; a reference that leads nowhere clips nothing (CSS Masking 1, section 5.1). */
    List<Clip> of(Element element, Scene scene, Source source) {
        return through(element, element, scene, source);
    }

    /** What an element is clipped by where something that belongs to it, its mask, has a {@code clip-path}. */
    List<Clip> through(Element holder, Element element, Scene scene, Source source) {
        String id = Style.reference(holder, SVGCSSEngine.CLIP_PATH_INDEX);
        if (id.isEmpty()) {
            return List.of();
        }
        if (LocalReferences.isStandIn("clip-path", id)) {
            throw reading.refusals()
                    .refuse(
                            source,
                            "clip-path is a CSS shape, which is not followed here.",
                            "Draw the shape in a <clipPath> element and refer to that.");
        }
        Optional<Element> clipPath = reading.references().find(id, "clipPath");
        if (clipPath.isEmpty()) {
            reading.notes().warning(source, "clip-path #" + id + " does not exist; nothing is clipped");
            return List.of();
        }
        return of(clipPath.get(), element, scene, source);
    }

    private List<Clip> of(Element clipPath, Element element, Scene scene, Source source) {
        AffineTransform units = new AffineTransform();
        if (clipPath.getAttributeNS(null, "clipPathUnits").equals("objectBoundingBox")) {
            Optional<AffineTransform> square = reading.boxes().unitSquare(element, scene.viewport());
            if (square.isEmpty()) {
                return List.of(new Clip(List.of()));
            }
            units = square.get();
        }
        Key key = new Key(clipPath, scene.toMm(), units);
        List<Clip> clips = known.get(key);
        if (clips == null) {
            clips = make(clipPath, element, scene, units, source);
            known.put(key, clips);
        }
        return clips;
    }

    private List<Clip> make(Element clipPath, Element element, Scene scene, AffineTransform units, Source source) {
        AffineTransform content = new AffineTransform(units);
        content.concatenate(reading.transform(clipPath, scene.viewport()));
        Scene inside =
                new Scene(scene.toMm(), scene.viewport(), List.of(), Optional.empty(), List.of()).transformed(content);
        List<List<Clip>> alternatives = new ArrayList<>();
        for (Element child : Elements.children(clipPath)) {
            if (Elements.isSvg(child)) {
                addPart(child, inside, source, alternatives);
            }
        }
        List<Clip> clips = new ArrayList<>(ClipUnion.of(alternatives)
                .orElseThrow(() -> reading.refusals()
                        .refuse(
                                source,
                                "its clip path #" + clipPath.getAttributeNS(null, "id")
                                        + " has too many parts that are clipped themselves.",
                                "Unite the parts of the clip path into one path.")));
        // A clip path's own clip path is seen from the clipped element.
        String outer = Style.reference(clipPath, SVGCSSEngine.CLIP_PATH_INDEX);
        if (!outer.isEmpty()) {
            Optional<Element> around = reading.references().find(outer, "clipPath");
            if (around.isPresent()) {
                clips.addAll(of(around.get(), element, scene, source));
            }
        }
        return List.copyOf(clips);
    }

    private void addPart(Element child, Scene around, Source source, List<List<Clip>> alternatives) {
        if (!Style.isDisplayed(child)) {
            return;
        }
        Scene scene = around.transformed(ArtworkWalk.ownTransform(child, around.viewport(), reading));
        List<Clip> all = new ArrayList<>();
        switch (Kind.of(child)) {
            case USE -> {
                List<List<Clip>> used = new ArrayList<>();
                reading.uses().open(child).ifPresent(copy -> addPart(copy, scene, source, used));
                if (used.isEmpty()) {
                    reading.uses().close(child);
                    return;
                }
                all.addAll(used.get(0));
            }
            case SHAPE, TEXT -> {
                if (!Style.isVisible(child)) {
                    return;
                }
                Optional<? extends Shape> shape = Kind.of(child) == Kind.TEXT
                        ? reading.texts().outline(child, scene.viewport())
                        : reading.outline(child, scene.viewport()).map(LocalPath::path);
                if (shape.isEmpty()) {
                    return;
                }
                all.add(new Clip(List.of(area(shape.get(), scene.toMm(), Style.clipRule(child)))));
            }
            default -> {
                return;
            }
        }
        all.addAll(of(child, scene, source));
        if (Kind.of(child) == Kind.USE) {
            reading.uses().close(child);
        }
        alternatives.add(all);
    }

    private static Area area(Shape shape, AffineTransform toMm, FillRule rule) {
        return new Area(Outlines.of(shape, toMm), rule);
    }
}
