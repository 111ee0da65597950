package dapple.lamp;

import dapple.lamp.SpectrumPlots.Weighed;
import dapple.light.quantity.UvIndex;
import dapple.light.spectrum.Range;
import dapple.light.spectrum.SpectralBand;
import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.SpectrumEvaluation;
import dapple.light.spectrum.SpectrumSummary;
import dapple.light.spectrum.SpectrumTables;
import dapple.site.ReferenceSpectra;
import java.util.List;
import java.util.Optional;
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
        SpectrumFigures figures = SpectrumFigures.of(summary);
        return new SpectrumShown(summary, figures, rows.toList(), drawn(spectrum, figures, range));
    }

    private SpectrumPlots drawn(Spectrum spectrum, SpectrumFigures figures, Range range) {
        Spectrum sun = tables.sun().spectrum();
        Optional<UvIndex> ofLamp = Optional.ofNullable(figures.uvIndex()).map(UvIndex::new);
        return SpectrumPlots.of(
                new Weighed(spectrum, ofLamp),
                new Weighed(sun, Optional.of(summary(sun).uvIndex())),
                range);
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
