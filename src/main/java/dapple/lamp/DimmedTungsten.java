package dapple.lamp;

import dapple.light.filament.Dimming;
import dapple.light.filament.Filament;
import dapple.light.quantity.Quantity;
import dapple.light.spectrum.SpectralBand;

/**
 * What a dimmer leaves of what a tungsten halogen lamp gives: its light and power by the handbook's exponents, the shares of
 * its bands by Planck's law. Where it hangs and how it is aimed does not matter. The UV index follows the ultraviolet A, which
 * is too much of it: the shorter the wave, the faster it goes.
 *
 * @param voltageRatio rms voltage over the rated one, 0.4 to 1
 */
public record DimmedTungsten(double voltageRatio) {
    /** Standard uncertainty that is added for each part of the voltage that is taken: the exponents drift; ours. */
    private static final double DRIFT = 0.3;

    private static final Filament RATED = new Filament(Filaments.HALOGEN_KELVIN);

    public DimmedTungsten {
        dimming(voltageRatio);
    }

    private static Dimming dimming(double ratio) {
        return new Dimming(ratio);
    }

    /** Electric power over that at the rated voltage. */
    public double power() {
        return dimming(voltageRatio).power();
    }

    /** Temperature over that at the rated voltage. */
    public double temperature() {
        return dimmed().kelvin() / RATED.kelvin();
    }

    /** Over what it gives at the rated voltage. */
    public double left(Quantity quantity) {
        return switch (quantity) {
            case ILLUMINANCE -> dimming(voltageRatio).light();
            case UV_INDEX, UVA -> left(SpectralBand.UVA);
            case IR_A -> left(SpectralBand.IR_A);
            case IR_B -> left(SpectralBand.IR_B);
            default -> power();
        };
    }

    private double left(SpectralBand band) {
        return power() * dimmed().share(band) / RATED.share(band);
    }

    /** The part of its power that lies in a band, 0 to 1. */
    public double share(SpectralBand band) {
        return dimmed().share(band);
    }

    /** The same at the rated voltage. */
    public static double ratedShare(SpectralBand band) {
        return RATED.share(band);
    }

    private Filament dimmed() {
        return dimming(voltageRatio).of(RATED);
    }

    /** What is left of an output, known less well. */
    public LampOutput of(LampOutput output) {
        double uncertainty = Math.hypot(output.relativeUncertainty(), DRIFT * (1 - voltageRatio));
        return new LampOutput(
                output.quantity(),
                output.reading() * left(output.quantity()),
                output.distanceMetres(),
                Math.min(2, uncertainty),
                output.mark(),
                output.source());
    }
}
