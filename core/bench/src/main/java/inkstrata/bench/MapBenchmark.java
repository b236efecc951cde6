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

/** Our map with whole stacks, and the regions of all colours that show; drawings are made before the clock starts. */
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

    /** As the tool makes it: on all processors. */
    @Benchmark
    public void map(Blackhole hole) {
        map(MapSettings.DEFAULT, hole);
    }

    @Benchmark
    public void mapOnOneThread(Blackhole hole) {
        map(MapSettings.DEFAULT.withThreads(1), hole);
    }

    private void map(MapSettings settings, Blackhole hole) {
        for (Artwork artwork : artworks) {
            hole.consume(Visible.regions(artwork, settings));
        }
    }
}
