package dapple.light.spectrum;

import dapple.light.quantity.ErythemalIrradiance;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Judges spectra by one set of tables. Holds nothing that changes: one serves all threads. */
public final class SpectrumEvaluation {
    /** Luminous efficacy at the peak of V(λ): 683 lm/W [bipm2019]. */
    static final double LUMENS_PER_WATT = 683;

    /** The share from which a band is said to hold power: the sun has 3e-12 below 290 nm, rounding and no light. */
    public static final double NOTHING = 1e-9;

    private static final Weight ERYTHEMA = Weight.erythema();

    private final SpectrumTables tables;
    private final Set<SpectralBand> sunlit = EnumSet.noneOf(SpectralBand.class);

    public SpectrumEvaluation(SpectrumTables tables) {
        this.tables = tables;
        Arrays.stream(SpectralBand.values())
                .filter(band -> tables.sun().share(band, Range.ALL) > NOTHING)
                .forEach(sunlit::add);
    }

    /** All that is told of a spectrum; all numbers are finite and at least 0. */
    public SpectrumSummary of(Spectrum spectrum) {
        double total = Range.ALL.wattsPerSquareMetre(spectrum);
        double actinic = tables.actinic().of(spectrum);
        List<BandShare> bands = bands(spectrum, total);
        return new SpectrumSummary(
                new ErythemalIrradiance(ERYTHEMA.of(spectrum)),
                tables.previtaminD3().of(spectrum),
                actinic,
                LUMENS_PER_WATT * tables.photopic().of(spectrum),
                total,
                bands,
                KeeperLimit.of(actinic, SpectralBand.UVA.wattsPerSquareMetre(spectrum)),
                new SunCompared(tables.sun().name(), Range.of(spectrum)),
                SpectrumWarnings.of(spectrum, bands));
    }

    private List<BandShare> bands(Spectrum spectrum, double total) {
        Range range = Range.of(spectrum);
        return Arrays.stream(SpectralBand.values())
                .map(band -> bandShare(band, band.wattsPerSquareMetre(spectrum), total, range))
                .toList();
    }

    private BandShare bandShare(SpectralBand band, double inBand, double total, Range range) {
        if (!(total > 0)) {
            return new BandShare(band, inBand, 0, OptionalDouble.empty());
        }
        double share = Math.min(1, inBand / total);
        double sun = sunlit.contains(band) ? tables.sun().share(band, range) : 0;
        return new BandShare(band, inBand, share, sun > 0 ? OptionalDouble.of(share / sun) : OptionalDouble.empty());
    }
}
