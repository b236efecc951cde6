package inkstrata.bench;

import inkstrata.artwork.Artwork;
import inkstrata.planar.MapSettings;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/** Our map, whole stacks on one thread, and the regions of all colours that show; drawings are made before the clock starts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class MapBenchmark {
    /** The drawings. */
    @Param({"blobs-8000"})
    public String drawing;

    private List<Artwork> artworks;

    @Setup
    public void draw() {
        artworks = Case.drawings(drawing);
    }

    @Benchmark
    public void map(Blackhole hole) {
        MapSettings settings = MapSettings.DEFAULT.withThreads(1);
        for (Artwork artwork : artworks) {
            hole.consume(Visible.regions(artwork, settings));
        }
    }
}
