package dapple.exposure;

import dapple.target.Target;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A version of a target over the days of a period on which it was in force; the day on which it came into force counts for it. */
public record TargetHeld(Target target, Period days) {
    /** Oldest first. */
    static List<TargetHeld> in(Period period, List<Target> newestFirst, ZoneId zone) {
        List<TargetHeld> held = new ArrayList<>();
        LocalDate last = period.to();
        for (Target target : newestFirst) {
            LocalDate begun = LocalDate.ofInstant(target.inForceFrom(), zone);
            LocalDate first = begun.isBefore(period.from()) ? period.from() : begun;
            if (!first.isAfter(last)) {
                held.add(new TargetHeld(target, new Period(first, last)));
                last = first.minusDays(1);
            }
            if (last.isBefore(period.from())) {
                break;
            }
        }
        Collections.reverse(held);
        return held;
    }
}
