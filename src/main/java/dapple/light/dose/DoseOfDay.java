package dapple.light.dose;

import java.util.Optional;

/** The dose of a day, or why there is none to give. */
public sealed interface DoseOfDay {
    /** The dose, where it is known. */
    Optional<DoseRange> known();

    /** Both together: unknown where one is. */
    DoseOfDay plus(DoseOfDay other);

    record Known(DoseRange range) implements DoseOfDay {
        @Override
        public Optional<DoseRange> known() {
            return Optional.of(range);
        }

        @Override
        public DoseOfDay plus(DoseOfDay other) {
            return other.known()
                    .<DoseOfDay>map(more -> new Known(range.plus(more)))
                    .orElse(other);
        }
    }

    record Unknown(Missing missing) implements DoseOfDay {
        @Override
        public Optional<DoseRange> known() {
            return Optional.empty();
        }

        @Override
        public DoseOfDay plus(DoseOfDay other) {
            return this;
        }
    }

    /** What a dose cannot be computed without. */
    enum Missing {
        STAY,
        TIMER,
        BASKING_INDEX,
        SHADE_INDEX
    }
}
