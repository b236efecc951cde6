package inkstrata.planar;

import inkstrata.artwork.Artwork;

final class SeamCost {
    static long tick() { return ((com.sun.management.OperatingSystemMXBean) java.lang.management.ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime(); }
    public static void main(String[] args) {
        int n = Integer.parseInt(args[0]);
        int runs = Integer.parseInt(args[1]);
        double most = args.length > 2 ? Double.parseDouble(args[2]) : 0.02;
        Artwork artwork = SeamDrawings.traced(n, 5, most, 1);
        for (int r = 0; r < runs; r++) {
            MapSettings plain = MapSettings.DEFAULT.withDepth(3).withThreads(1);
            long a = tick();
            PlanarMap one = PlanarMapper.map(artwork, plain);
            long b = tick();
            PlanarMap two = PlanarMapper.map(artwork, plain.withSeam(0.05));
            long c = tick();
            System.out.printf("%d shapes, %d edges -> %d, plain %.3f s, with %.3f s, ratio %.1f, seams %d%n", n * n, one.edges().from().length, two.edges().from().length, (b - a) / 1e9, (c - b) / 1e9, (c - b) / (double) (b - a), two.seams().size());
        }
    }
}
