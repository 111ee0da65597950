package dapple.lamp;

import dapple.light.filament.Filament;
import dapple.light.spectrum.SpectralBand;

/**
 * What a filament gives at a voltage.
 *
 * @param voltageRatio over the rated voltage
 * @param light over that at the rated voltage
 * @param power likewise, electric
 */
record FilamentRow(double voltageRatio, double light, double power, Filament filament, double lumensPerWatt) {
    /** Colour temperature to the next 10 K: it is not known closer. */
    public long kelvin() {
        return 10 * Math.round(filament.kelvin() / 10);
    }

    public double uva() {
        return filament.share(SpectralBand.UVA);
    }

    public double visible() {
        return filament.share(SpectralBand.VISIBLE);
    }

    public double irA() {
        return filament.share(SpectralBand.IR_A);
    }

    public double irB() {
        return filament.share(SpectralBand.IR_B);
    }
}
