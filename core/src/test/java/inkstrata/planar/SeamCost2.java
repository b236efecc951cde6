package inkstrata.planar;

import inkstrata.artwork.Artwork;
import java.util.function.UnaryOperator;

final class SeamCost2 {
    public static void main(String[] args) {
        Artwork artwork = SeamDrawings.traced(Integer.parseInt(args[0]), 5, 0.02, 1);
        MapSettings plain = MapSettings.DEFAULT.withDepth(3).withThreads(1);
        try (Crew crew = new Crew(1)) {
            PlanarMapper.FlatDrawing flat = PlanarMapper.FlatDrawing.of(artwork, plain, crew);
            PlanarMapper.Noded map = PlanarMapper.noded(flat, plain, UnaryOperator.identity(), crew);
            for (int i = 0; i < Integer.parseInt(args[1]); i++) {
                long t = System.nanoTime();
                int n = SeamSearch.find(flat.drawing(), map, 200, 600, 3, crew).size();
                System.out.printf("%d %.3f%n", n, (System.nanoTime() - t) / 1e9);
            }
        }
    }
}
