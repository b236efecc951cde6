package inkstrata.positive.page;

import inkstrata.artwork.Area;
import inkstrata.measure.Frame;
import java.util.List;
import java.util.Optional;

/**
 * Black areas on a clear page of true size.
 *
 * @param title in words
 * @param frame the page's edges, in millimetres; it may begin anywhere
 * @param trim the sheet or tile that is meant, within the frame or equal to it
 * @param groups what is on it
 */
public record Page(String title, Frame frame, Frame trim, List<Group> groups) {
    public Page {
        groups = List.copyOf(groups);
    }

    /**
     * Areas that belong together.
     *
     * @param id letters and hyphens
     * @param window beyond which nothing of them is drawn, if there is one
     * @param items drawn over each other
     */
    public record Group(String id, Optional<Frame> window, List<Item> items) {
        public Group {
            items = List.copyOf(items);
        }

        public Group(String id, List<Item> items) {
            this(id, Optional.empty(), items);
        }

        public Group within(Frame seen) {
            return new Group(id, Optional.of(seen), items);
        }
    }

    /**
     * One black area.
     *
     * @param words that it shows, for those who read the file; may be empty
     * @param area in millimetres; each place within is wound around once, whichever its rule
     */
    public record Item(String words, Area area) {
        public Item(Area area) {
            this("", area);
        }
    }
}
