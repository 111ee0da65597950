package dapple.lamp;

import dapple.people.SignedIn;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;

/** Refuses days that are not yet, by the calendar of the site, and those before all records. */
@Component
class PastDay {
    private static final int FIRST_YEAR = 1950;

    private final Clock clock;

    PastDay(Clock clock) {
        this.clock = clock;
    }

    void check(String field, Optional<LocalDate> typed, SignedIn me, Errors errors) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), me.zone());
        typed.filter(day -> day.isAfter(today)).ifPresent(day -> errors.rejectValue(field, "lamp.day.future"));
        typed.filter(day -> day.getYear() < FIRST_YEAR).ifPresent(day -> errors.rejectValue(field, "when.year"));
    }
}
