package inkstrata.positive;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.plan.Side;
import inkstrata.planar.Region;
import inkstrata.report.Schemas;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlanJsonTest {
    private static final String SCHEMA = "/inkstrata/positive/plan.schema.json";

    @Test
    void realPlansKeepTheSchema() throws IOException {
        assertThat(faults(plan(Side.FRONT))).isEmpty();
        assertThat(faults(plan(Side.BACK))).isEmpty();
        byte[] tiny = PrintExample.written(
                        PrintExample.print(new Size(20, 20), new Frame(0, 0, 20, 20), Side.FRONT, Region.EMPTY),
                        Job.DEFAULT)
                .get("plan.json");
        assertThat(faults(new String(tiny, UTF_8))).isEmpty();
        assertThat(new String(tiny, UTF_8)).contains("larger than the sheet of 20 x 20 mm");
    }

    @Test
    void everyKeyButMeshIsRequiredAndNoOtherIsKnown() throws IOException {
        Map<String, Object> plan = JSON.std.mapFrom(plan(Side.FRONT));
        for (String key : List.copyOf(plan.keySet())) {
            Object value = plan.remove(key);
            assertThat(faults(JSON.std.asString(plan))).as("without %s", key).isNotEmpty();
            plan.put(key, value);
        }
        assertThat(faults(JSON.std.asString(plan))).isEmpty();
        plan.put("another", 1);
        assertThat(faults(JSON.std.asString(plan))).isNotEmpty();
    }

    @Test
    void saysWhatThePullsAre() throws IOException {
        assertThat(plan(Side.FRONT)).contains("""
                          "film" : {
                            "xMm" : 0,
                            "yMm" : 0,
                            "widthMm" : 500,
                            "heightMm" : 700
                          },
                          "registerMm" : 0.4,
                          "seamMm" : 0.05,
                          "merge" : 2,
                          "edition" : {
                            "prints" : 1,
                            "spoilage" : 0.12
                          },
                          "pulls" : [ {
                            "pull" : 1,
                            "ink" : "sand",
                            "file" : "01-sand.svg",
                            "swatch" : "#112233",
                            "hiding" : 0.35,
                            "key" : false,
                            "mesh" : "77-48",
                            "side" : "front",
                            "areaMm2" : 217000,
                            "stacks" : [ 1 ]
                          }, {
                        """.stripTrailing()).contains("""
                          }, {
                            "stack" : 3,
                            "paints" : [ "#336699" ],
                            "areaMm2" : 0.1235,
                            "drawn" : "#336699",
                            "predicted" : "#336491",
                            "difference" : 1.3,
                            "inks" : [ "night" ],
                            "pulls" : [ 3 ]
                          } ],
                        """);
    }

    private static String plan(Side side) throws IOException {
        byte[] plan =
                PrintExample.written(PrintExample.poster(side), Job.DEFAULT).get("plan.json");
        return new String(plan, UTF_8);
    }

    @Test
    void thePageHasTheKeysOfTheSchema() throws IOException {
        assertThat(Schemas.described(Path.of("docs/plan-json.md"), "sRGB,")).isEqualTo(Schemas.keys(SCHEMA));
    }

    private static List<String> faults(String plan) throws IOException {
        return Schemas.faults(SCHEMA, plan);
    }
}
