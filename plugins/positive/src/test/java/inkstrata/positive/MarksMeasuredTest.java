package inkstrata.positive;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.plan.Side;
import inkstrata.planar.RegionExample;
import inkstrata.separation.FilmStack;
import inkstrata.separation.Separation;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Marks and wedge measured on films that jsvg drew, on front and back. The numbers are those of docs/films.md. */
class MarksMeasuredTest {
    private static final int PER_MM = 200;

    /** A pixel on either side. */
    private static final double CLOSE_MM = 2.0 / PER_MM;

    /** The centre of the upper left mark, 10 mm outside the picture both ways. */
    private static final double MARK_X = 50 - 10;

    private static final double MARK_Y = 75 - 10;

    /** What is black from a place on, along a line. */
    private record Black(double fromMm, double toMm) {
        double width() {
            return toMm - fromMm;
        }
    }

    @Test
    void aRingIs6MmAcrossAndItsLine15Hundredths() throws IOException {
        for (BufferedImage mark : marks()) {
            // Through the centre, at all angles but those of the cross.
            for (int degrees = 10; degrees < 360; degrees += 10) {
                if (degrees % 90 != 0) {
                    List<Black> lines = outwards(mark, degrees);
                    Black ring = lines.get(lines.size() - 1);
                    assertThat((ring.fromMm() + ring.toMm()) / 2)
                            .as("%d degrees", degrees)
                            .isCloseTo(3, within(CLOSE_MM));
                    assertThat(ring.width()).as("%d degrees", degrees).isCloseTo(0.15, within(CLOSE_MM));
                }
            }
        }
    }

    @Test
    void aCrossIs10MmLongBothWays() throws IOException {
        for (BufferedImage mark : marks()) {
            for (int degrees = 0; degrees < 360; degrees += 90) {
                List<Black> lines = outwards(mark, degrees);
                assertThat(lines).hasSize(1);
                assertThat(lines.get(0).toMm()).isCloseTo(5, within(CLOSE_MM));
            }
        }
    }

    /** Two lines as far apart as they are wide, ten times; to the left black on clear, to the right clear on black. */
    @Test
    void theWedgesLinesAreAsWideAsTheirFiguresSay() throws IOException {
        double[] widths = {0.10, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50, 0.60, 0.80, 1.00};
        for (Side side : Side.values()) {
            BufferedImage wedge = FilmStack.film(film(side), new Frame(300, 62.9, 110, 0.2), PER_MM);
            List<Black> black = new ArrayList<>();
            int from = -1;
            for (int x = 0; x < wedge.getWidth(); x++) {
                boolean isBlack = wedge.getRGB(x, wedge.getHeight() / 2) != 0;
                if (isBlack && from < 0) {
                    from = x;
                } else if (!isBlack && from >= 0) {
                    black.add(new Black(from / (double) PER_MM, x / (double) PER_MM));
                    from = -1;
                }
            }
            // For each width two lines, and the block in three parts.
            assertThat(black).as("%s", side).hasSize(widths.length * 5);
            for (int i = 0; i < widths.length; i++) {
                List<Black> step = black.subList(5 * i, 5 * i + 5);
                assertThat(step.get(0).width()).isCloseTo(widths[i], within(CLOSE_MM));
                assertThat(step.get(1).fromMm() - step.get(0).toMm()).isCloseTo(widths[i], within(CLOSE_MM));
                assertThat(step.get(1).width()).isCloseTo(widths[i], within(CLOSE_MM));
                assertThat(step.get(3).fromMm() - step.get(2).toMm()).isCloseTo(widths[i], within(CLOSE_MM));
                assertThat(step.get(3).width()).isCloseTo(widths[i], within(CLOSE_MM));
                assertThat(step.get(4).fromMm() - step.get(3).toMm()).isCloseTo(widths[i], within(CLOSE_MM));
            }
        }
    }

    /** Each film's swatch on the overview has its ink's colour, as the job says it. */
    @Test
    void swatchesOfTheOverviewAreTheInks() throws IOException {
        byte[] overview = PrintExample.written(poster(Side.FRONT), Job.DEFAULT).get("overview.svg");
        BufferedImage sheet = FilmStack.film(overview, new Frame(0, 0, 160, 250), 4);
        for (int rgb : new int[] {0x112233, 0x224466}) {
            int pixels = 0;
            for (int pixel : sheet.getRGB(0, 0, sheet.getWidth(), sheet.getHeight(), null, 0, sheet.getWidth())) {
                pixels += (pixel & 0xffffff) == rgb && pixel >>> 24 == 0xff ? 1 : 0;
            }
            // 8 mm wide and high, but for a line of 0.2 mm all round it.
            assertThat(pixels / 16.0).as("%06x", rgb).isCloseTo(7.6 * 7.6, within(5.0));
        }
    }

    private static Separation poster(Side side) {
        return PrintExample.print(
                new Size(500, 700),
                new Frame(50, 75, 400, 550),
                side,
                RegionExample.of(RegionExample.polygon(RegionExample.rectangle(60, 80, 30, 30))),
                RegionExample.of(RegionExample.polygon(RegionExample.rectangle(160, 180, 30, 30))));
    }

    private static byte[] film(Side side) throws IOException {
        return PrintExample.films(poster(side)).get(0).getBytes(UTF_8);
    }

    private static List<BufferedImage> marks() throws IOException {
        List<BufferedImage> marks = new ArrayList<>();
        for (Side side : Side.values()) {
            marks.add(FilmStack.film(film(side), new Frame(MARK_X - 6, MARK_Y - 6, 12, 12), PER_MM));
        }
        return marks;
    }

    /** What is black on the way from the centre outwards. */
    private static List<Black> outwards(BufferedImage mark, int degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        List<Black> black = new ArrayList<>();
        double from = -1;
        int samples = 10;
        for (int i = 0; i < 6 * PER_MM * samples; i++) {
            double mm = i / (double) (PER_MM * samples);
            int x = (int) Math.floor((6 + mm * cos) * PER_MM);
            int y = (int) Math.floor((6 + mm * sin) * PER_MM);
            boolean isBlack = x >= 0 && y >= 0 && x < mark.getWidth() && y < mark.getHeight() && mark.getRGB(x, y) != 0;
            if (isBlack && from < 0) {
                from = mm;
            } else if (!isBlack && from >= 0) {
                black.add(new Black(from, mm));
                from = -1;
            }
        }
        return black;
    }
}
