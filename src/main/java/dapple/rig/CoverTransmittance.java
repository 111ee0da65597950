package dapple.rig;

import dapple.light.quantity.Check;

/**
 * How much of a quantity one layer of a cover lets through.
 *
 * @param share 0 to 1
 */
public record CoverTransmittance(double share, Provenance provenance) {
    public CoverTransmittance {
        Check.within("transmittance", share, 0, 1, "");
    }
}
