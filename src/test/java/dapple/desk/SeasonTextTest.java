package dapple.desk;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.rig.DailyTimer;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampTimer;
import dapple.rig.MonthlyTimer;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SeasonTextTest {
    private static final DailyTimer SHORT = new DailyTimer(LocalTime.of(9, 30), LocalTime.of(17, 0));

    static Stream<LampTimer> timers() {
        List<Optional<DailyTimer>> months = new ArrayList<>();
        for (int month = 1; month <= MonthlyTimer.MONTHS; month++) {
            months.add(month < 3 ? Optional.empty() : Optional.of(SHORT));
        }
        return Stream.of(
                new MonthlyTimer(months), new HomeDayTimer(-23.4375, true, LocalTime.of(12, 45), -30, 540, 840));
    }

    @ParameterizedTest
    @MethodSource("timers")
    void isReadAsItWasWritten(LampTimer timer) {
        assertThat(SeasonText.of(timer).flatMap(SeasonText::read)).contains(timer);
    }

    @ParameterizedTest
    @MethodSource("timers")
    void isShorterThanAFieldMayBe(LampTimer timer) {
        assertThat(SeasonText.of(timer).orElseThrow()).hasSizeLessThan(300);
    }

    @Test
    void aDailyTimerIsTypedInstead() {
        assertThat(SeasonText.of(SHORT)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "kept",
                "MONTHLY",
                "MONTHLY off off",
                "MONTHLY 08:00 off off off off off off off off off off 25:00-26:00",
                "HOME_DAY 40.0 false 13:00 20 0",
                "HOME_DAY 91.0 false 13:00 20 0 1440",
                "HOME_DAY NaN false 13:00 20 0 1440",
                "HOME_DAY 1e400 false 13:00 20 0 1440",
                "HOME_DAY 40.0 false noon 20 0 1440",
                "HOME_DAY 40.0 false 13:00 2000 0 1440"
            })
    void whatNoTimerIsMeantByIsNone(String text) {
        assertThat(SeasonText.read(text)).isEmpty();
    }
}
