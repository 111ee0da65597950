package dapple.light.design;

import dapple.light.field.Receiver;

/**
 * What a rig gives of a demand, at the receiver where it is met worst.
 *
 * @param amount as the engine says, in the unit of the quantity
 * @param missingFactor by what factor the amount is too low or too high; 1 where the demand is met
 * @param loss 0 well inside the band, 1 at its edge and beyond
 */
public record Fulfilment(
        Demand demand, Receiver worst, double amount, boolean isMet, double missingFactor, double loss) {
    static Fulfilment of(Demand demand, Receiver receiver, double amount) {
        return new Fulfilment(
                demand, receiver, amount, demand.isMetBy(amount), demand.missingFactor(amount), demand.loss(amount));
    }

    /** Of two receivers the one where the same demand is met worse. */
    Fulfilment worse(Fulfilment other) {
        if (isMet != other.isMet) {
            return isMet ? other : this;
        }
        if (missingFactor != other.missingFactor) {
            return missingFactor > other.missingFactor ? this : other;
        }
        return demand.strain(other.amount) > demand.strain(amount) ? other : this;
    }
}
