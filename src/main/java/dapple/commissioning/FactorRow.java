package dapple.commissioning;

import dapple.light.calibration.FittedRig.Factor;
import dapple.light.calibration.FittedRig.Part;
import dapple.light.quantity.Quantity;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;

/**
 * What one part of a rig gave over what was stated of it.
 *
 * @param kept whether it counts from then on
 */
@Embeddable
public record FactorRow(
        @Enumerated(EnumType.STRING) Quantity quantity,
        @Enumerated(EnumType.STRING) Part part,
        String name,
        double factor,
        double low,
        double high,
        boolean kept) {
    static FactorRow of(Quantity quantity, Part part, Factor found, boolean kept) {
        return new FactorRow(
                quantity,
                part,
                found.name(),
                found.value(),
                found.interval().low(),
                found.interval().high(),
                kept);
    }
}
