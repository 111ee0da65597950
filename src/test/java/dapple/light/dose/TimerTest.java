package dapple.light.dose;

import static dapple.light.dose.Histories.LONDON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TimerTest {
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 1);

    static Stream<Random> chances() {
        return IntStream.range(0, 40).mapToObj(Random::new);
    }

    @Test
    void goesOffAtAnotherTimeThanOn() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Timer(LocalTime.NOON, LocalTime.NOON));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-29, 23",
        "2026-10-25, 25",
        "2026-06-01, 24",
    })
    void aLocalDayHasAsManyHoursAsItsClockShows(LocalDate day, int hours) {
        assertThat(Span.of(day, LONDON).length()).isEqualTo(Duration.ofHours(hours));
    }

    @Test
    void lampsThatAreOnTogetherCountOnce() {
        assertThat(lit(JUNE, timer("08:00", "14:00"), timer("10:00", "16:00"), timer("11:00", "12:00")))
                .contains(Duration.ofHours(8));
    }

    @Test
    void lampsThatAreOnOneAfterTheOtherCountBoth() {
        assertThat(lit(JUNE, timer("22:00", "01:00"), timer("04:00", "05:00"))).contains(Duration.ofHours(4));
    }

    @Test
    void aLampIsCountedOnlyWhileItHung() {
        Span untilNine = new Span(Span.of(JUNE, LONDON).from(), Histories.at(JUNE, LocalTime.of(9, 0)));
        TimedLamps lamps = new TimedLamps(List.of(new TimedLamp(untilNine, Optional.of(timer("08:00", "20:00")))));

        assertThat(lamps.lit(Span.of(JUNE, LONDON), LONDON)).contains(Duration.ofHours(1));
    }

    @Test
    void withoutALampTheLitTimeIsUnknown() {
        assertThat(lit(JUNE)).isEmpty();
    }

    @Test
    void besideALampWithoutATimerTheLitTimeIsUnknown() {
        TimedLamps lamps = new TimedLamps(List.of(
                new TimedLamp(Histories.always(), Optional.of(timer("08:00", "20:00"))),
                new TimedLamp(Histories.always(), Optional.empty())));

        assertThat(lamps.lit(Span.of(JUNE, LONDON), LONDON)).isEmpty();
    }

    @Test
    void aClockThatGoesBackOverMidnightIsFollowed() {
        // Havana, 1 November 2026: at 01:00 back to 00:00; times of the tz database, which Java carries
        ZoneId havana = ZoneId.of("America/Havana");
        Span day = Span.of(LocalDate.of(2026, 11, 1), havana);

        assertThat(Histories.lampsOn(timer("23:30", "00:30")).lit(day, havana)).contains(Duration.ofMinutes(90));
    }

    /** Minute by minute: on is what the clock shows. */
    @ParameterizedTest
    @MethodSource("chances")
    void isOnWhileTheClockShowsATimeBetweenOnAndOff(Random chance) {
        Timer timer = Histories.timer(chance);
        LocalDate day = List.of(LocalDate.of(2026, 3, 29), LocalDate.of(2026, 10, 25), JUNE)
                .get(chance.nextInt(3));
        ZonedDateTime start = day.atStartOfDay(LONDON);
        long minutes = Stream.iterate(start, minute -> minute.plusMinutes(1))
                .takeWhile(minute -> minute.toLocalDate().equals(day))
                .filter(minute -> isOn(timer, minute.toLocalTime()))
                .count();

        assertThat(lit(day, timer)).contains(Duration.ofMinutes(minutes));
    }

    @ParameterizedTest
    @MethodSource("chances")
    void splitInTwoItIsOnAsLong(Random chance) {
        Timer whole = Histories.timer(chance);
        LocalTime middle = whole.on().plusSeconds(1 + chance.nextInt(50));
        for (LocalDate day : List.of(LocalDate.of(2026, 3, 29), LocalDate.of(2026, 10, 25), JUNE)) {
            assertThat(lit(day, new Timer(whole.on(), middle), new Timer(middle, whole.off())))
                    .isEqualTo(lit(day, whole));
        }
    }

    private static boolean isOn(Timer timer, LocalTime clock) {
        boolean afterOn = !clock.isBefore(timer.on());
        boolean beforeOff = clock.isBefore(timer.off());
        return timer.off().isAfter(timer.on()) ? afterOn && beforeOff : afterOn || beforeOff;
    }

    private static Optional<Duration> lit(LocalDate day, Timer... timers) {
        return Histories.lampsOn(timers).lit(Span.of(day, LONDON), LONDON);
    }

    private static Timer timer(String on, String off) {
        return new Timer(LocalTime.parse(on), LocalTime.parse(off));
    }
}
