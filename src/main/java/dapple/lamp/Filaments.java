package dapple.lamp;

import dapple.light.filament.Dimming;
import dapple.light.filament.Filament;
import dapple.light.spectrum.Range;
import dapple.light.spectrum.SpectralBand;
import dapple.light.spectrum.SpectrumTables;
import dapple.site.ReferenceSpectra;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.springframework.stereotype.Component;

/** The fractions of sunlight that a filament gives, and what a dimmer does to them: by Planck's law from its temperature. */
@Component
class Filaments {
    /** Colour temperature of tungsten halogen lamps: 2700 to 3000 K, common practice, no source. */
    static final double HALOGEN_KELVIN = 2900;

    /** Colour temperature of carbon filaments: 1500 to 2000 K, common practice, no source. */
    private static final double CARBON_KELVIN = 1800;

    private static final double[] VOLTAGES = {1, 0.9, 0.8, 0.7, 0.5};
    private static final Range OF_THE_SUN = new Range(280, 4000);
    private static final List<SpectralBand> BANDS =
            List.of(SpectralBand.UVA, SpectralBand.VISIBLE, SpectralBand.IR_A, SpectralBand.IR_B);

    private final SpectrumTables tables = ReferenceSpectra.tables();

    /** Of a class; empty where no filament alone gives the light. */
    Optional<FilamentShown> of(LampClass lampClass) {
        return switch (lampClass) {
            case TUNGSTEN_HALOGEN -> Optional.of(shown(HALOGEN_KELVIN, VOLTAGES));
            case CARBON_FILAMENT -> Optional.of(shown(CARBON_KELVIN, 1));
            default -> Optional.empty();
        };
    }

    private FilamentShown shown(double kelvin, double... voltages) {
        Filament rated = new Filament(kelvin);
        return new FilamentShown(
                kelvin,
                DoubleStream.of(voltages)
                        .mapToObj(voltage -> row(rated, new Dimming(voltage)))
                        .toList(),
                BANDS.stream().map(band -> tables.sun().share(band, OF_THE_SUN)).toList());
    }

    private FilamentRow row(Filament rated, Dimming dimming) {
        Filament dimmed = dimming.of(rated);
        return new FilamentRow(
                dimming.voltageRatio(),
                dimming.light(),
                dimming.power(),
                dimmed,
                dimmed.lumensPerWatt(tables.photopic()));
    }
}
