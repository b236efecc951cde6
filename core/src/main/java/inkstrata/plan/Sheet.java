package inkstrata.plan;

import inkstrata.colour.InkFilm;
import inkstrata.colour.Rgb;
import inkstrata.colour.Spectrum;
import inkstrata.measure.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is printed on. It is looked at from the front, before white.
 *
 * @param size in millimetres
 * @param colour of the bare sheet, before white
 * @param side the side that is printed, unless an ink says otherwise
 * @param film what it reflects and lets through
 */
public record Sheet(Size size, Rgb colour, Side side, InkFilm film) {
    /** Opaque if it is printed on the front, clear if it is printed on the back. */
    public Sheet(Size size, Rgb colour, Side side) {
        this(size, colour, side, InkFilm.of(Spectrum.of(colour), usualHiding(side)));
    }

    /** How much of what lies behind it a sheet hides of which nothing is known: all, but nothing where it is printed on the back. */
    public static double usualHiding(Side side) {
        return side == Side.BACK ? 0 : 1;
    }

    /** On which side an ink is printed. */
    public Side side(Ink ink) {
        return ink.side().orElse(side);
    }

    /**
     * Whether one pull lies nearer to the eye than another where both print.
     *
     * @param pulls in print order
     * @param pull a position among them
     * @param other another position
     */
    public boolean isNearer(List<Pull> pulls, int pull, int other) {
        Side one = side(pulls.get(pull).ink());
        Side two = side(pulls.get(other).ink());
        return one == two ? one.isNearer(pull, other) : one == Side.FRONT;
    }

    /**
     * In what order inks are printed: those on the side that the sheet is printed on first; on the front what lies farthest from the
     * eye comes first, on the back what lies nearest to it.
     */
    public List<Ink> printed(List<Ink> farthestFirst) {
        List<Ink> front =
                farthestFirst.stream().filter(ink -> side(ink) == Side.FRONT).toList();
        List<Ink> back = new ArrayList<>(
                farthestFirst.stream().filter(ink -> side(ink) == Side.BACK).toList());
        Collections.reverse(back);
        List<Ink> order = new ArrayList<>(side == Side.FRONT ? front : back);
        order.addAll(side == Side.FRONT ? back : front);
        return order;
    }

    /** Positions of pulls, farthest from the eye first. */
    public List<Integer> farthestFirst(List<Pull> pulls) {
        return IntStream.range(0, pulls.size())
                .boxed()
                .sorted((one, other) -> one.equals(other) ? 0 : isNearer(pulls, one, other) ? 1 : -1)
                .toList();
    }
}
