package dapple.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DueDaysTest {
    /** The start of the worked examples of RFC 5545 (iCalendar), section 3.8.5.3: DTSTART 2 September 1997, a Tuesday. */
    private static final LocalDate START = LocalDate.of(1997, 9, 2);

    /** "Weekly on Tuesday and Thursday for five weeks", until 7 October; typed from RFC 5545, section 3.8.5.3. */
    @Test
    void daysOfTheWeekAreThoseOfTheWorkedExample() {
        DueDays days = new DueDays(
                new Cadence.Weekdays(Set.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY)),
                START,
                Optional.of(LocalDate.of(1997, 10, 6)));
        assertThat(walked(days))
                .containsExactlyElementsOf(
                        dates("1997-09-02 1997-09-04 1997-09-09 1997-09-11 1997-09-16 1997-09-18 1997-09-23 1997-09-25"
                                + " 1997-09-30 1997-10-02"));
    }

    /** "Every 10 days, 5 occurrences"; typed from RFC 5545, section 3.8.5.3. */
    @Test
    void anIntervalIsThatOfTheWorkedExample() {
        DueDays days = new DueDays(new Cadence.Every(10), START, Optional.of(LocalDate.of(1997, 10, 12)));
        assertThat(walked(days))
                .containsExactlyElementsOf(dates("1997-09-02 1997-09-12 1997-09-22 1997-10-02 1997-10-12"));
    }

    /**
     * "Every other day - forever", as far as its list goes on over the end of summer time on 26 October; typed from RFC
     * 5545, section 3.8.5.3.
     */
    @Test
    void aDayOf25HoursIsOneDay() {
        DueDays days = new DueDays(new Cadence.Every(2), START, Optional.empty());
        assertThat(days.between(LocalDate.of(1997, 10, 20), LocalDate.of(1997, 11, 3)))
                .containsExactlyElementsOf(Stream.of(
                                "1997-11-03 1997-11-01 1997-10-30 1997-10-28 1997-10-26 1997-10-24 1997-10-22 1997-10-20"
                                        .split(" "))
                        .map(LocalDate::parse)
                        .toList());
    }

    /** java.time counts the days of the week by itself. */
    @ParameterizedTest
    @EnumSource
    void oneDayOfTheWeekIsWhatTheCalendarSays(DayOfWeek day) {
        DueDays days = new DueDays(new Cadence.Weekdays(Set.of(day)), LocalDate.of(2020, 1, 1), Optional.empty());
        for (LocalDate today = LocalDate.of(2024, 2, 20); today.getMonthValue() < 4; today = today.plusDays(1)) {
            assertThat(days.newestUntil(today)).contains(today.with(TemporalAdjusters.previousOrSame(day)));
            assertThat(days.nextAfter(today)).contains(today.with(TemporalAdjusters.next(day)));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 30, 366})
    void anIntervalComesBackAfterAsManyDays(int every) {
        DueDays days = new DueDays(new Cadence.Every(every), START, Optional.empty());
        LocalDate due = START.plusDays(5L * every);
        assertThat(days.newestUntil(due)).contains(due);
        assertThat(days.newestUntil(due.plusDays(every - 1L))).contains(due);
        assertThat(days.nextAfter(due)).contains(due.plusDays(every));
    }

    @Test
    void nothingIsDueBeforeTheFirstDay() {
        DueDays days = new DueDays(new Cadence.Every(3), START, Optional.empty());
        assertThat(days.newestUntil(START.minusDays(1))).isEmpty();
        assertThat(days.nextAfter(START.minusDays(40))).contains(START);
    }

    @Test
    void theFirstDayIsDueOnlyIfItIsOneOfTheDays() {
        DueDays days = new DueDays(new Cadence.Weekdays(Set.of(DayOfWeek.MONDAY)), START, Optional.empty());
        assertThat(days.nextAfter(START.minusDays(1))).contains(LocalDate.of(1997, 9, 8));
    }

    @Test
    void theLastDueDayStaysTheNewestAfterTheEnd() {
        DueDays days = new DueDays(new Cadence.Every(10), START, Optional.of(START.plusDays(15)));
        assertThat(days.newestUntil(START.plusDays(300))).contains(START.plusDays(10));
        assertThat(days.nextAfter(START.plusDays(10))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, -1, 0, 367})
    void anIntervalIsOneDayToAYear(int every) {
        assertThatThrownBy(() -> new Cadence.Every(every)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void noDayOfTheWeekIsNoCadence() {
        assertThatThrownBy(() -> new Cadence.Weekdays(Set.of())).isInstanceOf(IllegalArgumentException.class);
    }

    /** All due days of a round that ends, by going from one to the next. */
    private static List<LocalDate> walked(DueDays days) {
        return Stream.iterate(
                        days.nextAfter(days.first().minusDays(1)),
                        Optional::isPresent,
                        day -> day.flatMap(days::nextAfter))
                .flatMap(Optional::stream)
                .toList();
    }

    private static List<LocalDate> dates(String inOrder) {
        return Stream.of(inOrder.split(" ")).map(LocalDate::parse).toList();
    }
}
