package dapple.enclosure;

import dapple.site.Occurrence;
import dapple.site.When;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** When the lamps went on again; empty for now. */
record EndOffForm(@Nullable LocalDateTime endTime, @Nullable Occurrence endTimeWhich) {

    Optional<Instant> end(Instant now, ZoneId zone, Errors errors) {
        if (endTime == null && !errors.hasFieldErrors("endTime")) {
            return Optional.of(now);
        }
        return When.until(now, zone).read("endTime", endTime, endTimeWhich, errors);
    }
}
