package dapple.round;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.Set;

/** How often a round is due. */
public sealed interface Cadence {
    /** Whether a round that began on a day is due on another. */
    boolean isDue(LocalDate first, LocalDate day);

    /** Among so many days in a row there is one on which a round is due that has begun and not ended. */
    int span();

    default boolean isWeekly() {
        return this instanceof Weekdays;
    }

    /** On some days of the week; at least one. */
    record Weekdays(Set<DayOfWeek> days) implements Cadence {
        public Weekdays {
            if (days.isEmpty()) {
                throw new IllegalArgumentException("a round is due on one day of the week at least");
            }
            days = Set.copyOf(days);
        }

        @Override
        public boolean isDue(LocalDate first, LocalDate day) {
            return days.contains(day.getDayOfWeek());
        }

        @Override
        public int span() {
            return DayOfWeek.values().length;
        }

        /** From Monday to Sunday. */
        public Set<DayOfWeek> inOrder() {
            return EnumSet.copyOf(days);
        }
    }

    /** Every so many days, counted from the first day. */
    record Every(int days) implements Cadence {
        static final int MOST = 366;

        public Every {
            if (!(days >= 1 && days <= MOST)) {
                throw new IllegalArgumentException("days between walks must be 1 to 366, was " + days);
            }
        }

        @Override
        public boolean isDue(LocalDate first, LocalDate day) {
            return first.until(day, ChronoUnit.DAYS) % days == 0;
        }

        @Override
        public int span() {
            return days;
        }
    }
}
