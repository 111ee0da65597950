package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.lamp.LampClass;
import dapple.light.quantity.Quantity;
import dapple.rig.FittedLamp;
import dapple.rig.RigExamples;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A tube on from 8 to 18 London time, which in May is 7 to 17 UTC; lamps are read when they have burnt for 30 minutes. */
class BurningTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final FittedLamp TUBE = tube("2026-05-01T10:00:00Z", Optional.empty());

    @Test
    void aLampIsColdUntilItHasBurntForTheWarmUpTime() {
        assertThat(cold("2026-05-04T07:29:59Z", TUBE))
                .containsExactly(new ColdLamp("L1", Optional.of(Instant.parse("2026-05-04T07:30:00Z"))));
    }

    @Test
    void thenItIsWarm() {
        assertThat(cold("2026-05-04T07:30:00Z", TUBE)).isEmpty();
    }

    @Test
    void inTheEveningItIsOff() {
        assertThat(cold("2026-05-04T17:00:00Z", TUBE)).containsExactly(new ColdLamp("L1", Optional.empty()));
    }

    @Test
    void aLampThatWasJustHungIsCold() {
        assertThat(cold("2026-05-04T10:10:00Z", tube("2026-05-04T10:00:00Z", Optional.empty())))
                .extracting(ColdLamp::readyAt)
                .containsExactly(Optional.of(Instant.parse("2026-05-04T10:30:00Z")));
    }

    @Test
    void aLampThatWasMovedBurnsOn() {
        FittedLamp before = tube("2026-05-01T10:00:00Z", Optional.of("2026-05-04T10:00:00Z"));
        assertThat(cold("2026-05-04T10:10:00Z", before, tube("2026-05-04T10:00:00Z", Optional.empty())))
                .isEmpty();
    }

    @Test
    void aLampThatIsGoneIsNotSpokenOf() {
        FittedLamp gone = tube("2026-05-01T10:00:00Z", Optional.of("2026-05-04T07:10:00Z"));
        assertThat(cold("2026-05-04T07:10:00Z", gone)).isEmpty();
    }

    @Test
    void ofAnUnknownTimerNothingIsSaid() {
        FittedLamp untimed = new FittedLamp(
                1,
                "L1",
                LampClass.TUBE_T5,
                "tube",
                Optional.empty(),
                Instant.parse("2026-05-04T07:00:00Z"),
                Optional.empty(),
                1,
                Optional.empty());
        assertThat(cold("2026-05-04T07:10:00Z", untimed)).isEmpty();
    }

    @Test
    void aTubeSaysNothingOfATemperature() {
        assertThat(burning(TUBE).coldAt(Instant.parse("2026-05-04T07:10:00Z"), Quantity.SURFACE_TEMPERATURE))
                .isEmpty();
    }

    private static List<ColdLamp> cold(String at, FittedLamp... hung) {
        return burning(hung).coldAt(Instant.parse(at), Quantity.UV_INDEX);
    }

    private static Burning burning(FittedLamp... hung) {
        return new Burning(List.of(hung), Duration.ofMinutes(30), LONDON);
    }

    private static FittedLamp tube(String from, Optional<String> to) {
        return new FittedLamp(
                1,
                "L1",
                LampClass.TUBE_T5,
                "tube",
                Optional.of(RigExamples.tenHours()),
                Instant.parse(from),
                to.map(Instant::parse),
                1,
                Optional.empty());
    }
}
