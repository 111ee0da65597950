package dapple.enclosure;

import dapple.site.Line;
import dapple.site.Occurrence;
import dapple.site.When;
import jakarta.validation.constraints.Size;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** From when until when the lamps are off on purpose, and why; without an end until somebody ends it. */
record PlannedOffForm(
        @Nullable LocalDateTime fromTime,
        @Nullable Occurrence fromTimeWhich,
        @Nullable LocalDateTime toTime,
        @Nullable Occurrence toTimeWhich,
        @Line @Size(max = 200) String reason) {

    static PlannedOffForm empty() {
        return new PlannedOffForm(null, null, null, null, "");
    }

    /** The time that was meant; none where a field has an error then. */
    Optional<PlannedOffTime> time(long enclosureId, ZoneId zone, Errors errors) {
        Optional<Instant> from = When.ever(zone).read("fromTime", fromTime, fromTimeWhich, errors);
        Optional<Instant> to = toTime == null || errors.hasFieldErrors("toTime")
                ? Optional.empty()
                : When.ever(zone).read("toTime", toTime, toTimeWhich, errors);
        if (from.isPresent() && to.filter(end -> !end.isAfter(from.get())).isPresent()) {
            errors.rejectValue("toTime", "off.to.before");
        }
        return errors.hasErrors()
                ? Optional.empty()
                : from.map(begin -> new PlannedOffTime(enclosureId, begin, to, reason.strip()));
    }
}
