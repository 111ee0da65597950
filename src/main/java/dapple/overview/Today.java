package dapple.overview;

import dapple.light.judging.State;
import dapple.review.ReviewList;
import dapple.review.Standing;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * A day's work at a site.
 *
 * @param act enclosures where light does harm or is off target, worst first
 * @param read enclosures whose weekly reading is overdue, longest first
 * @param later the other lit enclosures, in walking order
 * @param off enclosures whose lamps are off on purpose
 */
record Today(List<Standing> act, List<Standing> read, List<Standing> later, List<Standing> off, ReviewList review) {
    /** Age from which a weekly reading is overdue: 9 days (common practice, no source). */
    static final Duration OVERDUE_AFTER = Duration.ofDays(9);

    private static final Comparator<Standing> LONGEST_UNREAD_FIRST =
            Comparator.comparing(standing -> standing.readSince().orElse(Instant.MIN));

    static Today of(List<Standing> standings, Instant now) {
        ReviewList review = new ReviewList(standings);
        List<Standing> act = review.findings().stream().filter(Today::isOff).toList();
        List<Standing> lit = standings.stream()
                .filter(standing ->
                        standing.state().isPresent() && standing.plannedOff().isEmpty())
                .filter(standing -> !act.contains(standing))
                .toList();
        List<Standing> overdue = lit.stream()
                .filter(standing -> isOverdue(standing, now))
                .sorted(LONGEST_UNREAD_FIRST)
                .toList();
        List<Standing> later =
                lit.stream().filter(standing -> !overdue.contains(standing)).toList();
        List<Standing> off = standings.stream()
                .filter(standing -> standing.plannedOff().isPresent())
                .toList();
        return new Today(act, overdue, later, off, review);
    }

    private static boolean isOff(Standing standing) {
        return standing.state().filter(state -> state.isGraverThan(State.STALE)).isPresent();
    }

    private static boolean isOverdue(Standing standing, Instant now) {
        return standing.readSince()
                .map(since -> since.plus(OVERDUE_AFTER).isBefore(now))
                .orElse(true);
    }
}
