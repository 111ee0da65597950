package dapple.review;

import dapple.light.judging.State;
import dapple.site.Settings;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Why an enclosure needs somebody, most urgent first: harm before lack, lack before doubt. */
public enum Urgency {
    /** A reading at a reachable point is at or over the ceiling. */
    OVER_CEILING,
    /** An animal under a vet's order is not lit as ordered. */
    ORDER_NOT_KEPT,
    /** A vet's order is in force, and nobody has read since whether the light is as ordered. */
    ORDER_UNREAD,
    NO_SHADE,
    TOO_STRONG,
    /** Too weak for longer than the site bears. */
    WEAK_FOR_LONG,
    NO_TARGET,
    TOO_WEAK,
    /** The interval of a reading reaches over the ceiling. */
    MAY_EXCEED,
    /** The next reading is due, or the last says nothing of today. */
    OVERDUE,
    /** Of no enclosure: a round that was not walked on its day, and nobody has said why. */
    ROUND_OVERDUE,
    BORDERLINE;

    private static final int SHADE_DWELLERS = 1;

    /** How urgent an enclosure is; empty if it needs nobody. */
    static Optional<Urgency> of(Standing standing, Settings settings, Instant now) {
        if (standing.state().isEmpty() || standing.plannedOff().isPresent()) {
            return Optional.empty();
        }
        State state = standing.state().get();
        if (state != State.OVER_CEILING && standing.breaksAnOrder()) {
            return Optional.of(ORDER_NOT_KEPT);
        }
        return Optional.ofNullable(
                switch (state) {
                    case OVER_CEILING -> OVER_CEILING;
                    case NO_SHADE -> NO_SHADE;
                    case TOO_STRONG -> TOO_STRONG;
                    case TOO_WEAK -> isWeakForLong(standing, settings, now) ? WEAK_FOR_LONG : TOO_WEAK;
                    case NO_TARGET -> NO_TARGET;
                    case STALE -> standing.isUnderUnreadOrder() ? ORDER_UNREAD : OVERDUE;
                    case BORDERLINE -> standing.mayExceed() ? MAY_EXCEED : BORDERLINE;
                    case ON_TARGET, PLANNED_OFF -> calm(standing, settings, now);
                });
    }

    private static @Nullable Urgency calm(Standing standing, Settings settings, Instant now) {
        if (standing.mayExceed()) {
            return MAY_EXCEED;
        }
        return standing.isOverdue(settings, now) ? OVERDUE : null;
    }

    private static boolean isWeakForLong(Standing standing, Settings settings, Instant now) {
        boolean shadeDwellers = standing.deciding()
                .flatMap(Standing.AtPoint::zone)
                .filter(zone -> zone.number() == SHADE_DWELLERS)
                .isPresent();
        Duration borne = Duration.ofDays(shadeDwellers ? settings.weakAfterDaysInZone1() : settings.weakAfterDays());
        return standing.deciding()
                .flatMap(Standing.AtPoint::since)
                .filter(since -> since.plus(borne).isBefore(now))
                .isPresent();
    }
}
