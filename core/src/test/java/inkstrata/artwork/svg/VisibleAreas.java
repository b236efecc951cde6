package inkstrata.artwork.svg;

import inkstrata.artwork.Artwork;
import inkstrata.artwork.FlatShape;
import inkstrata.colour.Rgb;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PaintStack;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Share of the picture that each colour covers where it is seen.
 *
 * @param colours share of the canvas by colour
 * @param bare share of the canvas that nothing covers
 */
record VisibleAreas(Map<Rgb, Double> colours, double bare) {
    /**
     * 200 mm across: an emoji of 36 px would be 9.5 mm wide, where curves that are flattened to 5 µm lose a thousandth of
     * the area of a disc.
     */
    static final ReadOptions SIZE = new ReadOptions(OptionalDouble.of(200), OptionalDouble.empty(), false);

    /** By our own reading and mapping: exact up to the flattening of curves. */
    static VisibleAreas mapped(Artwork artwork) {
        PlanarMap map = PlanarMapper.map(
                artwork, MapSettings.DEFAULT.withDepth(depth(artwork)).withThreads(1));
        double whole = artwork.frame().width() * artwork.frame().height();
        Map<Rgb, Double> shares = new TreeMap<>();
        double bare = 0;
        for (int stack = 0; stack < map.stacks().size(); stack++) {
            PaintStack paints = map.stacks().get(stack);
            double share = map.areaMm2(stack) / whole;
            if (paints.isBare()) {
                bare += share;
            } else {
                shares.merge(paints.paints().get(0).colour(), share, Double::sum);
            }
        }
        return new VisibleAreas(shares, bare);
    }

    private static int depth(Artwork artwork) {
        return artwork.shapes().stream().allMatch(FlatShape::isOpaque) ? 1 : MapSettings.ALL;
    }

    /** Pixels, 24 bits each, red highest. */
    static VisibleAreas counted(int[] pixels) {
        Map<Rgb, Double> shares = new TreeMap<>();
        int start = 0;
        for (int i = 1; i <= pixels.length; i++) {
            if (i == pixels.length || pixels[i] != pixels[start]) {
                shares.merge(Rgb.of(pixels[start]), (i - start) / (double) pixels.length, Double::sum);
                start = i;
            }
        }
        return new VisibleAreas(shares, 0);
    }

    /** The same picture on a white sheet. */
    VisibleAreas onWhite() {
        Map<Rgb, Double> shares = new TreeMap<>(colours);
        shares.merge(Rgb.WHITE, bare, Double::sum);
        return new VisibleAreas(shares, 0);
    }

    /**
     * Where two pictures differ most.
     *
     * <p>Renderers round what translucent shapes make differently: colours at most {@code rounding} apart in each channel
     * count as one.
     */
    Difference from(VisibleAreas other, int rounding) {
        Map<Rgb, Double> balance = new TreeMap<>(colours);
        other.colours.forEach((colour, share) -> balance.merge(near(colour, rounding), -share, Double::sum));
        Difference worst = new Difference("none", bare - other.bare);
        for (Map.Entry<Rgb, Double> entry : balance.entrySet()) {
            if (Math.abs(entry.getValue()) > Math.abs(worst.share())) {
                worst = new Difference(entry.getKey().hex(), entry.getValue());
            }
        }
        return worst;
    }

    private Rgb near(Rgb colour, int rounding) {
        Rgb best = colour;
        int least = rounding + 1;
        for (Rgb candidate : colours.keySet()) {
            int apart = Math.max(
                    Math.abs(candidate.red() - colour.red()),
                    Math.max(Math.abs(candidate.green() - colour.green()), Math.abs(candidate.blue() - colour.blue())));
            if (apart < least) {
                least = apart;
                best = candidate;
            }
        }
        return best;
    }

    /**
     * One colour's.
     *
     * @param share of the first picture less that of the other
     */
    record Difference(String colour, double share) {}
}
