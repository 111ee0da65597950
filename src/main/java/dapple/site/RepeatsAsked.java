package dapple.site;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;

/** At which points a site asks for three readings one after the other. */
public enum RepeatsAsked {
    NOWHERE,
    /** At basking points. */
    BASKING,
    EVERYWHERE;

    /** Never of a temperature: a share of degrees Celsius means nothing. */
    public boolean at(PointRole role, Quantity quantity) {
        return !quantity.isTemperature() && (this == EVERYWHERE || (this == BASKING && role == PointRole.BASKING));
    }
}
