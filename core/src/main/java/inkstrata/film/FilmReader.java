package inkstrata.film;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.ArtworkException;
import inkstrata.artwork.svg.ReadOptions;
import inkstrata.artwork.svg.SvgReader;
import inkstrata.colour.Rgb;
import inkstrata.measure.Frame;
import inkstrata.plan.Ink;
import inkstrata.plan.Sheet;
import inkstrata.plan.Side;
import inkstrata.planar.Affine;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PaintStack;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Reads films.
 *
 * @param sheet that is printed
 * @param picture where the artwork lies on it, as seen from the front
 */
public record FilmReader(Sheet sheet, Frame picture) {
    /**
     * Reads one from a file of SVG.
     *
     * @param ink that it is the film of: for one that is printed on the back it is mirrored
     * @throws ArtworkException if the file is no film
     * @throws IOException if it cannot be read
     */
    public Film read(Path file, Ink ink) throws IOException {
        return read(FilmDrawing.of(SvgReader.read(file, ReadOptions.DEFAULT.keepingOrigin())), ink);
    }

    /**
     * Reads one from whatever file it was drawn in.
     *
     * @param ink that it is the film of: for one that is printed on the back it is mirrored, unless it says otherwise
     */
    public Film read(FilmDrawing drawing, Ink ink) {
        Affine turn = sheet.side(ink) == Side.BACK && !drawing.seenFromFront()
                ? Affine.mirror(sheet.size().width())
                : Affine.NONE;
        FilmPage place = new FilmPage(sheet.size(), turn.of(picture));
        Artwork page = place.place(drawing);
        boolean isMixed = !page.shapes().stream().allMatch(shape -> shape.isOpaque());
        PlanarMap map = PlanarMapper.map(page, MapSettings.DEFAULT.withDepth(isMixed ? MapSettings.ALL : 1));
        Region opaque = turn.of(map.dissolve(where(map, Opacity::prints)));
        Region within = Window.of(picture).within(opaque);
        return new Film(
                page.name(),
                turn.of(page.frame()),
                within,
                Window.of(picture).without(opaque),
                stains(map).stream()
                        .map(stain -> new Stain(stain.shade(), turn.of(stain.region())))
                        .toList(),
                drawing.blurMm());
    }

    private static List<Stain> stains(PlanarMap map) {
        TreeMap<Rgb, StackSet> byShade = new TreeMap<>();
        where(map, Opacity::isStain)
                .numbers()
                .forEach(stack -> byShade.merge(shade(map.stacks().get(stack)), StackSet.of(stack), StackSet::or));
        return byShade.entrySet().stream()
                .map(stain -> new Stain(stain.getKey(), map.dissolve(stain.getValue())))
                .filter(stain -> !stain.region().isEmpty())
                .toList();
    }

    private static StackSet where(PlanarMap map, Predicate<Opacity> asked) {
        return StackSet.of(IntStream.range(0, map.stacks().size())
                .filter(stack -> asked.test(Opacity.of(shade(map.stacks().get(stack))))));
    }

    /** As seen on white. */
    private static Rgb shade(PaintStack stack) {
        return stack.isBare() ? Rgb.WHITE : stack.paints().get(0).colour();
    }
}
