package dapple.review;

import dapple.light.judging.State;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The enclosures of a site sorted by what they need: those that need somebody first by harm, then by age.
 *
 * @param standings all enclosures, in walking order
 */
public record ReviewList(List<Standing> standings) {
    private static final Comparator<Standing> HARM_THEN_AGE = Comparator.comparing(
                    (Standing standing) -> standing.state().orElse(State.ON_TARGET))
            .thenComparing(ReviewList::mayExceed, Comparator.reverseOrder())
            .thenComparing(standing ->
                    standing.deciding().flatMap(Standing.AtPoint::since).orElse(Instant.MIN));

    private static boolean mayExceed(Standing standing) {
        return standing.deciding().filter(Standing.AtPoint::mayExceed).isPresent();
    }

    /** One entry for each enclosure that is off target, borderline, stale or without target. */
    public List<Standing> findings() {
        return standings.stream()
                .filter(Standing::needsSomebody)
                .sorted(HARM_THEN_AGE)
                .toList();
    }

    /** Rooms in walking order, each with its enclosures. */
    public Map<String, List<Standing>> byRoom() {
        return standings.stream()
                .collect(Collectors.groupingBy(
                        standing -> standing.enclosure().room(), LinkedHashMap::new, Collectors.toList()));
    }

    /** How many enclosures are in each state that occurs, gravest first. */
    public Map<State, Long> tally() {
        Map<State, Long> counts = new LinkedHashMap<>();
        Stream.of(State.values()).forEach(state -> counts.put(state, count(state)));
        counts.values().removeIf(count -> count == 0);
        return counts;
    }

    private long count(State state) {
        return standings.stream()
                .filter(standing -> standing.state().filter(state::equals).isPresent())
                .count();
    }

    /** Enclosures in which nobody lives. */
    public long empty() {
        return standings.stream().filter(standing -> standing.state().isEmpty()).count();
    }
}
