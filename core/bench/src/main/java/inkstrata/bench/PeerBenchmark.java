package inkstrata.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Geometry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/** JTS OverlayNG on the same drawings; polygons are made before the clock starts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PeerBenchmark {
    /** The drawings. */
    @Param({"blobs-8000"})
    public String drawing;

    private List<List<Geometry>> drawings;

    @Setup
    public void draw() {
        drawings = Case.drawings(drawing).stream().map(Polygons::of).toList();
    }

    @Benchmark
    public void subtractThoseAbove(Blackhole hole) {
        drawings.forEach(shapes -> hole.consume(Peers.subtractThoseAbove(shapes)));
    }

    @Benchmark
    public void nodeAllOnce(Blackhole hole) {
        drawings.forEach(shapes -> hole.consume(Peers.nodeAllOnce(shapes)));
    }

    @Benchmark
    public void nodeAllOnceQuickly(Blackhole hole) {
        drawings.forEach(shapes -> hole.consume(Peers.nodeAllOnceQuickly(shapes)));
    }
}
