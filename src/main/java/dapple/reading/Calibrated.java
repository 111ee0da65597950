package dapple.reading;

import dapple.enclosure.PointFacts;
import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.VisitJudging.PointReading;
import dapple.light.metrology.RepeatScatter;
import dapple.light.metrology.Repeats;
import dapple.light.quantity.Quantity;
import dapple.meter.CalibrationInForce;
import dapple.meter.MeterFacts;
import dapple.reading.Verdict.Corrected;
import java.util.List;
import java.util.Optional;

/** A reading by the calibration that was in force when it was taken. */
record Calibrated(
        Shown shown,
        PointFacts point,
        Optional<CalibrationInForce> calibration,
        Optional<Long> rig,
        PointReading atPoint) {

    /**
     * Corrects what a meter showed.
     *
     * @param behind the amounts whose median it is; none where it was read once
     */
    static Calibrated of(Shown shown, List<Double> behind, Grounds grounds) {
        PointFacts point = grounds.point(shown.pointId());
        MeterFacts meter = grounds.meter(shown.meterId());
        Optional<CalibrationInForce> calibration = grounds.calibration(meter.id(), shown.takenAt());
        double factor =
                calibration.map(inForce -> inForce.factorAt(shown.amount())).orElse(1.0);
        MeasuredAmount measured = behind.isEmpty()
                ? meter.uncertainty().around(shown.quantity(), shown.amount() * factor)
                : scattered(meter, factor, behind, grounds);
        PointReading atPoint = new PointReading(shown.id(), point.role(), measured, meter.uncertainty());
        return new Calibrated(shown, point, calibration, grounds.rig(shown.takenAt()), atPoint);
    }

    private static MeasuredAmount scattered(MeterFacts meter, double factor, List<Double> behind, Grounds grounds) {
        Repeats corrected =
                new Repeats(behind.stream().map(amount -> amount * factor).toList());
        return new RepeatScatter(corrected, grounds.statedRepeats(meter.id())).around(meter.uncertainty());
    }

    Quantity quantity() {
        return shown.quantity();
    }

    Corrected corrected() {
        return new Corrected(calibration.map(inForce -> inForce.factorAt(shown.amount())), atPoint.measured());
    }
}
