package dapple.review;

import dapple.site.Settings;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a supervisor has before them: the enclosures of a site, or those that a filter covers, and the findings among
 * them, most urgent and oldest first.
 *
 * @param review the enclosures that are looked at
 * @param open findings that wait for somebody
 * @param accepted findings that stand for a while, with a reason
 * @param settings of the site, by which the findings were made
 */
public record Desk(ReviewList review, List<Finding> open, List<Finding> accepted, Filter filter, Settings settings) {
    private static final Comparator<Finding> BY_HARM = Comparator.comparing(Finding::urgency)
            .thenComparing(finding -> finding.standing().mayExceed(), Comparator.reverseOrder())
            .thenComparing(finding -> finding.standing()
                    .deciding()
                    .flatMap(Standing.AtPoint::since)
                    .orElse(Instant.MIN));

    static Desk of(
            List<Standing> standings, List<Finding> findings, Filter filter, Settings settings, LocalDate today) {
        List<Finding> looked = findings.stream()
                .filter(finding -> filter.covers(finding.standing()) && filter.covers(finding))
                .sorted(BY_HARM)
                .toList();
        boolean byFinding = filter.kind() != null || filter.person() != null;
        Set<Long> found = looked.stream()
                .map(finding -> finding.standing().enclosure().id())
                .collect(Collectors.toSet());
        List<Standing> enclosures = standings.stream()
                .filter(filter::covers)
                .filter(standing ->
                        !byFinding || found.contains(standing.enclosure().id()))
                .toList();
        Predicate<Finding> accepted = finding -> finding.acceptance(today).isPresent();
        return new Desk(
                new ReviewList(enclosures),
                looked.stream().filter(accepted.negate()).toList(),
                looked.stream().filter(accepted).toList(),
                filter,
                settings);
    }

    /** The same of fewer enclosures. */
    Desk only(Filter restricted, LocalDate today) {
        List<Finding> findings = Stream.concat(open.stream(), accepted.stream()).toList();
        return restricted.isSet() ? of(review.standings(), findings, restricted, settings, today) : this;
    }

    /** Enclosures that need nobody: with those open and those accepted they are all that are looked at. */
    public int calm() {
        return review.standings().size() - open.size() - accepted.size();
    }

    /** How many open findings there are of each kind that occurs, most urgent first. */
    public Map<Urgency, Long> kinds() {
        return open.stream()
                .collect(Collectors.groupingBy(
                        Finding::urgency, () -> new EnumMap<>(Urgency.class), Collectors.counting()));
    }
}
