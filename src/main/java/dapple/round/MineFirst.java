package dapple.round;

import dapple.people.SignedIn;
import java.util.Comparator;
import java.util.List;

/**
 * Rounds as one person sees them: overdue ones first, then those that wait, then the rest.
 *
 * @param mine given to who asks, or to one of their roles
 */
public record MineFirst(List<PlanNow> mine, List<PlanNow> others) {
    private static final Comparator<PlanNow> WAITING_FIRST = Comparator.comparing(PlanNow::isOverdue)
            .thenComparing(PlanNow::isOpen)
            .reversed()
            .thenComparing(now -> now.plan().title());

    public static MineFirst of(List<PlanNow> all, SignedIn me) {
        List<PlanNow> sorted = all.stream().sorted(WAITING_FIRST).toList();
        return new MineFirst(
                sorted.stream().filter(now -> now.givenTo().isFor(me)).toList(),
                sorted.stream().filter(now -> !now.givenTo().isFor(me)).toList());
    }

    public boolean isEmpty() {
        return mine.isEmpty() && others.isEmpty();
    }
}
