package dapple.round;

import dapple.people.Role;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** A round as it is planned. */
@Entity
@Audited
class RoundPlan {
    private static final int LETTERS = 3;

    /** How the days on which it is due are named. */
    enum CadenceKind {
        WEEKDAYS,
        EVERY
    }

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private String title;

    @Enumerated(EnumType.STRING)
    private CadenceKind cadence;

    private @Nullable String weekdays;
    private @Nullable Integer everyDays;
    private LocalDate firstDay;
    private @Nullable LocalDate lastDay;
    private @Nullable Long personId;

    @Enumerated(EnumType.STRING)
    private @Nullable Role role;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected RoundPlan() {}

    @SuppressWarnings("NullAway.Init")
    RoundPlan(long siteId, PlanDetails details) {
        this.siteId = siteId;
        describe(details);
    }

    long id() {
        return id;
    }

    long siteId() {
        return siteId;
    }

    long version() {
        return version;
    }

    /** Takes what is said of it; its stops are rows of their own. */
    final void describe(PlanDetails details) {
        this.title = details.title();
        this.firstDay = details.days().first();
        this.lastDay = details.days().last().orElse(null);
        this.personId = details.givenTo().ofPerson().orElse(null);
        this.role = details.givenTo().ofRole().orElse(null);
        this.weekdays = null;
        this.everyDays = null;
        if (details.days().cadence() instanceof Cadence.Weekdays weekly) {
            this.cadence = CadenceKind.WEEKDAYS;
            this.weekdays = letters(weekly);
        } else if (details.days().cadence() instanceof Cadence.Every every) {
            this.cadence = CadenceKind.EVERY;
            this.everyDays = every.days();
        }
    }

    PlanFacts facts() {
        GivenTo givenTo = GivenTo.of(personId, role).orElseThrow();
        return new PlanFacts(id, version, title, new DueDays(due(), firstDay, Optional.ofNullable(lastDay)), givenTo);
    }

    private Cadence due() {
        return Optional.ofNullable(everyDays)
                .<Cadence>map(Cadence.Every::new)
                .orElseGet(() -> new Cadence.Weekdays(Arrays.stream(DayOfWeek.values())
                        .filter(day -> String.valueOf(weekdays).contains(letters(day)))
                        .collect(Collectors.toSet())));
    }

    private static String letters(Cadence.Weekdays weekly) {
        return weekly.inOrder().stream().map(RoundPlan::letters).collect(Collectors.joining(" "));
    }

    private static String letters(DayOfWeek day) {
        return day.name().substring(0, LETTERS);
    }
}
