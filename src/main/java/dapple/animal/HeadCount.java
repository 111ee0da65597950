package dapple.animal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How many animals a record holds over time, from what happened, in whatever order it was entered: each step adds or
 * takes away, a recount sets the count. Of steps at one instant the one entered first comes first.
 *
 * @param before the count before all steps
 * @param steps in the order of time
 */
record HeadCount(int before, List<Step> steps) {
    HeadCount {
        steps = steps.stream().sorted(Comparator.comparing(Step::at)).toList();
    }

    HeadCount with(Step step) {
        List<Step> more = new ArrayList<>(steps);
        more.add(step);
        return new HeadCount(before, more);
    }

    int at(Instant instant) {
        int count = before;
        for (Step step : steps) {
            if (step.at().isAfter(instant)) {
                return count;
            }
            count = step.appliedTo(count);
        }
        return count;
    }

    /** Each count with the instant from which it held, the newest first; the last of those at one instant. */
    List<Counted> course() {
        List<Counted> course = new ArrayList<>();
        if (before > 0) {
            course.add(new Counted(Optional.empty(), before));
        }
        for (Step step : steps) {
            Counted next = new Counted(Optional.of(step.at()), at(step.at()));
            if (course.isEmpty() || course.get(0).count() != next.count()) {
                course.removeIf(one -> one.from().equals(next.from()));
                course.add(0, next);
            }
        }
        return course;
    }

    int last() {
        return at(Instant.MAX);
    }

    /**
     * Whether such a count can be: never below 0; without animals only after what can end a record, until what can
     * begin one.
     */
    boolean isPossible() {
        int count = before;
        for (Step step : steps) {
            if (count == 0 && !step.kind().mayBegin()) {
                return false;
            }
            count = step.appliedTo(count);
            if (count < 0 || (count == 0 && !step.kind().mayEnd())) {
                return false;
            }
        }
        return true;
    }

    /** @param number the count at a recount, else how many more or fewer */
    record Step(Happening kind, Instant at, int number) {
        int appliedTo(int count) {
            return kind == Happening.RECOUNT ? number : count + number;
        }
    }
}
