package dapple.light.spectrum;

import dapple.light.spectrum.Spectrum.Sample;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What whoever reads the numbers of a spectrum should know, in English. */
final class SpectrumWarnings {
    /** Where the erythema weight falls by a fifth a nanometre, and a little before. */
    private static final double STEEP_FROM_NANOMETRES = 280;

    private static final double STEEP_TO_NANOMETRES = 330;

    /** The widest step there: 1 nm, as well as instruments keep it. The standard sun's UV index is then 0.3 % off. */
    private static final double WIDEST_STEP_NANOMETRES = 1.05;

    private SpectrumWarnings() {}

    static List<String> of(Spectrum spectrum, List<BandShare> bands) {
        List<String> warnings = new ArrayList<>();
        bands.stream()
                .filter(band -> band.band() == SpectralBand.BELOW_290 && band.share() > SpectrumEvaluation.NOTHING)
                .forEach(band -> warnings.add(below290(band)));
        warnings.addAll(ofSamples(spectrum));
        warnings.add("The weight of vitamin D3 is an unverified transcription.");
        warnings.add("Visible light and UVA overlap from 380 to 400 nm: the shares of the bands do not add up to one.");
        return warnings;
    }

    private static String below290(BandShare band) {
        return String.format(
                Locale.ROOT,
                "Power below 290 nm: %s W/m², %s %% of the whole. Sunlight at the ground has none; in a lamp it is a"
                        + " fault, or glass is missing. It can harm eyes and skin.",
                threeDigits(band.wattsPerSquareMetre()),
                threeDigits(100 * band.share()));
    }

    private static List<String> ofSamples(Spectrum spectrum) {
        if (spectrum.samples().size() == 1) {
            return List.of("One sample alone spans no wavelengths and counts as nothing: a line needs its irradiance.");
        }
        return spectrum.isSampled()
                ? Stream.concat(coarse(spectrum.samples()).stream(), reach(spectrum.samples()).stream())
                        .toList()
                : List.of();
    }

    /** Where the steps are too wide for weights that fall so fast, unless there is nothing to weigh. */
    private static List<String> coarse(List<Sample> samples) {
        double widest = 0;
        for (int index = 1; index < samples.size(); index++) {
            Sample low = samples.get(index - 1);
            Sample high = samples.get(index);
            boolean dark = low.wattsPerSquareMetrePerNanometre() == 0 && high.wattsPerSquareMetrePerNanometre() == 0;
            if (!dark
                    && low.wavelengthNanometres() < STEEP_TO_NANOMETRES
                    && high.wavelengthNanometres() > STEEP_FROM_NANOMETRES) {
                widest = Math.max(widest, high.wavelengthNanometres() - low.wavelengthNanometres());
            }
        }
        if (widest <= WIDEST_STEP_NANOMETRES) {
            return List.of();
        }
        return List.of(String.format(
                Locale.ROOT,
                "The samples are too coarse near 300 nm, up to %s nm apart: there the weights of the UV index, of vitamin D3"
                        + " and of the hazard to skin and eyes fall by up to a fifth a nanometre. Sample each 1 nm or finer from 280 to 330 nm.",
                plain(widest)));
    }

    private static List<String> reach(List<Sample> samples) {
        Range range = new Range(
                samples.get(0).wavelengthNanometres(),
                samples.get(samples.size() - 1).wavelengthNanometres());
        String missed = Stream.of(
                        SpectralBand.UVB, SpectralBand.UVA, SpectralBand.VISIBLE, SpectralBand.IR_A, SpectralBand.IR_B)
                .filter(band -> !band.isWithin(range))
                .map(SpectralBand::words)
                .collect(Collectors.joining(", "));
        if (missed.isEmpty()) {
            return List.of();
        }
        return List.of(String.format(
                Locale.ROOT,
                "The samples reach from %s to %s nm and do not cover, or not wholly: %s. What lies outside counts as 0,"
                        + " in the shares too; the sun is cut to the same wavelengths.",
                plain(range.fromNanometres()),
                plain(range.toNanometres()),
                missed));
    }

    private static String threeDigits(double amount) {
        return new BigDecimal(String.format(Locale.ROOT, "%.3g", amount)).toPlainString();
    }

    /** At most three decimals: 280 and 5.25. */
    private static String plain(double nanometres) {
        return BigDecimal.valueOf(Math.round(nanometres * 1000), 3)
                .stripTrailingZeros()
                .toPlainString();
    }
}
