package dapple.lamp;

import dapple.light.quantity.Check;
import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.List;

/**
 * What a sensor gives at a distance along the lamp's aim, facing back, without cover.
 *
 * @param reading above 0, in the unit of the quantity
 * @param distanceMetres from the middle of what emits, 0.01 to 20
 * @param relativeUncertainty standard uncertainty over the reading, 0.001 to 2
 * @param source who says so, in words
 */
@Embeddable
public record LampOutput(
        @Enumerated(EnumType.STRING) Quantity quantity,
        double reading,
        double distanceMetres,
        double relativeUncertainty,
        @Enumerated(EnumType.STRING) SourceMark mark,
        String source) {

    /** What lamps give: light, not the warmth that comes of it. */
    public static final List<Quantity> QUANTITIES = List.of(
            Quantity.UV_INDEX, Quantity.ILLUMINANCE, Quantity.UVA, Quantity.IR_A, Quantity.IR_B, Quantity.IRRADIANCE);

    public LampOutput {
        Check.within("reading", reading, Double.MIN_NORMAL, 999_999_999, quantity.unit());
        Check.within("distance", distanceMetres, 0.01, 20, "m");
        Check.within("relative uncertainty", relativeUncertainty, 0.001, 2, "");
    }
}
