package dapple.light.metrology;

import dapple.light.quantity.Check;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Amounts of one point as they are typed one after the other: three, and once more three where the first are too far
 * apart. All are kept; the newest whole three count.
 *
 * @param amounts 1 to 6, each at least 0, in the unit of the reading
 */
public record RepeatsTaken(List<Double> amounts) {
    /** All three are asked for again once and no more: a lamp that flickers must not hold up a walk (ours). */
    public static final int MOST = 2 * Repeats.ASKED;

    public RepeatsTaken {
        amounts = List.copyOf(amounts);
        Check.within("number of amounts", amounts.size(), 1, MOST, "");
        amounts.forEach(amount -> Check.notNegative("amount", amount, ""));
    }

    /** What is asked of who reads. */
    public enum Next {
        ANOTHER,
        /** The first three are too far apart. */
        ALL_AGAIN,
        ENOUGH
    }

    /**
     * What to ask for after the last amount.
     *
     * @param resolution step of the display, at least 0, in the unit of the amounts
     */
    public Next next(double resolution) {
        if (amounts.size() % Repeats.ASKED != 0) {
            return Next.ANOTHER;
        }
        boolean again = amounts.size() == Repeats.ASKED && sets().get(0).asksAgain(resolution);
        return again ? Next.ALL_AGAIN : Next.ENOUGH;
    }

    /** By threes in the order of typing; the last may be short. */
    public List<Repeats> sets() {
        return IntStream.iterate(0, from -> from < amounts.size(), from -> from + Repeats.ASKED)
                .mapToObj(from -> amounts.subList(from, Math.min(from + Repeats.ASKED, amounts.size())))
                .map(Repeats::new)
                .toList();
    }

    /** The newest whole three. */
    public Optional<Repeats> counting() {
        return sets().stream().filter(Repeats::isComplete).reduce((earlier, later) -> later);
    }

    /** The median of the three that count; of fewer than three the last, as one that was not repeated. */
    public double amount() {
        return counting().map(Repeats::median).orElseGet(this::last);
    }

    /** What was typed last. */
    public double last() {
        return amounts.get(amounts.size() - 1);
    }
}
