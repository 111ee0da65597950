package dapple.review;

import dapple.light.judging.State;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The enclosures that are looked at.
 *
 * @param standings all enclosures, in walking order
 */
public record ReviewList(List<Standing> standings) {
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

    /** What readings lack to be judged. */
    public Missing missing() {
        return new Missing(
                !standings.isEmpty() && empty() == standings.size(),
                standings.stream().filter(Standing::lacksATarget).count());
    }

    /** Enclosures in which nobody lives. */
    public long empty() {
        return standings.stream().filter(standing -> standing.state().isEmpty()).count();
    }
}
