package inkstrata.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** A drawing that is too large for the memory there is ends with code 2 and a line that says what was too large. */
class MemoryTest {
    @Test
    void lackOfMemoryOnAnyThreadSaysWhatWasTooLarge() {
        StringWriter err = new StringWriter();
        Faults faults = new Faults(new PrintWriter(new StringWriter()), new PrintWriter(err), false);
        Throwable wrapped = new IllegalStateException(
                new java.util.concurrent.ExecutionException(new OutOfMemoryError("Java heap space")));
        int code = faults.of(MemoryFault.in(wrapped, "mapping 400 shapes"), false);
        assertThat(code).isEqualTo(ExitCode.ARTWORK_AT_FAULT);
        assertThat(err.toString())
                .startsWith("inkstrata: mapping 400 shapes took more than the ")
                .contains(" MiB of memory that the program may use")
                .hasLineCount(1);
        Throwable other = new IllegalStateException("no lack of memory");
        assertThat(MemoryFault.in(other, "mapping")).isSameAs(other);
    }

    /** Pauses of an hour of work as they come, then nothing but pauses. */
    @Test
    void aRunThatOnlyLooksForMemoryIsEnded() {
        MemoryWatch watch = new MemoryWatch();
        long spent = 0;
        for (int second = 0; second < 3600; second++) {
            spent += second % 60 < 15 ? 1000 : 200;
            assertThat(watch.isTooLittle(Duration.ofSeconds(second), Duration.ofMillis(spent)))
                    .as("%d s", second)
                    .isFalse();
        }
        int ended = 3600;
        do {
            spent += 950;
            assertThat(ended).isLessThan(3600 + 30);
        } while (!watch.isTooLittle(Duration.ofSeconds(ended++), Duration.ofMillis(spent)));
        assertThat(ended).isGreaterThan(3600 + 15);
    }
}
