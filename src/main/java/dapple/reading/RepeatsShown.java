package dapple.reading;

import dapple.light.metrology.Repeats;
import java.util.List;

/**
 * How far the repeats at a step are, as the page shows it: never an amount.
 *
 * @param asked whether three are asked for there
 * @param before what was typed, to be sent again with the next
 */
record RepeatsShown(boolean asked, List<String> before) {
    RepeatsShown {
        before = List.copyOf(before);
    }

    /** Which of three is next, from 1. */
    public int number() {
        return before.size() % Repeats.ASKED + 1;
    }

    public int of() {
        return Repeats.ASKED;
    }

    /** Whether the first three were too far apart. */
    public boolean isAllAgain() {
        return before.size() >= Repeats.ASKED;
    }
}
