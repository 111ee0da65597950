package dapple.archive.sheet;

import dapple.light.judging.PointRole;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * A week of an enclosure, from Monday to Sunday in the time of the site (ISO 8601).
 *
 * @param monday its first day
 * @param readings those that count, at points that are judged
 * @param found by what the points stand for; where nothing was read, missing
 */
record EnclosureWeek(LocalDate monday, WeekDue due, int readings, Map<PointRole, WeekFound> found) {
    EnclosureWeek {
        found = Map.copyOf(found);
    }

    boolean isRead() {
        return readings > 0;
    }

    Optional<WeekFound> at(PointRole role) {
        return Optional.ofNullable(found.get(role));
    }

    /** The gravest of its points; empty: it was not read. */
    Optional<WeekFound> asAWhole() {
        return isRead() ? Optional.of(WeekFound.gravest(found.values())) : Optional.empty();
    }
}
