package dapple.light.design;

import java.util.List;
import java.util.Optional;

/** At what heights a lamp gives what is wanted. */
public sealed interface HeightAnswer {
    /**
     * All heights that were found, lowest first, at least one; two of them may lie closer than the steps only where the
     * light turns between.
     */
    record Met(List<AmountAtHeight> heights) implements HeightAnswer {
        public Met {
            heights = List.copyOf(heights);
        }
    }

    /**
     * No height has it.
     *
     * @param least the least that was found, and where
     * @param most the most that was found, and where
     * @param leapAtMetres where the light leaps over what is wanted, as at the plane of a cover; empty if it lies below the
     *     least or above the most
     */
    record OutOfReach(AmountAtHeight least, AmountAtHeight most, Optional<Double> leapAtMetres)
            implements HeightAnswer {}

    /** At every height the lamp would hang in a solid or on the receiver. */
    record NowhereToHang() implements HeightAnswer {}
}
