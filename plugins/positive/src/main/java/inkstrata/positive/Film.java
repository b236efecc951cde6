package inkstrata.positive;

import inkstrata.artwork.Area;
import inkstrata.artwork.FillRule;
import inkstrata.artwork.Outline;
import inkstrata.measure.Frame;
import inkstrata.plan.Ink;
import inkstrata.positive.page.Page;
import inkstrata.positive.page.Page.Group;
import inkstrata.positive.page.Page.Item;
import java.util.ArrayList;
import java.util.List;

/**
 * One film: the picture and what lies around it.
 *
 * @param title what it is, in words
 * @param ink that it is the film of
 * @param side how the picture lies on it
 * @param layout where things are
 * @param picture outlines of what is black in the picture, as it lies on the film; they do not overlap
 * @param label lines of text
 */
record Film(String title, Ink ink, SheetSide side, FilmLayout layout, List<Outline> picture, List<String> label) {
    /**
     * Commands after which a new path is begun: far below the ten million characters at which common XML readers refuse an
     * attribute, far above what would make files larger.
     */
    private static final int LONGEST = 20_000;

    private static final String PICTURE = "picture";

    Film {
        picture = List.copyOf(picture);
        label = List.copyOf(label);
    }

    /** As it is written. */
    Page page(FilmSettings settings) {
        return page(settings, layout.film().frame());
    }

    /** The same without those parts of the picture that lie wholly beyond a window. */
    Page page(FilmSettings settings, Frame window) {
        List<Group> groups = new ArrayList<>();
        groups.add(new Group(PICTURE, areas(window)));
        if (!layout.marks().isEmpty()) {
            groups.add(new Group(
                    "register",
                    layout.marks().stream()
                            .map(centre -> new Item(RegisterMark.at(centre, settings.size() / 2, settings.stroke())))
                            .toList()));
            groups.add(new Group("crop", TrimMarks.crop(layout.picture(), settings.stroke())));
            groups.add(new Group("centre", TrimMarks.centre(layout.picture(), settings.stroke())));
        }
        layout.bar().ifPresent(corner -> groups.add(new Group("bar", ScaleBar.at(corner))));
        layout.wedge().ifPresent(corner -> groups.add(new Group("wedge", StepWedge.at(corner))));
        groups.add(new Group("label", Label.at(label, layout.label())));
        return new Page(title, layout.film().frame(), layout.sheet().frame(), groups);
    }

    /** Around the picture and all that lies around it. */
    Box used(FilmSettings settings) {
        return page(settings).groups().stream()
                .filter(group -> !group.id().equals(PICTURE))
                .flatMap(group -> group.items().stream())
                .flatMap(item -> item.area().outline().controlBox().stream())
                .map(Box::of)
                .reduce(layout.picture(), Box::around);
    }

    /** The picture in few areas; one ends with the outline that fills it. */
    private List<Item> areas(Frame window) {
        List<Item> areas = new ArrayList<>();
        Outline.Builder area = Outline.builder();
        int commands = 0;
        for (Outline outline : picture) {
            if (!isSeen(outline, window)) {
                continue;
            }
            outline.sendTo(area);
            commands += outline.commandCount();
            if (commands >= LONGEST) {
                areas.add(new Item(new Area(area.build(), FillRule.EVENODD)));
                area = Outline.builder();
                commands = 0;
            }
        }
        if (commands > 0) {
            areas.add(new Item(new Area(area.build(), FillRule.EVENODD)));
        }
        return areas;
    }

    /** Whether the box around an outline's control points meets a window. */
    static boolean isSeen(Outline outline, Frame window) {
        Frame box = outline.controlBox().orElse(null);
        return box != null
                && box.x() <= window.right()
                && box.right() >= window.x()
                && box.y() <= window.bottom()
                && box.bottom() >= window.y();
    }
}
