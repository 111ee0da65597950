package dapple.round;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What is said of a round but for its doors, with the version that the form was made from. */
record RoundForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 80) String title,
        @NotNull RoundPlan.@Nullable CadenceKind cadence,
        @Nullable Set<DayOfWeek> weekdays,

        @Min(value = 1, message = "{round.every.wrong}")
        @Max(value = Cadence.Every.MOST, message = "{round.every.wrong}")
        @Nullable
        Integer everyDays,

        @NotNull @Nullable LocalDate firstDay,
        @Nullable LocalDate lastDay,
        @Nullable String givenTo) {

    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2199;

    static RoundForm empty(LocalDate today) {
        return new RoundForm(0L, "", RoundPlan.CadenceKind.WEEKDAYS, Set.of(), null, today, null, "KEEPER");
    }

    static RoundForm of(PlanFacts plan) {
        DueDays days = plan.days();
        Set<DayOfWeek> weekdays = days.cadence() instanceof Cadence.Weekdays weekly ? weekly.days() : Set.of();
        Integer every = days.cadence() instanceof Cadence.Every interval ? interval.days() : null;
        return new RoundForm(
                plan.version(),
                plan.title(),
                every == null ? RoundPlan.CadenceKind.WEEKDAYS : RoundPlan.CadenceKind.EVERY,
                weekdays,
                every,
                days.first(),
                days.last().orElse(null),
                plan.givenTo().key());
    }

    RoundForm onVersion(long newVersion) {
        return new RoundForm(newVersion, title, cadence, weekdays, everyDays, firstDay, lastDay, givenTo);
    }

    long versionSeen() {
        return Given.of(version);
    }

    /** What no field says alone. */
    void check(Recipients recipients, Errors errors) {
        boolean isWeekly = cadence == RoundPlan.CadenceKind.WEEKDAYS;
        if (isWeekly && (weekdays == null || weekdays.isEmpty())) {
            errors.rejectValue("weekdays", "round.weekdays.none");
        }
        if (cadence == RoundPlan.CadenceKind.EVERY && everyDays == null && !errors.hasFieldErrors("everyDays")) {
            errors.rejectValue("everyDays", "round.every.wrong");
        }
        if (recipients.named(key()).isEmpty()) {
            errors.rejectValue("givenTo", "round.given.wrong");
        }
        checkYear("firstDay", firstDay, errors);
        checkYear("lastDay", lastDay, errors);
        if (firstDay != null && lastDay != null && lastDay.isBefore(firstDay)) {
            errors.rejectValue("lastDay", "round.last.before");
        }
    }

    private static void checkYear(String field, @Nullable LocalDate day, Errors errors) {
        if (day != null && (day.getYear() < FIRST_YEAR || day.getYear() > LAST_YEAR)) {
            errors.rejectValue(field, "when.year");
        }
    }

    PlanDetails details(Recipients recipients, List<Long> enclosureIds) {
        Cadence due = cadence == RoundPlan.CadenceKind.EVERY
                ? new Cadence.Every(Given.of(everyDays))
                : new Cadence.Weekdays(Given.of(weekdays));
        DueDays days = new DueDays(due, Given.of(firstDay), Optional.ofNullable(lastDay));
        GivenTo to = recipients.named(key()).orElseThrow();
        return new PlanDetails(title.strip(), days, to, enclosureIds);
    }

    private String key() {
        return givenTo == null ? "" : givenTo;
    }
}
