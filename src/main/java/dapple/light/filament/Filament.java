package dapple.light.filament;

import dapple.light.quantity.Check;
import dapple.light.spectrum.SpectralBand;
import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.Spectrum.Sample;
import dapple.light.spectrum.Weight;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A body that radiates as a black one does, by Planck's law [planck1901]. A filament is near it where its colour is meant:
 * tungsten radiates a little less in the infrared, and the bulb takes what is shorter than about 350 nm or longer than
 * about 3000 nm (from memory), so that shares of ultraviolet are the most, and of infrared a rough guide.
 *
 * @param kelvin colour temperature, 500 to 10,000
 */
public record Filament(double kelvin) {
    /** Planck's constant times the speed of light over Boltzmann's constant, nm·K [bipm2019]. */
    private static final double SECOND_RADIATION_CONSTANT = 1.438776877e7;

    /** Stefan's and Boltzmann's constant, W/(m²·K⁴) [bipm2019]. */
    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** 2π h c², W·nm⁵/(m²·nm) [bipm2019]. */
    private static final double FIRST_RADIATION_CONSTANT = 3.741771852e20;

    /** Luminous efficacy at the peak of V(λ): 683 lm/W [bipm2019]. */
    private static final double LUMENS_PER_WATT = 683;

    private static final double SMALLEST_TERM = 1e-18;
    private static final int MOST_TERMS = 2000;
    private static final int FIRST_SEEN_NANOMETRES = 360;
    private static final int LAST_SEEN_NANOMETRES = 830;

    public Filament {
        Check.within("colour temperature", kelvin, 500, 10_000, "K");
    }

    /** The part of all its power that lies in a band, 0 to 1. */
    public double share(SpectralBand band) {
        return upTo(band.highNanometres()) - upTo(band.lowNanometres());
    }

    /**
     * The part of the power that is shorter than a wavelength: 15/π⁴ Σ e^(−nx) (x³/n + 3x²/n² + 6x/n³ + 6/n⁴) with x =
     * hc/(λkT) [planck1901].
     */
    private double upTo(double nanometres) {
        double x = SECOND_RADIATION_CONSTANT / (nanometres * kelvin);
        double sum = 0;
        for (int n = 1; n <= MOST_TERMS; n++) {
            double term = Math.exp(-n * x) * (x * x * x + (3 * x * x + (6 * x + 6.0 / n) / n) / n) / n;
            sum += term;
            if (term < SMALLEST_TERM) {
                break;
            }
        }
        return 15 / Math.pow(Math.PI, 4) * sum;
    }

    /**
     * Light for all its power, lm/W.
     *
     * @param photopic V(λ), 1 at 555 nm
     */
    public double lumensPerWatt(Weight photopic) {
        List<Sample> samples = IntStream.rangeClosed(FIRST_SEEN_NANOMETRES, LAST_SEEN_NANOMETRES)
                .mapToObj(nanometres -> new Sample(nanometres, shareOfANanometre(nanometres)))
                .toList();
        return LUMENS_PER_WATT * photopic.of(new Spectrum(samples, List.of()));
    }

    private double shareOfANanometre(double nanometres) {
        double exitance = FIRST_RADIATION_CONSTANT
                / (Math.pow(nanometres, 5) * Math.expm1(SECOND_RADIATION_CONSTANT / (nanometres * kelvin)));
        return exitance / (STEFAN_BOLTZMANN * Math.pow(kelvin, 4));
    }
}
