package dapple.light.design;

import java.util.Optional;

/**
 * A demand that binds: with it no rig was found.
 *
 * @param why what it lacks
 * @param missingFactor the least factor by which it is missed while every other demand is met; empty where no lamp gives
 *     any of its quantity
 * @param rig the rig that misses it by that factor; empty likewise
 */
public record Binding(Demand demand, Why why, Optional<Double> missingFactor, Optional<PlannedRig> rig) {
    public enum Why {
        /** No lamp gives any of the quantity, as far as is known. */
        NO_LAMP_GIVES_IT,
        /** Lamps give it, and none of it arrives from where they may hang. */
        NONE_ARRIVES,
        /** With all else met it stays below the band. */
        TOO_LITTLE,
        /** With all else met it stays above the band. */
        TOO_MUCH
    }
}
