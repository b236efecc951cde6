package inkstrata.bench;

import inkstrata.artwork.Artwork;
import inkstrata.colour.Rgb;
import inkstrata.planar.MapSettings;
import inkstrata.planar.PaintStack;
import inkstrata.planar.PlanarMap;
import inkstrata.planar.PlanarMapper;
import inkstrata.planar.Region;
import inkstrata.planar.StackSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** What the line does first with each drawing: map it, then dissolve the region of each colour that shows. */
final class Visible {
    private Visible() {}

    static Map<Rgb, Region> regions(Artwork artwork, MapSettings settings) {
        PlanarMap map = PlanarMapper.map(artwork, settings);
        Map<Rgb, IntStream.Builder> stacks = new TreeMap<>();
        for (int stack = 0; stack < map.stacks().size(); stack++) {
            PaintStack paints = map.stacks().get(stack);
            if (!paints.isBare()) {
                stacks.computeIfAbsent(paints.paints().get(0).colour(), colour -> IntStream.builder())
                        .add(stack);
            }
        }
        List<Region> dissolved = map.dissolveAll(stacks.values().stream()
                .map(numbers -> StackSet.of(numbers.build()))
                .toList());
        Map<Rgb, Region> regions = new TreeMap<>();
        stacks.keySet().forEach(colour -> regions.put(colour, dissolved.get(regions.size())));
        return regions;
    }
}
