package dapple.light.filament;

import dapple.light.quantity.Check;

/**
 * A tungsten lamp at another voltage than its own: light x^3.4, power x^1.6, colour temperature x^0.42, from memory of the
 * illuminating engineers' handbook; the exponents hold about the rated voltage and drift far from it. A dimmer that cuts
 * phases counts by its rms voltage. Carbon behaves otherwise, and is not in it.
 *
 * @param voltageRatio rms voltage over the rated one, 0.4 to 1.1
 */
public record Dimming(double voltageRatio) {
    /** Exponent of the light, from memory. */
    private static final double OF_LIGHT = 3.4;

    /** Exponent of the electric power, from memory. */
    private static final double OF_POWER = 1.6;

    /** Exponent of the colour temperature, from memory. */
    private static final double OF_TEMPERATURE = 0.42;

    public Dimming {
        Check.within("voltage over the rated one", voltageRatio, 0.4, 1.1, "");
    }

    /** Light over that at the rated voltage. */
    public double light() {
        return Math.pow(voltageRatio, OF_LIGHT);
    }

    /** Electric power over that at the rated voltage. */
    public double power() {
        return Math.pow(voltageRatio, OF_POWER);
    }

    /** The filament so dimmed. */
    public Filament of(Filament rated) {
        return new Filament(rated.kelvin() * Math.pow(voltageRatio, OF_TEMPERATURE));
    }
}
