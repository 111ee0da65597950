package dapple.meter;

import java.util.Optional;

/**
 * What is said of a meter besides its quantity, which it keeps.
 *
 * @param resolution smallest step of its display, in the unit of the quantity
 * @param loan none: the site owns it
 */
public record MeterChange(
        String code,
        String description,
        double resolution,
        Optional<MeterRange> range,
        Optional<StatedUncertainty> stated,
        Optional<Loan> loan,
        String note) {
    static MeterChange of(String code, String description, double resolution) {
        return new MeterChange(code, description, resolution, Optional.empty(), Optional.empty(), Optional.empty(), "");
    }
}
