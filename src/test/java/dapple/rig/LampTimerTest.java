package dapple.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Timers that change over the year. Clocks change by Directive 2000/84/EC, on the last Sundays of March and October. */
class LampTimerTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final LocalTime ONE = LocalTime.of(13, 0);

    /** The table has whole minutes, of another year than ours; its declination is not that of noon. */
    private static final int TABLE_MINUTES = 2;

    static Stream<Random> chances() {
        return IntStream.range(0, 30).mapToObj(Random::new);
    }

    /** Duration of daylight by the almanac office's yearly tables: 40° N, 60° N and 35° S; from memory. */
    @ParameterizedTest
    @CsvSource({
        "40, 2025-06-21, 15:01",
        "40, 2025-12-21, 9:20",
        "60, 2025-06-21, 18:52",
        "60, 2025-12-21, 5:52",
        "-35, 2025-12-21, 14:31",
    })
    void theDayIsAsLongAsAlmanacsSay(double latitude, LocalDate day, String length) {
        String[] parts = length.split(":", -1);
        int minutes = Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1]);
        assertThat(times(home(latitude, 0), day).litMinutes()).isCloseTo(minutes, within(TABLE_MINUTES));
    }

    @Test
    void theLitDayLiesAboutItsMiddle() {
        DailyTimer times = times(home(40, 0), LocalDate.of(2025, 6, 21));
        assertThat(Duration.between(times.on(), ONE))
                .isCloseTo(Duration.between(ONE, times.off()), Duration.ofMinutes(1));
    }

    /** 20 min earlier and 20 min later. */
    @Test
    void backgroundLightComesEarlierAndGoesLater() {
        LocalDate day = LocalDate.of(2025, 4, 4);
        DailyTimer basking = times(home(40, 0), day);
        DailyTimer background = times(home(40, 20), day);
        assertThat(background.on()).isEqualTo(basking.on().minusMinutes(20));
        assertThat(background.off()).isEqualTo(basking.off().plusMinutes(20));
    }

    @Test
    void noDayIsLongerOrShorterThanAllowed() {
        HomeDayTimer timer = new HomeDayTimer(60, false, ONE, 0, 600, 840);
        assertThat(times(timer, LocalDate.of(2025, 6, 21)).litMinutes()).isEqualTo(840);
        assertThat(times(timer, LocalDate.of(2025, 12, 21)).litMinutes()).isEqualTo(600);
    }

    @Test
    void aShiftedYearHasTheDaysOfTheOppositeLatitude() {
        LocalDate day = LocalDate.of(2025, 12, 21);
        assertThat(times(new HomeDayTimer(-40, true, ONE, 0, 0, 1440), day)).isEqualTo(times(home(40, 0), day));
    }

    /** 70° N: the sun neither sets in June nor rises in December. */
    @Test
    void aPolarDayIsAlwaysOnAndAPolarNightOff() {
        assertThat(times(home(70, 0), LocalDate.of(2025, 6, 21)).isAlwaysOn()).isTrue();
        assertThat(home(70, 0).timesOf(LocalDate.of(2025, 12, 21))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"91,0,0,1440", "NaN,0,0,1440", "40,181,0,1440", "40,0,600,500", "40,0,0,1441", "40,0,-1,1440"})
    void whatNoLampCanFollowIsRefused(double latitude, int plus, int shortest, int longest) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HomeDayTimer(latitude, false, ONE, plus, shortest, longest));
    }

    @Test
    void aYearHasTwelveMonths() {
        assertThatIllegalArgumentException().isThrownBy(() -> new MonthlyTimer(List.of()));
    }

    @ParameterizedTest
    @MethodSource("chances")
    void twelveEqualMonthsAreAsOneDailyTimer(Random chance) {
        DailyTimer daily = DailyTimer.ofMinutes(chance.nextInt(1440), chance.nextInt(1440));
        LampTimer monthly = new MonthlyTimer(Collections.nCopies(12, Optional.of(daily)));
        Instant from = Instant.parse("2026-01-01T00:00:00Z").plusSeconds(chance.nextInt(400 * 86_400));
        Instant to = from.plusSeconds(chance.nextInt(100 * 86_400));
        assertThat(monthly.onWithin(from, to, LONDON)).isEqualTo(daily.onWithin(from, to, LONDON));
        if (!daily.isAlwaysOn()) {
            assertThat(monthly.onSince(to, LONDON)).isEqualTo(daily.onSince(to, LONDON));
        }
    }

    @ParameterizedTest
    @MethodSource("chances")
    void whatItBurnsInTwoPartsOfATimeItBurnsInTheWhole(Random chance) {
        LampTimer timer = home(chance.nextDouble() * 60, chance.nextInt(60));
        Instant from = Instant.parse("2026-01-01T00:00:00Z").plusSeconds(chance.nextInt(300 * 86_400));
        Instant middle = from.plusSeconds(chance.nextInt(30 * 86_400));
        Instant to = middle.plusSeconds(chance.nextInt(30 * 86_400));
        assertThat(timer.onWithin(from, middle, LONDON).plus(timer.onWithin(middle, to, LONDON)))
                .isEqualTo(timer.onWithin(from, to, LONDON));
    }

    /**
     * By hand: off in January, day and night in March and October, from 8 to 18 in every other month. 31 days less an hour,
     * 31 days and an hour.
     */
    @ParameterizedTest
    @CsvSource({
        "2026-01-01,2026-02-01,0",
        "2026-02-01,2026-03-01,280",
        "2026-03-01,2026-04-01,743",
        "2026-10-01,2026-11-01,745",
        "2026-03-29,2026-03-30,23",
        "2026-10-25,2026-10-26,25",
        "2026-02-28,2026-03-02,34"
    })
    void aMonthCountsTheHoursThatItHas(LocalDate first, LocalDate end, int hours) {
        Instant from = first.atStartOfDay(LONDON).toInstant();
        Instant to = end.atStartOfDay(LONDON).toInstant();
        assertThat(yearly().onWithin(from, to, LONDON)).isEqualTo(Duration.ofHours(hours));
    }

    /** 31 March, a night that begins at 22:00 by the times of March ends at 6:00 in April, whose times begin at 5:00. */
    @Test
    void whatTwoMonthsHaveInCommonCountsOnce() {
        List<Optional<DailyTimer>> months = new ArrayList<>(Collections.nCopies(12, Optional.empty()));
        months.set(2, Optional.of(new DailyTimer(LocalTime.of(22, 0), LocalTime.of(6, 0))));
        months.set(3, Optional.of(new DailyTimer(LocalTime.of(5, 0), LocalTime.of(8, 0))));
        Instant from = LocalDate.of(2026, 3, 31).atTime(12, 0).atZone(LONDON).toInstant();
        Instant to = LocalDate.of(2026, 4, 1).atTime(12, 0).atZone(LONDON).toInstant();
        assertThat(new MonthlyTimer(months).onWithin(from, to, LONDON)).isEqualTo(Duration.ofHours(10));
    }

    @Test
    void aMonthThatIsAlwaysOnWasSwitchedOnWithIt() {
        Instant at = LocalDate.of(2026, 3, 20).atTime(12, 0).atZone(LONDON).toInstant();
        assertThat(yearly().onSince(at, LONDON))
                .contains(LocalDate.of(2026, 3, 1).atStartOfDay(LONDON).toInstant());
    }

    @Test
    void aMonthThatIsOffIsNotOn() {
        Instant at = LocalDate.of(2026, 1, 20).atTime(12, 0).atZone(LONDON).toInstant();
        assertThat(yearly().onSince(at, LONDON)).isEmpty();
    }

    private static MonthlyTimer yearly() {
        List<Optional<DailyTimer>> months =
                new ArrayList<>(Collections.nCopies(12, Optional.of(RigExamples.tenHours())));
        DailyTimer always = new DailyTimer(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);
        months.set(0, Optional.empty());
        months.set(2, Optional.of(always));
        months.set(9, Optional.of(always));
        return new MonthlyTimer(months);
    }

    private static HomeDayTimer home(double latitude, int plus) {
        return new HomeDayTimer(latitude, false, ONE, plus, 0, 1440);
    }

    private static DailyTimer times(LampTimer timer, LocalDate day) {
        return timer.timesOf(day).orElseThrow();
    }
}
