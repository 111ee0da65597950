package dapple.lamp;

import dapple.light.quantity.Quantity;
import java.util.EnumSet;
import java.util.Set;

/** What kind of lamp it is: which cautions belong to it, and what it needs. */
public enum LampClass {
    TUBE_T8,
    TUBE_T5,
    COMPACT_FLUORESCENT,
    MERCURY_VAPOUR,
    METAL_HALIDE,
    TUNGSTEN_HALOGEN,
    CARBON_FILAMENT,
    INFRARED_EMITTER,
    LED_BAR,
    LED_SPOT,
    ULTRAVIOLET_LED;

    private static final Set<LampClass> FLUORESCENT = EnumSet.of(TUBE_T8, TUBE_T5, COMPACT_FLUORESCENT);
    private static final Set<LampClass> ON_A_BALLAST = EnumSet.of(TUBE_T8, TUBE_T5, METAL_HALIDE);
    private static final Set<LampClass> WITH_A_FILAMENT = EnumSet.of(MERCURY_VAPOUR, TUNGSTEN_HALOGEN, CARBON_FILAMENT);
    private static final Set<LampClass> DARK = EnumSet.of(CARBON_FILAMENT, INFRARED_EMITTER, ULTRAVIOLET_LED);
    private static final Set<LampClass> HOT =
            EnumSet.of(MERCURY_VAPOUR, METAL_HALIDE, TUNGSTEN_HALOGEN, CARBON_FILAMENT, INFRARED_EMITTER);

    /** Whether lamps of this class are made to emit ultraviolet, so that its spectrum must be known. */
    public boolean emitsUltraviolet() {
        return holdsMercury() || this == ULTRAVIOLET_LED;
    }

    /** Whether lamps of this class give of a quantity of light, as far as is usual: common practice, no source. */
    public boolean gives(Quantity quantity) {
        return switch (quantity) {
            case UV_INDEX, UVB_IRRADIANCE, UVA -> emitsUltraviolet();
            case ILLUMINANCE -> givesLight();
            case IR_A, IR_B, IRRADIANCE -> givesNearInfrared() || isHot();
            case SURFACE_TEMPERATURE, AIR_TEMPERATURE -> isHot();
        };
    }

    public boolean holdsMercury() {
        return FLUORESCENT.contains(this) || this == MERCURY_VAPOUR || this == METAL_HALIDE;
    }

    /** Whether a filament glows in it, which gives near infrared: common practice, no source. */
    public boolean givesNearInfrared() {
        return WITH_A_FILAMENT.contains(this);
    }

    /** Whether it is there to be seen by: common practice, no source. */
    public boolean givesLight() {
        return !DARK.contains(this);
    }

    /** Whether its ultraviolet, if it gives any, reaches from UVB into UVA: common practice, no source. */
    public boolean givesUvaBesideUvb() {
        return holdsMercury();
    }

    /** Whether it works only on a ballast of its own wattage, which is not in its cap. */
    public boolean needsBallast() {
        return ON_A_BALLAST.contains(this);
    }

    /**
     * What a lamp of this class usually loses of its light in an hour that it burns, as a natural logarithm: 1e-4 of tubes,
     * 5e-4 of compact lamps, 2e-4 of mercury vapour and metal halide, 3e-5 of the others (from memory, unverified; single lamps
     * differ by more than a factor of two).
     */
    public double usualLossPerHour() {
        return switch (this) {
            case TUBE_T8, TUBE_T5 -> 1e-4;
            case COMPACT_FLUORESCENT -> 5e-4;
            case MERCURY_VAPOUR, METAL_HALIDE -> 2e-4;
            case TUNGSTEN_HALOGEN, CARBON_FILAMENT, INFRARED_EMITTER, LED_BAR, LED_SPOT, ULTRAVIOLET_LED -> 3e-5;
        };
    }

    /**
     * How much that differs from lamp to lamp of one class: standard deviation of its natural logarithm (ours, no source:
     * as wide as the lamps by which the search for drifting meters was tried).
     */
    public double lossScatter() {
        return switch (this) {
            case COMPACT_FLUORESCENT -> 1.0;
            case MERCURY_VAPOUR, METAL_HALIDE -> 0.9;
            case TUBE_T8,
                    TUBE_T5,
                    TUNGSTEN_HALOGEN,
                    CARBON_FILAMENT,
                    INFRARED_EMITTER,
                    LED_BAR,
                    LED_SPOT,
                    ULTRAVIOLET_LED -> 0.8;
        };
    }

    /** Whether its surface burns. */
    public boolean isHot() {
        return HOT.contains(this);
    }

    /** Whether it is dangerous without its outer glass. */
    public boolean needsOuterGlass() {
        return this == METAL_HALIDE;
    }
}
