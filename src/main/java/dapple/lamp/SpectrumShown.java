package dapple.lamp;

import dapple.light.spectrum.SpectrumSummary;
import java.util.List;
import java.util.Optional;

/** A spectrum as the page of a lamp model shows it. */
record SpectrumShown(SpectrumSummary summary, SpectrumFigures figures, List<FractionRow> rows, SpectrumPlots drawn) {
    public Optional<Double> uvIndex() {
        return Optional.ofNullable(figures.uvIndex());
    }

    public Optional<Double> illuminanceLux() {
        return Optional.ofNullable(figures.illuminanceLux());
    }

    public Optional<Double> below290Share() {
        return Optional.ofNullable(figures.below290Share());
    }

    /** Minutes until the first daily limit of a person is reached; none: not within 8 hours. */
    public Optional<Double> keeperMinutes() {
        return summary.keeperLimit().minutes().stream().boxed().findAny();
    }
}
