package dapple.archive.sheet;

import dapple.enclosure.EnclosureFacts;
import java.util.List;
import java.util.Optional;

/** The weeks of an enclosure, oldest first. */
record EnclosureYear(EnclosureFacts enclosure, List<EnclosureWeek> weeks) {
    EnclosureYear {
        weeks = List.copyOf(weeks);
    }

    /** Weeks in which it was to be read. */
    int due() {
        return Math.toIntExact(
                weeks.stream().filter(week -> week.due() == WeekDue.DUE).count());
    }

    /** Of those that were due, the ones that were read. */
    int read() {
        return Math.toIntExact(weeks.stream()
                .filter(week -> week.due() == WeekDue.DUE && week.isRead())
                .count());
    }

    /** Of those that were due and read, the ones that were found so. */
    int found(WeekFound found) {
        return Math.toIntExact(weeks.stream()
                .filter(week -> week.due() == WeekDue.DUE)
                .filter(week -> week.asAWhole().filter(found::equals).isPresent())
                .count());
    }

    /** Of the weeks that were due; unknown where none was. */
    Optional<Double> shareRead() {
        return share(read(), due());
    }

    /** Of the weeks that were read; unknown where none was. */
    Optional<Double> shareOnTarget() {
        return share(found(WeekFound.ON_TARGET), read());
    }

    private static Optional<Double> share(int part, int whole) {
        return whole == 0 ? Optional.empty() : Optional.of((double) part / whole);
    }
}
