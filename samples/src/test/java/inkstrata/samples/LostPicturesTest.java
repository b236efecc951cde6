package inkstrata.samples;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.film.Film;
import inkstrata.job.Job;
import inkstrata.job.JobReader;
import inkstrata.measure.Frame;
import inkstrata.planar.Region;
import inkstrata.separation.Finding;
import inkstrata.separation.Finding.Severity;
import inkstrata.separation.Separation;
import inkstrata.shop.Separator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Films of the samples that lost their picture, half of it, or its largest part: each is an error that names the film, whatever lies around the picture. */
class LostPicturesTest {
    @Test
    void lostPicturesAreErrors() throws IOException {
        lose(Sample.all().get(0));
    }

    static List<Sample> samples() {
        return Sample.all();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("samples")
    void lostPicturesOfEverySampleAreErrors(Sample sample) throws IOException {
        lose(sample);
    }

    private static void lose(Sample sample) throws IOException {
        Job job = JobReader.read(sample.job());
        Separator separator = new Separator(Press.plugins());
        Separation planned = separator.separate(Press.read(sample), job);
        List<Optional<Film>> right = new ArrayList<>();
        for (int pull = 0; pull < planned.printed().size(); pull++) {
            right.add(Optional.of(film(planned, pull, planned.printed().get(pull))));
        }
        assertThat(serious(separator.compare(planned, right, job).findings()))
                .as("%s as planned", sample)
                .noneMatch(finding -> finding.severity() == Severity.ERROR);
        for (int pull = 0; pull < planned.printed().size(); pull++) {
            Region own = planned.printed().get(pull);
            if (own.isEmpty()) {
                continue;
            }
            Region largest = own.polygons().stream()
                    .map(Region::of)
                    .max(Comparator.comparingDouble(Region::areaMm2))
                    .orElseThrow();
            for (Region left : List.of(Region.EMPTY, own.minus(largest), half(own))) {
                List<Optional<Film>> films = new ArrayList<>(right);
                films.set(pull, Optional.of(film(planned, pull, left)));
                int asked = pull;
                List<Finding> findings =
                        serious(separator.compare(planned, films, job).findings());
                assertThat(findings)
                        .as("%s, film %s with %.1f of %.1f mm²", sample, pull + 1, left.areaMm2(), own.areaMm2())
                        .anyMatch(finding -> finding.severity() == Severity.ERROR
                                && finding.subject().pull().orElse(-1) == asked);
            }
        }
    }

    private static Region half(Region own) {
        return Region.of(own.polygons().stream()
                .map(Region::of)
                .sorted(Comparator.comparingDouble(Region::areaMm2))
                .limit(own.polygons().size() / 2)
                .toList());
    }

    private static Film film(Separation planned, int pull, Region picture) {
        Frame frame = planned.artwork().frame();
        return new Film("film" + (pull + 1) + ".svg", frame, picture, Region.EMPTY, List.of());
    }

    private static List<Finding> serious(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .toList();
    }
}
