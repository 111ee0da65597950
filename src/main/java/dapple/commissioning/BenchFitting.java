package dapple.commissioning;

import dapple.commissioning.BenchEntry.Row;
import dapple.commissioning.BenchFit.AtDistance;
import dapple.commissioning.BenchFit.Height;
import dapple.drawing.CurvePlot;
import dapple.lamp.CurveShown;
import dapple.lamp.LampFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.LampShape;
import dapple.lamp.OutputCurve;
import dapple.lamp.ShapeSource;
import dapple.light.calibration.Bench;
import dapple.light.calibration.BenchReading;
import dapple.light.calibration.FittedLamp;
import dapple.light.calibration.FittedParameter;
import dapple.light.calibration.LampCalibration;
import dapple.light.calibration.Parameter;
import dapple.light.calibration.Residual;
import dapple.light.calibration.RigReading;
import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import dapple.light.source.Source;
import dapple.light.uncertainty.StandardUncertainty;
import dapple.meter.CalibrationFactors;
import dapple.meter.CalibrationInForce;
import dapple.meter.Meters;
import dapple.site.Formats;
import dapple.site.SourceMark;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Fits the output of a lamp to a bench series, its shape as its model says. */
@Component
class BenchFitting {
    /** Standard uncertainty of a distance that is measured by a rule, m: an assumption of ours, no source. */
    private static final double DISTANCE_METRES = 0.003;

    private static final double CENTIMETRES = 100;
    private static final double LEAST_UNCERTAINTY = 0.001;
    private static final double MOST_UNCERTAINTY = 2;
    private static final double LEAST_READING = 1e-9;
    private static final Vec MIDDLE = new Vec(0, 0, 0);
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Vec LENGTHWISE = new Vec(1, 0, 0);

    private final Meters meters;
    private final Formats formats;
    private final MessageSource messages;

    BenchFitting(Meters meters, Formats formats, MessageSource messages) {
        this.meters = meters;
        this.formats = formats;
        this.messages = messages;
    }

    /** Whether anything can be fitted: where the shape is not known, nothing says how the light falls off. */
    static boolean isPossible(LampFacts lamp) {
        return lamp.model().shape().isPresent();
    }

    /** Whether all readings were taken outside what shines. */
    static boolean isOutside(LampFacts lamp, BenchEntry entry) {
        return lamp.model().shape().stream()
                .allMatch(shape -> !(shape instanceof LampShape.Cylinder tube)
                        || entry.rows().stream().allMatch(row -> row.distanceMetres() > tube.radiusMetres()));
    }

    /** The fit; empty if there is none: all is dark, the shape is not known. */
    Optional<BenchFit> of(LampFacts lamp, BenchEntry entry, ZoneId zone) {
        CalibrationFactors factors = meters.calibrationAt(entry.meter().id(), entry.at())
                .map(CalibrationInForce::factors)
                .orElseGet(() -> CalibrationFactors.of(1));
        return lamp.model()
                .shape()
                .flatMap(shape -> ShapeSource.of(shape, Optional.of(LENGTHWISE)))
                .flatMap(source -> fitted(source, entry, factors))
                .map(fitted -> shown(lamp, entry, fitted, zone));
    }

    private static Optional<FittedLamp> fitted(Source source, BenchEntry entry, CalibrationFactors factors) {
        List<BenchReading> readings =
                entry.rows().stream().map(row -> reading(entry, row, factors)).toList();
        Lamp lamp = new Lamp("lamp", MIDDLE, DOWN, source, List.of());
        Bench bench = new Bench(lamp, readings, Set.copyOf(Parameter.Shape.of(source)));
        return LampCalibration.of(bench) instanceof FittedLamp fitted ? Optional.of(fitted) : Optional.empty();
    }

    /** The light falls at most with the square of the distance. */
    private static BenchReading reading(BenchEntry entry, Row row, CalibrationFactors factors) {
        StandardUncertainty whole = StandardUncertainty.of(entry.meter().uncertainty());
        double own = Math.sqrt(1 - RigReading.SHARED * RigReading.SHARED) * whole.relative();
        double relative = Math.hypot(own, Math.min(1, 2 * DISTANCE_METRES / row.distanceMetres()));
        return new BenchReading(
                entry.quantity(),
                DOWN.times(row.distanceMetres()),
                Vec.UP,
                row.amount() * factors.at(row.amount()),
                new StandardUncertainty(relative, whole.absolute()));
    }

    private BenchFit shown(LampFacts lamp, BenchEntry entry, FittedLamp fitted, ZoneId zone) {
        List<AtDistance> rows = IntStream.range(0, entry.rows().size())
                .mapToObj(
                        index -> row(entry.rows().get(index), fitted.residuals().get(index)))
                .sorted(Comparator.comparing(AtDistance::distanceMetres))
                .toList();
        LampOutput output = output(entry, fitted, rows, zone);
        Optional<OutputCurve> curve = OutputCurve.of(output, lamp.model().shape());
        return new BenchFit(
                output,
                rows,
                fitted.quality().isWidened() || rows.stream().anyMatch(row -> !row.fits()),
                curve.map(known -> CurveShown.of(
                        known,
                        rows.stream()
                                .map(row -> new CurvePlot.Point(CENTIMETRES * row.distanceMetres(), row.corrected()))
                                .toList())),
                curve.flatMap(
                        known -> entry.wanted().filter(amount -> amount > 0).map(amount -> height(known, amount))));
    }

    private static AtDistance row(Row row, Residual residual) {
        return new AtDistance(row, residual.reading().value(), residual.predicted(), residual.fits());
    }

    private static Height height(OutputCurve curve, double amount) {
        return new Height(amount, curve.reaches(amount), curve.reachesAtLeast(amount), curve.reachesAtMost(amount));
    }

    /** At the middle one of the distances. */
    private LampOutput output(BenchEntry entry, FittedLamp fitted, List<AtDistance> rows, ZoneId zone) {
        AtDistance middle = rows.get(rows.size() / 2);
        FittedParameter emission =
                fitted.parameter(new Parameter.Emission(entry.quantity())).orElseThrow();
        double shared = RigReading.SHARED
                * StandardUncertainty.of(entry.meter().uncertainty()).relative();
        double relative = Math.hypot(emission.standardUncertainty() / emission.value(), shared);
        return new LampOutput(
                entry.quantity(),
                Math.max(LEAST_READING, middle.fitted()),
                middle.distanceMetres(),
                Math.max(LEAST_UNCERTAINTY, Math.min(MOST_UNCERTAINTY, relative)),
                SourceMark.MEASURED,
                source(entry, rows, zone));
    }

    private String source(BenchEntry entry, List<AtDistance> rows, ZoneId zone) {
        return messages.getMessage(
                "bench.source",
                new Object[] {
                    rows.size(),
                    formats.asEntered(CENTIMETRES * rows.get(0).distanceMetres()),
                    formats.asEntered(CENTIMETRES * rows.get(rows.size() - 1).distanceMetres()),
                    entry.meter().code(),
                    formats.day(entry.at(), zone)
                },
                Locale.UK);
    }
}
