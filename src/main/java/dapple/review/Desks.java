package dapple.review;

import dapple.site.Settings;
import dapple.site.Sites;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
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
    private final Sites sites;
    private final Clock clock;

    Desks(Standings standings, Deciding deciding, Sites sites, Clock clock) {
        this.standings = standings;
        this.deciding = deciding;
        this.sites = sites;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public Desk at(long siteId, ZoneId zone, Filter filter) {
        Instant now = clock.instant();
        Settings settings = sites.settings(siteId);
        List<Standing> all = standings.at(siteId, settings);
        Map<Long, List<DecisionFacts>> decisions = deciding.since(siteId, earliest(all, now));
        List<Finding> findings = all.stream()
                .flatMap(standing -> finding(standing, settings, now, decisions).stream())
                .toList();
        return Desk.of(all, findings, filter, settings, LocalDate.ofInstant(now, zone));
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
    public Found found(long siteId, long enclosureId) {
        Standing standing = standings.of(siteId, enclosureId).standing();
        Map<Long, List<DecisionFacts>> decisions = Map.of(enclosureId, deciding.of(siteId, enclosureId));
        return new Found(standing, finding(standing, sites.settings(siteId), clock.instant(), decisions));
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
