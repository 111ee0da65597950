package dapple.site;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * Reads from a form when something happened, in the time of the site. A time that the clocks skip is refused; one that
 * comes twice is asked about.
 */
public final class When {
    /** No record of ours is older, no plan reaches farther. */
    private static final int FIRST_YEAR = 1950;

    private static final int LAST_YEAR = 2199;

    private final ZoneId zone;
    private final Instant latest;

    private When(ZoneId zone, Instant latest) {
        this.zone = zone;
        this.latest = latest;
    }

    /** For what has happened already. */
    public static When until(Instant now, ZoneId zone) {
        return new When(zone, now);
    }

    /** For what may lie ahead. */
    public static When ever(ZoneId zone) {
        return new When(zone, Instant.MAX);
    }

    /**
     * The instant that was meant; none if the field has an error then, with a message beside it.
     *
     * @param field the name of the field in the form
     */
    public Optional<Instant> read(
            String field, @Nullable LocalDateTime typed, @Nullable Occurrence which, Errors errors) {
        if (typed == null) {
            if (!errors.hasFieldErrors(field)) {
                errors.rejectValue(field, "when.needed");
            }
            return Optional.empty();
        }
        if (typed.getYear() < FIRST_YEAR || typed.getYear() > LAST_YEAR) {
            errors.rejectValue(field, "when.year");
            return Optional.empty();
        }
        return resolve(field, typed, which == null ? Occurrence.UNSAID : which, errors);
    }

    private Optional<Instant> resolve(String field, LocalDateTime typed, Occurrence which, Errors errors) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(typed);
        if (offsets.isEmpty()) {
            errors.rejectValue(field, "when.skipped");
            return Optional.empty();
        }
        if (offsets.size() > 1 && which == Occurrence.UNSAID) {
            errors.rejectValue(field, "when.twice");
            return Optional.empty();
        }
        ZoneOffset offset = offsets.get(which == Occurrence.SECOND ? offsets.size() - 1 : 0);
        return notLater(field, typed.toInstant(offset), errors);
    }

    private Optional<Instant> notLater(String field, Instant at, Errors errors) {
        if (at.isAfter(latest)) {
            errors.rejectValue(field, "when.future");
            return Optional.empty();
        }
        return Optional.of(at);
    }

    /** Whether a local time comes twice in a zone, so that a form must ask which is meant. */
    public static boolean comesTwice(LocalDateTime typed, ZoneId zone) {
        return zone.getRules().getValidOffsets(typed).size() > 1;
    }
}
