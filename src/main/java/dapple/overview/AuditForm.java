package dapple.overview;

import dapple.site.Occurrence;
import dapple.site.When;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** The instant that is asked about, in the time of the site; nothing typed is now. */
record AuditForm(@Nullable LocalDateTime at, @Nullable Occurrence atWhich) {
    /** None if the form has errors then. */
    Optional<Instant> instant(Instant now, ZoneId zone, Errors errors) {
        if (errors.hasErrors()) {
            return Optional.empty();
        }
        return at == null ? Optional.of(now) : When.until(now, zone).read("at", at, atWhich, errors);
    }
}
