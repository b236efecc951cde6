package inkstrata.positive;

import static org.assertj.core.api.Assertions.assertThat;

import inkstrata.plan.PlanningExample;
import inkstrata.plan.PrintPlan;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FilmNamesTest {
    @Test
    void numberAndInkInSmallAsciiLetters() {
        assertThat(names("Sand", "d\u00e9j\u00e0 vu", "night/../blue", "--", "\u58a8", "fl\ufb01nt 2"))
                .containsExactly("01-sand", "02-deja-vu", "03-night-blue", "04-ink", "05-ink", "06-flfint-2");
    }

    @Test
    void aLongNameIsCutAndDoesNotEndInAHyphen() {
        assertThat(names("a".repeat(39) + " b")).containsExactly("01-" + "a".repeat(39) + "");
    }

    @Test
    void theySortInPrintOrderAndNoneComesTwice() {
        List<String> names = names(Collections.nCopies(123, "x").toArray(String[]::new));
        assertThat(names).isSorted().doesNotHaveDuplicates().hasSize(123);
        assertThat(names.get(6)).isEqualTo("007-x");
    }

    private static List<String> names(String... inks) {
        PrintPlan plan = PlanningExample.start(Stream.of(inks)
                .map(name -> PlanningExample.ink(name, "#000000"))
                .toList());
        assertThat(IntStream.range(0, inks.length)).hasSameSizeAs(plan.pulls());
        return FilmNames.of(plan);
    }
}
