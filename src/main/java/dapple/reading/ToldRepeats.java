package dapple.reading;

import dapple.light.metrology.Repeats;
import dapple.light.metrology.RepeatsTaken;
import java.util.List;
import java.util.stream.IntStream;

/** Up to three amounts that were read one after the other, and what they are to their reading. */
record ToldRepeats(List<Double> amounts, Fate fate) {
    ToldRepeats {
        amounts = List.copyOf(amounts);
    }

    /** By the names of the messages. */
    enum Fate {
        /** Their middle one is the reading. */
        MEDIAN,
        /** The same, though they are too far apart. */
        STILL_APART,
        /** Too far apart, and read again. */
        FIRST,
        /** The last was over the ceiling and is the reading. */
        STOPPED,
        /** Fewer than three. */
        SHORT
    }

    /**
     * All of a reading, in the order of typing.
     *
     * @param amount of the reading
     * @param resolution step of the meter's display
     */
    static List<ToldRepeats> of(RepeatsTaken taken, double amount, double resolution) {
        List<Repeats> sets = taken.sets();
        return IntStream.range(0, sets.size())
                .mapToObj(at -> {
                    Repeats three = sets.get(at);
                    boolean last = at == sets.size() - 1;
                    return new ToldRepeats(three.amounts(), last ? fate(three, amount, resolution) : Fate.FIRST);
                })
                .toList();
    }

    private static Fate fate(Repeats three, double amount, double resolution) {
        if (!three.isComplete()) {
            return Fate.SHORT;
        }
        if (three.median() != amount) {
            return Fate.STOPPED;
        }
        return three.asksAgain(resolution) ? Fate.STILL_APART : Fate.MEDIAN;
    }
}
