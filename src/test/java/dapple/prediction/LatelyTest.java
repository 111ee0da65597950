package dapple.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.testing.Together;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LatelyTest {
    private final Lately<String, Integer> lately = new Lately<>(2);
    private final AtomicInteger worked = new AtomicInteger();

    @Test
    void worksOnceForEqualKeys() {
        ask("a");
        ask(new String("a".toCharArray()));
        assertThat(worked).hasValue(1);
    }

    @Test
    void givesBackWhatWasWorkedOut() {
        assertThat(ask("abc")).isEqualTo(3);
        assertThat(ask("abc")).isEqualTo(3);
    }

    @Test
    void forgetsWhatWasAskedForLeastLately() {
        ask("a");
        ask("b");
        ask("a");
        ask("c");
        ask("a");
        assertThat(worked).hasValue(3);
        ask("b");
        assertThat(worked).hasValue(4);
    }

    @Test
    void whatFailsIsTriedAnew() {
        assertThatThrownBy(() -> lately.get("a", () -> {
                    throw new IllegalArgumentException("broken");
                }))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(ask("a")).isEqualTo(1);
    }

    @Test
    void twoThatAskAtOnceAreAnsweredByOneWork() throws Exception {
        Together.run(() -> ask("a"), () -> ask("a"));
        assertThat(worked).hasValue(1);
    }

    private int ask(String key) {
        return lately.get(key, () -> {
            worked.incrementAndGet();
            return key.length();
        });
    }
}
