package dapple.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WaitingTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final long SITE = 7;

    /** 10 in the morning in Berlin. */
    private static final Instant MORNING = Instant.parse("2026-11-24T09:00:00Z");

    private final Waiting waiting = new Waiting();

    @BeforeEach
    void begin() {
        waiting.take(SITE, BERLIN, MORNING.minusSeconds(60));
    }

    @Test
    void aSiteIsDueAtOnceAfterAStart() {
        assertThat(new Waiting().take(SITE, BERLIN, MORNING)).isTrue();
    }

    @Test
    void nothingIsDueOnADayWithoutReadings() {
        assertThat(waiting.take(SITE, BERLIN, MORNING)).isFalse();
    }

    @Test
    void aRoundThatGoesOnIsWaitedFor() {
        waiting.note(SITE, MORNING);
        waiting.note(SITE, MORNING.plusSeconds(540));
        assertThat(waiting.take(SITE, BERLIN, MORNING.plusSeconds(660))).isFalse();
    }

    @Test
    void aRoundThatIsOverIsDue() {
        waiting.note(SITE, MORNING);
        assertThat(waiting.take(SITE, BERLIN, MORNING.plus(Waiting.QUIET))).isTrue();
    }

    @Test
    void aRoundWithoutEndIsDueAfterAnHour() {
        for (int minute = 0; minute <= 60; minute++) {
            waiting.note(SITE, MORNING.plusSeconds(60L * minute));
        }
        assertThat(waiting.take(SITE, BERLIN, MORNING.plus(Waiting.LONGEST))).isTrue();
    }

    @Test
    void whatIsDueIsTakenOnce() {
        waiting.note(SITE, MORNING);
        waiting.take(SITE, BERLIN, MORNING.plus(Waiting.QUIET));
        assertThat(waiting.take(SITE, BERLIN, MORNING.plus(Waiting.LONGEST))).isFalse();
    }

    /** 3 in the night in Berlin is 2 in winter by Greenwich. */
    @Test
    void everyNightByTheSitesClockIsDue() {
        assertThat(waiting.take(SITE, BERLIN, Instant.parse("2026-11-25T01:59:00Z")))
                .isFalse();
        assertThat(waiting.take(SITE, BERLIN, Instant.parse("2026-11-25T02:00:00Z")))
                .isTrue();
    }
}
