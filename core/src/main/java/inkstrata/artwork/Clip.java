package inkstrata.artwork;

import java.util.List;

/**
 * A shape shows only inside at least one of these areas; a shape with several clips must satisfy each of them.
 *
 * <p>Clips of any nesting come down to this form: the union of the parts of one clip path, and the intersection of
 * one clip path with another. Shapes under the same clip share one instance, so that it is mapped once.
 *
 * @param parts empty means that nothing shows
 */
public record Clip(List<Area> parts) {
    public Clip {
        parts = List.copyOf(parts);
    }
}
