package inkstrata.positive;

import inkstrata.measure.Grid;
import inkstrata.positive.page.Page.Item;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the picture ends and where its middle is: two lines at each corner, in line with its sides, and one at the middle of each
 * side. None comes nearer to the picture than {@value #CLEAR_MM} mm.
 */
final class TrimMarks {
    private static final int CLEAR_MM = 2;

    /** In millimetres: crop lines end before the register marks begin to crowd them. */
    private static final int CROP_MM = 5;

    private static final int CENTRE_MM = 2;

    private TrimMarks() {}

    static List<Item> crop(Box picture, int stroke) {
        int near = CLEAR_MM * Grid.STEPS_PER_MM;
        int far = near + CROP_MM * Grid.STEPS_PER_MM;
        List<Item> lines = new ArrayList<>();
        for (int x : List.of(picture.left(), picture.right())) {
            lines.add(upright(x, picture.top() - far, picture.top() - near, stroke));
            lines.add(upright(x, picture.bottom() + near, picture.bottom() + far, stroke));
        }
        for (int y : List.of(picture.top(), picture.bottom())) {
            lines.add(level(y, picture.left() - far, picture.left() - near, stroke));
            lines.add(level(y, picture.right() + near, picture.right() + far, stroke));
        }
        return lines;
    }

    static List<Item> centre(Box picture, int stroke) {
        int near = CLEAR_MM * Grid.STEPS_PER_MM;
        int far = near + CENTRE_MM * Grid.STEPS_PER_MM;
        return List.of(
                upright(picture.centreX(), picture.top() - far, picture.top() - near, stroke),
                upright(picture.centreX(), picture.bottom() + near, picture.bottom() + far, stroke),
                level(picture.centreY(), picture.left() - far, picture.left() - near, stroke),
                level(picture.centreY(), picture.right() + near, picture.right() + far, stroke));
    }

    private static Item upright(int x, int top, int bottom, int stroke) {
        return line(new Box(x - stroke / 2, top, x - stroke / 2 + stroke, bottom));
    }

    private static Item level(int y, int left, int right, int stroke) {
        return line(new Box(left, y - stroke / 2, right, y - stroke / 2 + stroke));
    }

    private static Item line(Box box) {
        return new Item(new Shapes().box(box).area());
    }
}
