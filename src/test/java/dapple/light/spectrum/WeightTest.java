package dapple.light.spectrum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.spectrum.Spectrum.Sample;
import dapple.light.spectrum.Weight.Point;
import dapple.site.ReferenceSpectra;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WeightTest {
    private static final SpectrumTables TABLES = ReferenceSpectra.tables();
    private static final Weight ERYTHEMA = Weight.erythema();

    /** Only rounding: some hundred pieces of 1e-16 each, of terms that never cancel. */
    private static final double ROUNDING = 1e-12;

    /** Trapezoids of 0.001 nm: an exponential of 0.22 a nm is off by (0.00022)²/12, a peak's kink by less than 1e-8. */
    private static final double DENSE = 1e-7;

    /** The same trapezoids where the weight falls by 6.9 powers of e a nanometre: (0.0069)²/12. */
    private static final double STEEP = 4e-6;

    /** The second list of V(λ) has about three digits, the table more. */
    private static final double THREE_DIGITS = 1e-3;

    @ParameterizedTest
    @CsvFileSource(resources = "erythema-published.csv", useHeadersInDisplayName = true)
    void isTheErythemaSpectrum(double wavelengthNanometres, double weight, double relativeTolerance) {
        assertThat(ERYTHEMA.at(wavelengthNanometres)).isCloseTo(weight, within(relativeTolerance * weight));
    }

    /** The formula as the standard writes it, beside the four points that stand for it. */
    @Test
    void followsTheFormulaOfErythemaBetweenItsPoints() {
        for (double nanometres = 250; nanometres <= 400; nanometres += 0.37) {
            assertThat(ERYTHEMA.at(nanometres))
                    .isCloseTo(erythemaFormula(nanometres), within(ROUNDING * erythemaFormula(nanometres)));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "actinic-published.csv", useHeadersInDisplayName = true)
    void hasTheActinicTable(double wavelengthNanometres, double weight) {
        assertThat(TABLES.actinic().at(wavelengthNanometres)).isCloseTo(weight, within(ROUNDING * weight));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "photopic-published.csv", useHeadersInDisplayName = true)
    void hasThePhotopicTable(double wavelengthNanometres, double weight) {
        assertThat(TABLES.photopic().at(wavelengthNanometres)).isCloseTo(weight, within(THREE_DIGITS * weight));
    }

    /** A fifth of the way from 300 to 303 nm, and half way. */
    @Test
    void goesStraightInTheLogarithmBetweenActinicEntries() {
        double fifth = Math.pow(0.300, 0.8) * Math.pow(0.120, 0.2);
        assertThat(TABLES.actinic().at(300.6)).isCloseTo(fifth, within(ROUNDING));
        assertThat(TABLES.actinic().at(301.5)).isCloseTo(Math.sqrt(0.300 * 0.120), within(ROUNDING));
    }

    @Test
    void goesStraightBetweenEntriesOfPhotopicVision() {
        assertThat(TABLES.photopic().at(555)).isEqualTo(1);
        assertThat(TABLES.photopic().at(557.5)).isCloseTo((1 + TABLES.photopic().at(560)) / 2, within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 179.9, 400.1, 1e6, Double.NaN, Double.POSITIVE_INFINITY, -300})
    void isZeroOutsideItsTable(double nanometres) {
        assertThat(TABLES.actinic().at(nanometres)).isZero();
    }

    static Stream<Weight> weights() {
        return Stream.of(
                ERYTHEMA, TABLES.actinic(), TABLES.previtaminD3(), TABLES.photopic(), Weight.oneFrom(315, 400));
    }

    /** One rectangle of 1 W/(m²·nm) on 299 to 301 nm: ∫ 10^(0.094·(298 − λ)) dλ by hand. */
    @Test
    void weighsARectangleAsTheAntiderivativeSays() {
        double slope = 0.094 * Math.log(10);
        double expected = (Math.exp(-slope * 1) - Math.exp(-slope * 3)) / slope;
        Spectrum rectangle = new Spectrum(List.of(new Sample(299, 1), new Sample(301, 1)), List.of());
        assertThat(ERYTHEMA.of(rectangle)).isCloseTo(expected, within(ROUNDING * expected));
    }

    @ParameterizedTest
    @MethodSource("weights")
    void agreesWithDenseTrapezoids(Weight weight) {
        for (long seed = 100; seed < 106; seed++) {
            Spectrum spectrum = Spectra.seeded(seed);
            double dense = trapezoids(weight::at, spectrum);
            assertThat(weight.of(spectrum)).as("seed " + seed).isCloseTo(dense, within(DENSE * dense + ROUNDING));
        }
    }

    /** By the formula itself, not by this program's weight: nothing is shared but the samples. */
    @Test
    void agreesWithDenseTrapezoidsOfTheErythemaFormula() {
        Spectrum sun = TABLES.sun().spectrum();
        double dense = trapezoids(WeightTest::erythemaFormula, sun);
        assertThat(ERYTHEMA.of(sun)).isCloseTo(dense, within(DENSE * dense));
    }

    @ParameterizedTest
    @MethodSource("weights")
    void changesNothingWhenSamplesAreAddedOnTheStraightLine(Weight weight) {
        Spectra.seeded().forEach(spectrum -> {
            double before = weight.of(spectrum);
            for (int parts : new int[] {2, 7, 50}) {
                assertThat(weight.of(Spectra.cut(spectrum, parts))).isCloseTo(before, within(ROUNDING * (1 + before)));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("weights")
    void growsWithTheSpectrum(Weight weight) {
        Spectra.seeded()
                .forEach(spectrum -> assertThat(weight.of(Spectra.scaled(spectrum, 3.7)))
                        .isCloseTo(3.7 * weight.of(spectrum), within(ROUNDING * (1 + weight.of(spectrum)))));
    }

    @ParameterizedTest
    @MethodSource("weights")
    void isTheSumOverSamplesAndLinesAndCutPieces(Weight weight) {
        Spectra.seeded().forEach(spectrum -> {
            List<Sample> samples = spectrum.samples();
            int middle = samples.size() / 2;
            double parts = weight.of(new Spectrum(List.of(), spectrum.lines()))
                    + weight.of(new Spectrum(samples.subList(0, middle + 1), List.of()))
                    + weight.of(new Spectrum(samples.subList(middle, samples.size()), List.of()));
            assertThat(weight.of(spectrum)).isCloseTo(parts, within(ROUNDING * (1 + parts)));
        });
    }

    @ParameterizedTest
    @MethodSource("weights")
    void isNeverNegative(Weight weight) {
        Spectra.seeded().forEach(spectrum -> assertThat(weight.of(spectrum)).isNotNegative());
    }

    /** The closed form and the series of the exponential pieces meet: steep, gentle, level, rising. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-30, 1e-6, 0.1, 0.606, 0.607, 0.9, 0.999999999, 1, 1.000000001, 1.6, 1.7, 40, 1e6})
    void weighsExponentialsOfAnySlope(double ratio) {
        Weight weight = Weight.logLinear(List.of(new Point(300, 1), new Point(310, ratio)));
        Spectrum ramp = new Spectrum(List.of(new Sample(300, 2), new Sample(310, 5)), List.of());
        double dense = trapezoids(nanometres -> Math.pow(ratio, (nanometres - 300) / 10), ramp);
        assertThat(weight.of(ramp)).isCloseTo(dense, within(STEEP * dense));
    }

    @Test
    void refusesPointsThatCannotBe() {
        assertThatThrownBy(() -> Weight.linear(List.of(new Point(300, 1)))).hasMessageContaining("2 points or more");
        assertThatThrownBy(() -> Weight.linear(List.of(new Point(300, 1), new Point(300, 1))))
                .hasMessageStartingWith("wavelength of point 1 must be");
        assertThatThrownBy(() -> Weight.linear(List.of(new Point(300, 1), new Point(301, Double.NaN))))
                .hasMessageStartingWith("weight of point 1 must be");
        assertThatThrownBy(() -> Weight.logLinear(List.of(new Point(300, 0), new Point(301, 1))))
                .hasMessageStartingWith("weight of point 0 must be");
    }

    private static double erythemaFormula(double nanometres) {
        if (!(nanometres >= 250 && nanometres <= 400)) {
            return 0;
        }
        if (nanometres <= 298) {
            return 1;
        }
        return nanometres <= 328 ? Math.pow(10, 0.094 * (298 - nanometres)) : Math.pow(10, 0.015 * (140 - nanometres));
    }

    /** Lines exactly, samples by trapezoids of at most 0.001 nm, none across a sample or a multiple of 1 nm. */
    private static double trapezoids(DoubleUnaryOperator weight, Spectrum spectrum) {
        double sum = spectrum.lines().stream()
                .mapToDouble(line -> weight.applyAsDouble(line.wavelengthNanometres()) * line.wattsPerSquareMetre())
                .sum();
        for (int index = 0; index + 1 < spectrum.samples().size(); index++) {
            Sample low = spectrum.samples().get(index);
            Sample high = spectrum.samples().get(index + 1);
            double from = low.wavelengthNanometres();
            while (from < high.wavelengthNanometres()) {
                double to = Math.min(high.wavelengthNanometres(), Math.floor(from) + 1);
                sum += trapezoids(weight, low, high, from, to);
                from = to;
            }
        }
        return sum;
    }

    private static double trapezoids(DoubleUnaryOperator weight, Sample low, Sample high, double from, double to) {
        double slope = (high.wattsPerSquareMetrePerNanometre() - low.wattsPerSquareMetrePerNanometre())
                / (high.wavelengthNanometres() - low.wavelengthNanometres());
        DoubleUnaryOperator weighed = nanometres -> weight.applyAsDouble(nanometres)
                * (low.wattsPerSquareMetrePerNanometre() + slope * (nanometres - low.wavelengthNanometres()));
        int steps = 1000;
        double step = (to - from) / steps;
        // The ends from just inside: a weight may jump at a whole nanometre.
        double sum = (weighed.applyAsDouble(Math.nextUp(from)) + weighed.applyAsDouble(Math.nextDown(to))) / 2;
        for (int inner = 1; inner < steps; inner++) {
            sum += weighed.applyAsDouble(from + inner * step);
        }
        return sum * step;
    }
}
