package dapple.commissioning;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.Optional;

/**
 * A lamp that readings at all points would not tell apart from the others.
 *
 * @param where a reading would tell, with the share that it gives there; empty if it gives the most nowhere
 */
public record Untold(Quantity quantity, String lamp, Optional<Place> where) {
    /**
     * A place in the enclosure.
     *
     * @param share of all light there that the lamp gives, 0 to 1
     */
    public record Place(Vec at, double share) {}
}
