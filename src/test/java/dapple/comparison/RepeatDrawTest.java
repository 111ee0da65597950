package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RepeatDrawTest {
    private static final RepeatDraw DRAW = new RepeatDraw(new UUID(17, 4));

    /** Of 20 000 with one in ten 2000 are expected, with a standard deviation of √(20 000 · 0.1 · 0.9) = 42; five of these. */
    @Test
    void oneInTenIsDrawn() {
        assertThat(keys().stream().filter(DRAW::takes)).hasSizeBetween(1788, 2212);
    }

    /** By another seed: of what one draws the other draws a tenth, about 200 with a standard deviation of 13; five of these. */
    @Test
    void withoutTheSeedNobodyForeseesIt() {
        RepeatDraw other = new RepeatDraw(new UUID(17, 5));
        assertThat(keys().stream().filter(DRAW::takes).filter(other::takes)).hasSizeBetween(133, 267);
    }

    @Test
    void theSameKeyIsDrawnAgain() {
        RepeatDraw again = new RepeatDraw(new UUID(17, 4));
        assertThat(keys().stream().filter(again::takes))
                .containsExactlyElementsOf(keys().stream().filter(DRAW::takes).toList());
    }

    private static List<UUID> keys() {
        return IntStream.range(0, 20_000)
                .mapToObj(number ->
                        UUID.nameUUIDFromBytes(new byte[] {(byte) number, (byte) (number >> 8), (byte) (number >> 16)}))
                .toList();
    }
}
