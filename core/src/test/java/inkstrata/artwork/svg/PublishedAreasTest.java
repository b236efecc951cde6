package inkstrata.artwork.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PublishedAreasTest {
    @Test
    void thereAreFlagsToCheck() throws IOException {
        assertThat(PublishedAreas.of("flag-icons")).hasSize(26);
    }

    @TestFactory
    Stream<DynamicTest> flagsShowTheirPublishedAreas() throws IOException {
        return PublishedAreas.of("flag-icons").entrySet().stream()
                .map(flag -> DynamicTest.dynamicTest(flag.getKey(), () -> check(flag.getKey(), flag.getValue())));
    }

    private static void check(String file, Map<String, Double> published) throws IOException {
        try (InputStream stream = Flags.open("4x3/" + file)) {
            PublishedAreas.check(SvgReader.read(file, stream, VisibleAreas.SIZE), published);
        }
    }
}
