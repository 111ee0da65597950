package dapple.archive;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which backups stay: the newest, then of each month before them the newest one.
 *
 * @param days how many of the newest
 * @param months how many months before them, one backup each
 */
record Retention(int days, int months) {
    Retention {
        if (!(days >= 1 && months >= 0)) {
            throw new IllegalArgumentException(
                    "a backup must be kept: days at least 1, months at least 0, were " + days + " and " + months);
        }
    }

    Set<LocalDate> kept(Collection<LocalDate> all) {
        List<LocalDate> newestFirst =
                all.stream().distinct().sorted(Comparator.reverseOrder()).toList();
        Set<LocalDate> kept = new TreeSet<>(newestFirst.stream().limit(days).toList());
        Set<YearMonth> seen = new TreeSet<>();
        newestFirst.stream()
                .skip(days)
                .filter(day -> seen.add(YearMonth.from(day)))
                .limit(months)
                .forEach(kept::add);
        return kept;
    }
}
