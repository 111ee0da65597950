package dapple.light.spectrum;

import dapple.light.quantity.ErythemalIrradiance;
import dapple.light.quantity.UvIndex;
import java.util.List;

/**
 * What a spectrum does.
 *
 * @param vitaminD3WattsPerSquareMetre weighted for previtamin D3
 * @param actinicWattsPerSquareMetre weighted for the hazard to skin and eyes
 * @param illuminanceLux for human eyes
 * @param totalWattsPerSquareMetre at all wavelengths of the spectrum, unweighted
 * @param bands one for each band, in the order of the enum
 * @param sun the sun whose shares the bands' are compared with
 * @param warnings in English, for whoever reads the numbers
 */
public record SpectrumSummary(
        ErythemalIrradiance erythemal,
        double vitaminD3WattsPerSquareMetre,
        double actinicWattsPerSquareMetre,
        double illuminanceLux,
        double totalWattsPerSquareMetre,
        List<BandShare> bands,
        KeeperLimit keeperLimit,
        SunCompared sun,
        List<String> warnings) {
    /** Standard erythema doses: 3600 s/h over 100 J/m² [isocie17166]. */
    private static final double SED_PER_HOUR_PER_WATT_PER_SQUARE_METRE = 36;

    public SpectrumSummary {
        bands = List.copyOf(bands);
        warnings = List.copyOf(warnings);
    }

    public UvIndex uvIndex() {
        return UvIndex.of(erythemal);
    }

    /** Standard erythema doses of 100 J/m² in an hour [isocie17166]. */
    public double sedPerHour() {
        return SED_PER_HOUR_PER_WATT_PER_SQUARE_METRE * erythemal.wattsPerSquareMetre();
    }

    /** What lies in a band. */
    public BandShare band(SpectralBand band) {
        return bands.stream().filter(found -> found.band() == band).findAny().orElseThrow();
    }
}
