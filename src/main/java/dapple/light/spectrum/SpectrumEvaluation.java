package dapple.light.spectrum;

import dapple.light.quantity.ErythemalIrradiance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Judges spectra by one set of tables. Holds nothing that changes: one serves all threads. */
public final class SpectrumEvaluation {
    /** Luminous efficacy at the peak of V(λ): 683 lm/W [bipm2019]. */
    static final double LUMENS_PER_WATT = 683;

    /** The share from which a band is said to hold power: the sun has 3e-12 below 290 nm, rounding and no light. */
    private static final double NOTHING = 1e-9;

    /** Where samples must reach from and to for the shares of all bands but infrared to mean anything. */
    private static final double MEASURED_FROM_NANOMETRES = 280;

    private static final double MEASURED_TO_NANOMETRES = 780;

    private static final Weight ERYTHEMA = Weight.erythema();
    private static final Weight ALL = Weight.oneFrom(Spectrum.SHORTEST_NANOMETRES, Spectrum.LONGEST_NANOMETRES);

    private final SpectrumTables tables;
    private final Map<SpectralBand, Double> sunShares = new EnumMap<>(SpectralBand.class);

    public SpectrumEvaluation(SpectrumTables tables) {
        this.tables = tables;
        Spectrum sun = tables.sun().spectrum();
        double total = ALL.of(sun);
        for (SpectralBand band : SpectralBand.values()) {
            sunShares.put(band, share(band.wattsPerSquareMetre(sun), total));
        }
    }

    /** All that is told of a spectrum; all numbers are finite and at least 0. */
    public SpectrumSummary of(Spectrum spectrum) {
        double total = ALL.of(spectrum);
        double actinic = tables.actinic().of(spectrum);
        return new SpectrumSummary(
                new ErythemalIrradiance(ERYTHEMA.of(spectrum)),
                tables.previtaminD3().of(spectrum),
                actinic,
                LUMENS_PER_WATT * tables.photopic().of(spectrum),
                total,
                Arrays.stream(SpectralBand.values())
                        .map(band -> bandShare(band, spectrum, total))
                        .toList(),
                KeeperLimit.of(actinic, SpectralBand.UVA.wattsPerSquareMetre(spectrum)),
                tables.sun().name(),
                warnings(spectrum, bandShare(SpectralBand.BELOW_290, spectrum, total)));
    }

    private BandShare bandShare(SpectralBand band, Spectrum spectrum, double total) {
        double inBand = band.wattsPerSquareMetre(spectrum);
        double share = share(inBand, total);
        double sun = sunShares.getOrDefault(band, 0.0);
        OptionalDouble overSun = sun > NOTHING && total > 0 ? OptionalDouble.of(share / sun) : OptionalDouble.empty();
        return new BandShare(band, inBand, share, overSun);
    }

    private static double share(double inBand, double total) {
        return total > 0 ? Math.min(1, inBand / total) : 0;
    }

    private static List<String> warnings(Spectrum spectrum, BandShare below290) {
        List<String> warnings = new ArrayList<>();
        if (below290.share() > NOTHING) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "Power below 290 nm: %.3g W/m², %.3g %% of the whole. Sunlight at the ground has none; in a lamp"
                            + " it is a fault, or glass is missing. It can harm eyes and skin.",
                    below290.wattsPerSquareMetre(),
                    100 * below290.share()));
        }
        warnings.addAll(ofSamples(spectrum.samples()));
        warnings.add("The weight of vitaminD3 is an unverified transcription.");
        warnings.add("visible and uva overlap from 380 to 400 nm: the shares of the bands do not add up to one.");
        return warnings;
    }

    private static List<String> ofSamples(List<Spectrum.Sample> samples) {
        if (samples.isEmpty()) {
            return List.of();
        }
        if (samples.size() == 1) {
            return List.of("One sample alone spans no wavelengths and counts as nothing: a line needs its irradiance.");
        }
        double first = samples.get(0).wavelengthNanometres();
        double last = samples.get(samples.size() - 1).wavelengthNanometres();
        if (first <= MEASURED_FROM_NANOMETRES && last >= MEASURED_TO_NANOMETRES) {
            return List.of();
        }
        return List.of(String.format(
                Locale.ROOT,
                "The samples reach from %s to %s nm. What lies outside counts as 0, in the shares too.",
                first,
                last));
    }
}
