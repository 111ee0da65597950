package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Expected days are counted by hand on a calendar. */
class RetentionTest {
    private static final Retention USUAL = new Retention(14, 12);
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 27);

    @Test
    void keepsTheNewestFourteen() {
        assertThat(USUAL.kept(days(14))).containsExactlyInAnyOrderElementsOf(days(14));
    }

    /** Of 60 days to 27 November: those from 14 November on, then 13 November, 31 October, and the oldest, 29 September, 30 September. */
    @Test
    void keepsTheNewestOfEachMonthBeforeThem() {
        assertThat(USUAL.kept(days(60)))
                .hasSize(17)
                .contains(
                        LocalDate.of(2026, 11, 14),
                        LocalDate.of(2026, 11, 13),
                        LocalDate.of(2026, 10, 31),
                        LocalDate.of(2026, 9, 30));
    }

    @Test
    void keepsTwelveMonthsOnly() {
        assertThat(USUAL.kept(days(800))).hasSize(14 + 12).doesNotContain(LocalDate.of(2025, 11, 30));
    }

    @Test
    void countsBackupsAndNotDaysSoThatAMachineThatWasOffLosesNone() {
        Set<LocalDate> rare = Set.of(LocalDate.of(2024, 1, 1), LocalDate.of(2025, 6, 1), TODAY);
        assertThat(USUAL.kept(rare)).isEqualTo(rare);
    }

    /** Night after night the same rule: what stays at last is a fortnight and a year. */
    @Test
    void nightAfterNightKeepsAFortnightAndAYear() {
        Set<LocalDate> there = new TreeSet<>();
        for (LocalDate night = TODAY.minusDays(800); !night.isAfter(TODAY); night = night.plusDays(1)) {
            there.add(night);
            there.retainAll(USUAL.kept(there));
        }
        assertThat(there).hasSize(26).contains(LocalDate.of(2025, 12, 31), LocalDate.of(2026, 11, 13));
    }

    @Test
    void mustKeepOne() {
        assertThatThrownBy(() -> new Retention(0, 12)).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<LocalDate> days(int count) {
        return Stream.iterate(TODAY, day -> day.minusDays(1)).limit(count).toList();
    }
}
