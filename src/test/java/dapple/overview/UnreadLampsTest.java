package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.rig.FittingFacts;
import dapple.rig.Hanging;
import dapple.rig.RigExamples;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A lamp that burns from 8 to 18 London time, fitted at noon on 4 May 2026, and must burn for 30 minutes to be read. */
class UnreadLampsTest {
    private static final Instant FITTED = Instant.parse("2026-05-04T11:00:00Z");
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    @Test
    void waitsWithoutAnyReading() {
        assertThat(waits()).isTrue();
    }

    @Test
    void waitsWhileItWasReadOnlyBeforeItWasFitted() {
        assertThat(waits("2026-05-04T10:59:00Z")).isTrue();
    }

    @Test
    void waitsWhileItWasReadOnlyBeforeItWasWarm() {
        assertThat(waits("2026-05-04T11:29:00Z")).isTrue();
    }

    @Test
    void isOverOnceItWasReadWarm() {
        assertThat(waits("2026-05-04T11:30:00Z")).isFalse();
    }

    /** 8:00 in London in May is 7:00 UTC. */
    @Test
    void waitsAfterAReadingSoonAfterItWasSwitchedOn() {
        assertThat(waits("2026-05-05T07:29:00Z")).isTrue();
        assertThat(waits("2026-05-05T07:30:00Z")).isFalse();
    }

    @Test
    void waitsAfterAReadingInTheEvening() {
        assertThat(waits("2026-05-04T17:00:00Z")).isTrue();
    }

    @Test
    void withAnUnknownTimerAnyReadingEndsIt() {
        Hanging hanging = new Hanging("spot", Optional.empty(), Optional.empty(), Optional.empty());
        assertThat(unread("2026-05-04T11:01:00Z").holds(fitting(hanging), FITTED))
                .isFalse();
    }

    private static boolean waits(String... read) {
        Hanging hanging = new Hanging("spot", Optional.empty(), Optional.of(RigExamples.tenHours()), Optional.empty());
        return unread(read).holds(fitting(hanging), FITTED);
    }

    private static UnreadLamps unread(String... read) {
        return new UnreadLamps(List.of(read).stream().map(Instant::parse).toList(), Duration.ofMinutes(30), LONDON);
    }

    private static FittingFacts fitting(Hanging hanging) {
        FittingFacts any = RigExamples.fitting(RigExamples.spot("L1"), Optional.empty());
        return new FittingFacts(1, 1, any.lamp(), hanging, Optional.empty(), any.span());
    }
}
