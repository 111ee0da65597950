package dapple.order;

import dapple.animal.AnimalFacts;
import dapple.light.judging.Limits;
import java.util.Optional;

/**
 * What an animal needs of the UV index.
 *
 * @param limits none: no target yet, and no order
 * @param byOrder whether a vet's order says so, instead of the species' target alone
 */
public record Needs(AnimalFacts animal, Optional<Limits> limits, boolean byOrder) {

    /** Whether no basking place could suit both: their basking ranges do not overlap. */
    public boolean conflictsWith(Needs other) {
        return limits.isPresent() && other.limits.isPresent() && areApart(limits.get(), other.limits.get());
    }

    private static boolean areApart(Limits one, Limits other) {
        return one.basking().high() < other.basking().low()
                || other.basking().high() < one.basking().low();
    }
}
