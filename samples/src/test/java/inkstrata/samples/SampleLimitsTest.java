package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Inspection;
import inkstrata.separation.Separation;
import inkstrata.separation.Verdict;
import inkstrata.separation.Verdict.Answer;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a printmaker is told about the samples. */
class SampleLimitsTest {
    /** In the mist a place of 0.38 mm² comes to a grey of its own; two ridges under the cable car run less than 0.1 mm beside each other. */
    private static final Map<String, String> KNOWN = Map.of("lampions", "little ink", "ropeway", "fine line");

    static List<Sample> samples() {
        return Sample.all();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void samplesHoldToTheirRegister(Sample sample) throws IOException {
        Job job = JobReader.read(sample.job());
        Separator separator = new Separator(Press.plugins());
        Separation separation = separator.separate(Press.read(sample), job);
        Inspection inspection = separator.inspect(separation, job);
        long warnings = inspection.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .filter(finding -> !KNOWN.getOrDefault(sample.name(), "").equals(finding.rule()))
                .count();
        assertThat(warnings).isZero();
        Verdict verdict = inspection.verdict().orElseThrow();
        assertThat(verdict.answer()).as(verdict.line()).isIn(Answer.HOLDS, Answer.NOTHING_TO_REGISTER);
    }
}
