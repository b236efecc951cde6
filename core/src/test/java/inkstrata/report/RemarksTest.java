package inkstrata.report;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.artwork.Note;
import inkstrata.artwork.Source;
import inkstrata.measure.Place;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Quantity;
import inkstrata.separation.Quantity.Unit;
import inkstrata.separation.Subject;
import inkstrata.separation.Verdict;
import inkstrata.separation.Verdict.Parting;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RemarksTest {
    private static final Finding BARE = new Finding(Severity.ERROR, "gap", new Place(1, 2.5), "bare", "ink", "Ink it.");

    @Test
    void aFindingSaysWhatItSpeaksOfAndItsNumbers() {
        Finding full = BARE.about(
                        Subject.ink("sand").withPull(0).withFile("01-sand.svg").withElement("<path>"))
                .withQuantity(Quantity.of(0.1, 0.4, Unit.MILLIMETRES));
        assertThat(Json.text(Remarks.findings(List.of(full)).get(0))).isEqualTo("""
                        {
                          "severity" : "error",
                          "rule" : "gap",
                          "ink" : "sand",
                          "pull" : 1,
                          "file" : "01-sand.svg",
                          "element" : "<path>",
                          "xMm" : 1,
                          "yMm" : 2.5,
                          "measured" : "bare",
                          "limit" : "ink",
                          "remedy" : "Ink it.",
                          "measuredMm" : 0.1,
                          "limitMm" : 0.4
                        }""");
    }

    @Test
    void whatIsNotKnownIsLeftOut() {
        assertThat(Remarks.findings(List.of(BARE)).get(0))
                .containsOnlyKeys("severity", "rule", "xMm", "yMm", "measured", "limit", "remedy");
        assertThat(Remarks.notes(List.of(Note.warning(Source.UNKNOWN, "Small.")))
                        .get(0))
                .containsOnlyKeys("severity", "text");
        assertThat(Remarks.result(Inspection.NOTHING)).containsOnlyKeys("format");
    }

    /** Every unit has its keys in the schema. */
    @Test
    void everyUnitIsKnown() throws Exception {
        for (Unit unit : Unit.values()) {
            Finding finding = BARE.withQuantity(Quantity.of(3, 4, unit));
            assertThat(Schemas.commonKeys("finding"))
                    .containsAll(Remarks.findings(List.of(finding)).get(0).keySet());
        }
    }

    @Test
    void theVerdictComesFirst() {
        Verdict verdict = new Verdict(
                0.4,
                OptionalDouble.of(0.06789),
                OptionalDouble.empty(),
                Optional.of(new Parting(new Place(3, 4), List.of("rust", "sand"))),
                List.of(),
                List.of("sand", "rust"),
                List.of("coat"));
        assertThat(Json.text(Remarks.result(Inspection.NOTHING.withVerdict(verdict))))
                .isEqualTo("""
                        {
                          "verdict" : {
                            "answer" : "does not hold",
                            "text" : "Does not hold: paper shows from 0.06 mm on (asked: 0.40; coat not counted), first between rust and sand, 3.0 mm from the left edge of the sheet, 4.0 from its top.",
                            "askedMm" : 0.4,
                            "heldMm" : 0.06789,
                            "xMm" : 3,
                            "yMm" : 4,
                            "between" : [ "rust", "sand" ],
                            "obstacles" : [ ],
                            "inks" : [ "sand", "rust" ],
                            "notCounted" : [ "coat" ]
                          },
                          "format" : 1
                        }""");
    }
}
