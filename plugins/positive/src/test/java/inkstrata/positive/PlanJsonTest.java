package inkstrata.positive;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import inkstrata.job.Job;
import inkstrata.measure.Frame;
import inkstrata.measure.Size;
import inkstrata.plan.Side;
import inkstrata.planar.Region;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlanJsonTest {
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
                          "merge" : 2,
                          "edition" : {
                            "prints" : 1,
                            "spoilage" : 0.12
                          },
                          "pulls" : [ {
                            "number" : 1,
                            "file" : "01-sand.svg",
                            "ink" : {
                              "name" : "sand",
                              "swatch" : "#112233",
                              "hiding" : 0.35,
                              "key" : false,
                              "mesh" : "77-48"
                            },
                            "side" : "front",
                            "areaMm2" : 217000,
                            "stacks" : [ 1 ]
                          }, {
                        """.stripTrailing()).contains("""
                          }, {
                            "number" : 3,
                            "paints" : [ "#336699" ],
                            "areaMm2" : 0.1235,
                            "predicted" : "#336491",
                            "difference" : 1.3,
                            "pulls" : [ 3 ]
                          } ],
                        """);
    }

    private static String plan(Side side) throws IOException {
        byte[] plan =
                PrintExample.written(PrintExample.poster(side), Job.DEFAULT).get("plan.json");
        return new String(plan, UTF_8);
    }

    /** By a validator that is not ours. */
    private static List<Error> faults(String plan) throws IOException {
        try (InputStream in = PlanJson.class.getResourceAsStream("plan.schema.json")) {
            Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), UTF_8), InputFormat.JSON);
            return schema.validate(plan, InputFormat.JSON);
        }
    }
}
