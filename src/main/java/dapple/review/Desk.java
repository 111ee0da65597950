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
 * @param names of those to whom something was given, by id
 */
public record Desk(
        ReviewList review,
        List<Finding> open,
        List<Finding> accepted,
        Filter filter,
        Settings settings,
        Map<Long, String> names) {
    private static final Comparator<Finding> BY_HARM = Comparator.comparing(Finding::urgency)
            .thenComparing(finding -> finding.standing().mayExceed(), Comparator.reverseOrder())
            .thenComparing(finding -> finding.standing()
                    .deciding()
                    .flatMap(Standing.AtPoint::since)
                    .orElse(Instant.MIN));

    /** The whole site; sorted, and parted by what has been accepted, by {@link #only}. */
    static Desk of(List<Standing> standings, List<Finding> findings, Settings settings, Map<Long, String> names) {
        return new Desk(new ReviewList(standings), findings, List.of(), Filter.NONE, settings, names);
    }

    /** The same of the enclosures that a filter covers. */
    Desk only(Filter restricted, LocalDate today) {
        List<Finding> looked = Stream.concat(open.stream(), accepted.stream())
                .filter(finding -> restricted.covers(finding.standing()) && restricted.covers(finding))
                .sorted(BY_HARM)
                .toList();
        boolean byFinding = restricted.kind() != null || restricted.person() != null;
        Set<Long> found = looked.stream()
                .map(finding -> finding.standing().enclosure().id())
                .collect(Collectors.toSet());
        List<Standing> enclosures = review.standings().stream()
                .filter(restricted::covers)
                .filter(standing ->
                        !byFinding || found.contains(standing.enclosure().id()))
                .toList();
        Predicate<Finding> isAccepted = finding -> finding.acceptance(today).isPresent();
        return new Desk(
                new ReviewList(enclosures),
                looked.stream().filter(isAccepted.negate()).toList(),
                looked.stream().filter(isAccepted).toList(),
                restricted,
                settings,
                names);
    }

    /** What is more urgent than a round that is overdue. */
    public List<Finding> urgent() {
        return open.stream()
                .filter(finding -> finding.urgency().compareTo(Urgency.ROUND_OVERDUE) < 0)
                .toList();
    }

    /** What is less urgent than that. */
    public List<Finding> lesser() {
        return open.stream()
                .filter(finding -> finding.urgency().compareTo(Urgency.ROUND_OVERDUE) > 0)
                .toList();
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
