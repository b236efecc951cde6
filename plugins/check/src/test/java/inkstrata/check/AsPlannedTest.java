package inkstrata.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import inkstrata.measure.Frame;
import inkstrata.planar.Region;
import inkstrata.planar.RegionExample;
import org.junit.jupiter.api.Test;

class AsPlannedTest {
    private static final Frame FRAME = new Frame(0, 0, 60, 60);
    private static final Region PLANNED = box(10, 10, 30, 20);

    @Test
    void sliversAlongOutlinesAreNoDifference() {
        Region read = box(10.003, 10, 29.999, 20).minus(box(15, 29.997, 3, 1)).union(box(12, 29.999, 5, 0.006));
        assertThat(AsPlanned.of(read, PLANNED, FRAME)).isEqualTo(PLANNED);
    }

    @Test
    void whatIsWiderStays() {
        Region read = box(10, 10, 30.02, 20);
        assertThat(AsPlanned.of(read, PLANNED, FRAME).differenceMm2(read)).isCloseTo(0, within(1e-6));
        Region holed = PLANNED.minus(box(20, 15, 0.02, 5));
        assertThat(AsPlanned.of(holed, PLANNED, FRAME).differenceMm2(holed)).isCloseTo(0, within(1e-6));
    }

    @Test
    void oneFaultDoesNotBringSliversBack() {
        Region read = box(10.003, 10, 29.997, 20).minus(box(20, 15, 1, 1));
        assertThat(AsPlanned.of(read, PLANNED, FRAME).differenceMm2(PLANNED.minus(box(20, 15, 1, 1))))
                .isCloseTo(0, within(1e-6));
    }

    private static Region box(double x, double y, double width, double height) {
        return RegionExample.of(RegionExample.polygon(RegionExample.rectangle(x, y, width, height)));
    }
}
