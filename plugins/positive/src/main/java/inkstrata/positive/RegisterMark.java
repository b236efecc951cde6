package inkstrata.positive;

import inkstrata.measure.Grid;
import java.io.IOException;
import java.util.List;

/** A cross in a ring: where the crosses of all pulls fall on each other, the print is in register. */
final class RegisterMark {
    /** From the centre to the end of a line of the cross. */
    static final int ARM = 5 * Grid.STEPS_PER_MM;

    private static final int RADIUS = 3 * Grid.STEPS_PER_MM;

    private RegisterMark() {}

    static void write(List<Spot> centres, int stroke, Appendable out) throws IOException {
        out.append("""
                <g id="register" fill="none" stroke="#000000" stroke-width="%s">
                """.formatted(GridText.of(stroke)));
        for (Spot centre : centres) {
            String x = GridText.of(centre.x());
            String y = GridText.of(centre.y());
            String left = GridText.of(centre.x() - ARM);
            String right = GridText.of(centre.x() + ARM);
            String top = GridText.of(centre.y() - ARM);
            String bottom = GridText.of(centre.y() + ARM);
            out.append("""
                    <path d="M%s %sH%sM%s %sV%s"/>
                    <circle cx="%s" cy="%s" r="%s"/>
                    """.formatted(left, y, right, x, top, bottom, x, y, GridText.of(RADIUS)));
        }
        out.append("</g>\n");
    }
}
