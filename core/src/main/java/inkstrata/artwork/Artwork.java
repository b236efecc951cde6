package inkstrata.artwork;

import inkstrata.measure.Frame;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * One flat drawing at true size.
 *
 * @param name file name, for messages and titles
 * @param frame the picture, in millimetres; nothing outside it is printed
 * @param shapes in paint order, lowest first
 * @param notes what the reader had to say
 */
public record Artwork(String name, Frame frame, List<FlatShape> shapes, List<Note> notes) {
    public Artwork {
        shapes = List.copyOf(shapes);
        notes = List.copyOf(notes);
    }

    /** The same with other shapes. */
    public Artwork withShapes(List<FlatShape> newShapes) {
        return new Artwork(name, frame, newShapes, notes);
    }

    /** The same drawing elsewhere on the sheet, in millimetres; shared clips stay shared. */
    public Artwork movedBy(double dx, double dy) {
        IdentityHashMap<Clip, Clip> moved = new IdentityHashMap<>();
        List<FlatShape> there = shapes.stream()
                .map(shape -> new FlatShape(
                        shape.area().movedBy(dx, dy),
                        shape.colour(),
                        shape.opacity(),
                        shape.group(),
                        shape.clips().stream()
                                .map(clip -> moved.computeIfAbsent(
                                        clip,
                                        c -> new Clip(c.parts().stream()
                                                .map(part -> part.movedBy(dx, dy))
                                                .toList())))
                                .toList(),
                        shape.source(),
                        shape.drawing()))
                .toList();
        return new Artwork(name, frame.movedBy(dx, dy), there, notes);
    }
}
