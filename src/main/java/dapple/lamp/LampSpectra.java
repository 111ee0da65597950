package dapple.lamp;

import dapple.light.spectrum.Range;
import dapple.light.spectrum.SpectralBand;
import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.SpectrumEvaluation;
import dapple.light.spectrum.SpectrumSummary;
import dapple.light.spectrum.SpectrumTables;
import dapple.site.ReferenceSpectra;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Judges the spectra of lamps, beside the standard sun. */
@Component
class LampSpectra {
    private static final List<SpectralBand> SHOWN =
            List.of(SpectralBand.UVB, SpectralBand.UVA, SpectralBand.VISIBLE, SpectralBand.IR_A, SpectralBand.IR_B);

    private final SpectrumTables tables = ReferenceSpectra.tables();
    private final SpectrumEvaluation evaluation = new SpectrumEvaluation(tables);

    SpectrumSummary summary(Spectrum spectrum) {
        return evaluation.of(spectrum);
    }

    /** What a page shows of a spectrum. */
    SpectrumShown shown(Spectrum spectrum) {
        SpectrumSummary summary = summary(spectrum);
        Range range = summary.sun().range();
        Stream<FractionRow> rows = SHOWN.stream().map(band -> row(summary, band, range));
        return new SpectrumShown(summary, SpectrumFigures.of(summary), rows.toList());
    }

    private FractionRow row(SpectrumSummary summary, SpectralBand band, Range range) {
        return new FractionRow(
                band,
                band.isWithin(range),
                summary.band(band).wattsPerSquareMetre(),
                summary.band(band).share(),
                tables.sun().share(band, range));
    }
}
