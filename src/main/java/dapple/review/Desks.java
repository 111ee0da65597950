package dapple.review;

import dapple.people.SignedIn;
import dapple.site.Settings;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Puts the findings of a site on the desk of who reviews them. */
@Service
public class Desks {
    private static final Duration LONGEST = Duration.ofDays(366);

    private final Standings standings;
    private final Deciding deciding;
    private final Clock clock;

    Desks(Standings standings, Deciding deciding, Clock clock) {
        this.standings = standings;
        this.deciding = deciding;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public Desk at(SignedIn me, Filter filter) {
        Instant now = clock.instant();
        Settings settings = me.settings();
        List<Standing> all = standings.at(me.siteId(), settings);
        Decided decided = deciding.since(me.siteId(), earliest(all, now));
        List<Finding> findings = all.stream()
                .flatMap(standing -> finding(standing, settings, now, decided.byEnclosure()).stream())
                .toList();
        Desk whole = Desk.of(all, findings, settings, decided.names());
        return whole.only(filter, LocalDate.ofInstant(now, me.zone()));
    }

    /** When the oldest finding began, so that the record of older decisions is not read; at most a year ago. */
    private static Instant earliest(List<Standing> all, Instant now) {
        Instant yearAgo = now.minus(LONGEST);
        return all.stream()
                .map(standing ->
                        standing.deciding().flatMap(Standing.AtPoint::since).orElse(yearAgo))
                .min(Comparator.naturalOrder())
                .filter(since -> since.isAfter(yearAgo))
                .orElse(yearAgo);
    }

    /** How one enclosure stands, and the finding about it. */
    @Transactional(readOnly = true)
    public Found found(SignedIn me, long enclosureId) {
        Standing standing =
                standings.of(me.siteId(), enclosureId, me.settings()).standing();
        Map<Long, List<DecisionFacts>> decisions = Map.of(enclosureId, deciding.of(me.siteId(), enclosureId));
        return new Found(standing, finding(standing, me.settings(), clock.instant(), decisions));
    }

    private static Optional<Finding> finding(
            Standing standing, Settings settings, Instant now, Map<Long, List<DecisionFacts>> decisions) {
        return Urgency.of(standing, settings, now)
                .map(urgency -> Finding.of(
                        standing,
                        urgency,
                        decisions.getOrDefault(standing.enclosure().id(), List.of())));
    }
}
