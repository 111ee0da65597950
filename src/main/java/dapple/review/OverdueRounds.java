package dapple.review;

import dapple.round.PlanNow;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Rounds that were not walked on their day, longest overdue first. */
record OverdueRounds(List<PlanNow> rounds) {
    static OverdueRounds of(List<PlanNow> all) {
        return new OverdueRounds(all.stream()
                .filter(PlanNow::isOverdue)
                .sorted(Comparator.comparing(now -> now.walk().orElseThrow().dueOn()))
                .toList());
    }

    /** Those that a filter covers: by a room through which they lead, or the person to whom they are given. */
    OverdueRounds only(Filter filter) {
        return new OverdueRounds(rounds.stream().filter(filter::covers).toList());
    }

    /** The people to whom they are given, by id. */
    Map<Long, String> names() {
        Map<Long, String> names = new HashMap<>();
        rounds.forEach(now ->
                now.givenTo().ofPerson().ifPresent(person -> now.name().ifPresent(name -> names.put(person, name))));
        return names;
    }
}
