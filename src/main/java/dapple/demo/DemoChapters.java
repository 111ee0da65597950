package dapple.demo;

import java.time.Duration;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Tells the demo's story chapter by chapter, and notes how long each took. */
final class DemoChapters {
    private static final Logger LOG = LoggerFactory.getLogger(DemoChapters.class);

    <T> T tell(String chapter, Supplier<T> telling) {
        long begun = System.nanoTime();
        T told = telling.get();
        LOG.debug(
                "The demo's chapter {} took {} ms",
                chapter,
                Duration.ofNanos(System.nanoTime() - begun).toMillis());
        return told;
    }
}
