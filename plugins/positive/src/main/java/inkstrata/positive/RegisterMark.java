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
        out.append("<g id=\"register\" fill=\"none\" stroke=\"#000000\" stroke-width=\"")
                .append(GridText.of(stroke))
                .append("\">\n");
        for (Spot centre : centres) {
            out.append("<path d=\"M")
                    .append(GridText.of(centre.x() - ARM))
                    .append(' ')
                    .append(GridText.of(centre.y()))
                    .append('H')
                    .append(GridText.of(centre.x() + ARM))
                    .append('M')
                    .append(GridText.of(centre.x()))
                    .append(' ')
                    .append(GridText.of(centre.y() - ARM))
                    .append('V')
                    .append(GridText.of(centre.y() + ARM))
                    .append("\"/>\n<circle cx=\"")
                    .append(GridText.of(centre.x()))
                    .append("\" cy=\"")
                    .append(GridText.of(centre.y()))
                    .append("\" r=\"")
                    .append(GridText.of(RADIUS))
                    .append("\"/>\n");
        }
        out.append("</g>\n");
    }
}
