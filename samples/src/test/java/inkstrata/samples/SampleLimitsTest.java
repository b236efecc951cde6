package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a printmaker is told about the samples. */
class SampleLimitsTest {
    static List<Sample> samples() {
        return Sample.all();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void samplesHoldToTheirRegister(Sample sample) throws IOException {
        Job job = JobReader.read(sample.job());
        Separator separator = new Separator(Press.plugins());
        Separation separation = separator.separate(Press.read(sample), job);
        List<Finding> findings = separator.inspect(separation, job);
        long warnings = findings.stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .count();
        assertThat(warnings).isZero();
        assertThat(findings.get(findings.size() - 1).measured())
                .startsWith(String.format(Locale.ROOT, "holds to %.2f mm", job.registerMm()));
    }
}
