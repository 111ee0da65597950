package dapple.review;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What somebody decides about a finding, and why. */
record DecisionForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable DecisionKind kind,
        @Line @Size(max = 500) String text,
        @Nullable LocalDate until,
        @Nullable Long givenTo) {
    private static final int LONGEST_DAYS = 366;

    static DecisionForm empty() {
        return new DecisionForm(UUID.randomUUID(), DecisionKind.NOTE, "", null, null);
    }

    /** What each kind needs besides a reason. */
    void check(LocalDate today, Errors errors) {
        if ((kind == DecisionKind.ACCEPTED || kind == DecisionKind.GIVEN) && !errors.hasFieldErrors("until")) {
            if (until == null) {
                errors.rejectValue("until", "decision.until.needed");
            } else if (until.isBefore(today)) {
                errors.rejectValue("until", "decision.until.past");
            } else if (until.isAfter(today.plusDays(LONGEST_DAYS))) {
                errors.rejectValue("until", "decision.until.far");
            }
        }
        if (kind == DecisionKind.GIVEN && givenTo == null && !errors.hasFieldErrors("givenTo")) {
            errors.rejectValue("givenTo", "decision.given-to.needed");
        }
    }

    NewDecision decision() {
        boolean dated = kind == DecisionKind.ACCEPTED || kind == DecisionKind.GIVEN;
        return new NewDecision(
                Given.of(key),
                Given.of(kind),
                text.strip(),
                Optional.ofNullable(until).filter(day -> dated),
                Optional.ofNullable(givenTo).filter(person -> kind == DecisionKind.GIVEN));
    }
}
