package dapple.light.dose;

import dapple.light.judging.MeasuredAmount;
import dapple.light.quantity.Check;
import java.time.LocalDate;
import java.util.Optional;

/** The UV index at a place on one day, and how it is known. */
public sealed interface UvIndexOfDay {
    /** The UV index, where it is known. */
    Optional<MeasuredAmount> index();

    /**
     * Measured that day.
     *
     * @param median of the day's readings, with the interval of the reading in the middle; between two, the mean of both
     * @param readings how many, at least 1
     */
    record Measured(MeasuredAmount median, int readings) implements UvIndexOfDay {
        public Measured {
            Check.within("readings of a day", readings, 1, Integer.MAX_VALUE, "");
        }

        @Override
        public Optional<MeasuredAmount> index() {
            return Optional.of(median);
        }
    }

    /** On the straight line from the reading before to the reading after, amount and ends of the interval alike. */
    record Carried(MeasuredAmount between, LocalDate before, LocalDate after) implements UvIndexOfDay {
        @Override
        public Optional<MeasuredAmount> index() {
            return Optional.of(between);
        }
    }

    /** Neither read that day nor between two readings that are near enough. */
    record Unknown() implements UvIndexOfDay {
        @Override
        public Optional<MeasuredAmount> index() {
            return Optional.empty();
        }
    }
}
