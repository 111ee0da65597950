package dapple.overview;

import dapple.light.judging.State;
import dapple.review.Desk;
import dapple.review.Finding;
import dapple.review.Missing;
import dapple.review.Standing;
import dapple.rig.RigChangeFacts;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A day's work at a site.
 *
 * @param mine findings that were given to who asks, most urgent first
 * @param again findings that a second reading was asked for
 * @param act findings where light does harm or is off target, most urgent first
 * @param changed enclosures whose rig has not been read as it is now, changed longest ago first
 * @param read enclosures whose weekly reading is overdue, longest first
 * @param later the other lit enclosures, in walking order
 * @param off enclosures whose lamps are off on purpose
 * @param enclosures how many there are
 * @param missing what readings lack to be judged
 * @param isBeginning whether nothing was ever read at the points of the enclosures
 */
record Today(
        List<Finding> mine,
        List<Finding> again,
        List<Standing> act,
        List<Changed> changed,
        List<Standing> read,
        List<Standing> later,
        List<Standing> off,
        int enclosures,
        Missing missing,
        boolean isBeginning) {
    private static final Comparator<Standing> LONGEST_UNREAD_FIRST =
            Comparator.comparing(standing -> standing.readSince().orElse(Instant.MIN));

    /** An enclosure that has not been read at all of its points since its rig was changed. */
    record Changed(Standing standing, RigChangeFacts change) {}

    static Today of(Desk desk, Map<Long, RigChangeFacts> changes, long personId, Instant now) {
        List<Standing> standings = desk.review().standings();
        List<Standing> act =
                desk.open().stream().map(Finding::standing).filter(Today::isOff).toList();
        List<Changed> changed = standings.stream()
                .flatMap(standing -> changed(standing, changes).stream())
                .sorted(Comparator.comparing(one -> one.change().at()))
                .toList();
        List<Standing> lit = standings.stream()
                .filter(Today::isLit)
                .filter(standing ->
                        !act.contains(standing) && changed(standing, changes).isEmpty())
                .toList();
        List<Standing> overdue = lit.stream()
                .filter(standing -> standing.isOverdue(desk.settings(), now))
                .sorted(LONGEST_UNREAD_FIRST)
                .toList();
        return new Today(
                desk.open().stream()
                        .filter(finding -> isGivenTo(finding, personId))
                        .toList(),
                desk.open().stream()
                        .filter(finding -> finding.secondReading().isPresent())
                        .toList(),
                act,
                changed,
                overdue,
                lit.stream().filter(standing -> !overdue.contains(standing)).toList(),
                standings.stream()
                        .filter(standing -> standing.plannedOff().isPresent())
                        .toList(),
                standings.size(),
                desk.review().missing(),
                standings.stream()
                        .flatMap(standing -> standing.points().stream())
                        .allMatch(at -> at.view().isEmpty()));
    }

    private static Optional<Changed> changed(Standing standing, Map<Long, RigChangeFacts> changes) {
        return Optional.ofNullable(changes.get(standing.enclosure().id()))
                .filter(change -> standing.isUnreadSince(change.at()))
                .map(change -> new Changed(standing, change));
    }

    private static boolean isGivenTo(Finding finding, long personId) {
        return finding.given().flatMap(decision -> decision.givenTo()).equals(Optional.of(personId));
    }

    private static boolean isLit(Standing standing) {
        return standing.state().isPresent() && standing.plannedOff().isEmpty();
    }

    private static boolean isOff(Standing standing) {
        return standing.state().filter(state -> state.isGraverThan(State.STALE)).isPresent();
    }
}
