package dapple.lamp;

import dapple.light.quantity.Quantity;
import dapple.light.spectrum.SpectralBand;
import dapple.light.spectrum.SpectrumEvaluation;
import dapple.light.spectrum.SpectrumSummary;
import dapple.site.SourceMark;
import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The amounts of a filed spectrum that a lamp's other outputs are computed from. What the wavelengths of the spectrum do not
 * cover is absent, never 0.
 */
@Embeddable
public record SpectrumFigures(
        @Nullable Double uvIndex,
        @Nullable Double illuminanceLux,
        @Nullable Double uvaWattsPerSquareMetre,

        @Column(name = "ir_a_watts_per_square_metre") @Nullable
        Double irAWattsPerSquareMetre,

        @Column(name = "ir_b_watts_per_square_metre") @Nullable
        Double irBWattsPerSquareMetre,

        @Column(name = "below_290_share") @Nullable Double below290Share) {

    /** The UV index lies between these, for lamps as for the sun: nm; the weight of what is longer is below 0.0002. */
    private static final double UV_INDEX_FROM_NANOMETRES = 290;

    private static final double UV_INDEX_TO_NANOMETRES = 400;

    /** Whether there is anything below 290 nm is known of spectra that begin here, nm. */
    private static final double SHORT_WAVES_FROM_NANOMETRES = 280;

    /** How well a spectrum knows one band against another, standard, relative: our own assumption. */
    private static final double RATIO_UNCERTAINTY = 0.1;

    static SpectrumFigures of(SpectrumSummary summary) {
        double from = summary.sun().range().fromNanometres();
        double to = summary.sun().range().toNanometres();
        boolean hasUvIndex = from <= UV_INDEX_FROM_NANOMETRES && to >= UV_INDEX_TO_NANOMETRES;
        double below290 = summary.band(SpectralBand.BELOW_290).share();
        boolean knowsShortWaves = from <= SHORT_WAVES_FROM_NANOMETRES || below290 > SpectrumEvaluation.NOTHING;
        return new SpectrumFigures(
                hasUvIndex ? summary.uvIndex().index() : null,
                covers(summary, SpectralBand.VISIBLE) ? summary.illuminanceLux() : null,
                amount(summary, SpectralBand.UVA),
                amount(summary, SpectralBand.IR_A),
                amount(summary, SpectralBand.IR_B),
                knowsShortWaves ? below290 : null);
    }

    private static @Nullable Double amount(SpectrumSummary summary, SpectralBand band) {
        return covers(summary, band) ? summary.band(band).wattsPerSquareMetre() : null;
    }

    private static boolean covers(SpectrumSummary summary, SpectralBand band) {
        return band.isWithin(summary.sun().range());
    }

    /** Radiation shorter than the sun's, which no lamp should have. */
    boolean hasShortWaves() {
        return below290Share != null && below290Share > SpectrumEvaluation.NOTHING;
    }

    /**
     * What is stated, and what follows from its UV index by the ratios in the spectrum for the quantities that are not.
     *
     * @param source which spectrum
     */
    List<LampOutput> complete(List<LampOutput> stated, String source) {
        List<LampOutput> all = new ArrayList<>(stated);
        stated.stream().filter(output -> output.quantity() == Quantity.UV_INDEX).forEach(uvIndex -> {
            add(all, uvIndex, Quantity.ILLUMINANCE, illuminanceLux, source);
            add(all, uvIndex, Quantity.UVA, uvaWattsPerSquareMetre, source);
            add(all, uvIndex, Quantity.IR_A, irAWattsPerSquareMetre, source);
            add(all, uvIndex, Quantity.IR_B, irBWattsPerSquareMetre, source);
        });
        return List.copyOf(all);
    }

    private void add(
            List<LampOutput> all, LampOutput measured, Quantity quantity, @Nullable Double amount, String source) {
        boolean isStated = all.stream().anyMatch(output -> output.quantity() == quantity);
        if (isStated || amount == null || uvIndex == null || !(amount > 0 && uvIndex > 0)) {
            return;
        }
        possible(measured.reading() * amount / uvIndex)
                .map(reading -> new LampOutput(
                        quantity,
                        reading,
                        measured.distanceMetres(),
                        Math.min(2, Math.hypot(measured.relativeUncertainty(), RATIO_UNCERTAINTY)),
                        SourceMark.COMPUTED,
                        source))
                .ifPresent(all::add);
    }

    private static Optional<Double> possible(double reading) {
        return reading >= Double.MIN_NORMAL && reading <= 999_999_999 ? Optional.of(reading) : Optional.empty();
    }
}
