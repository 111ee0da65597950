package dapple.reading;

import dapple.enclosure.PointFacts;
import dapple.light.judging.Judgement;
import dapple.light.judging.Limits;
import dapple.light.judging.State;
import dapple.light.judging.VisitJudging;
import dapple.light.judging.VisitJudging.PointReading;
import dapple.light.quantity.Quantity;
import dapple.meter.CalibrationInForce;
import dapple.reading.Verdict.Basis;
import dapple.reading.Verdict.Corrected;
import java.util.List;
import java.util.Optional;

/** What one reading is judged to be for one need, and on what grounds. */
record Finding(Shown shown, Basis basis, Corrected corrected, Judgement judgement) {

    /** Of every reading of a visit, held against the others: one for each need at its point, or one for nobody's. */
    static List<Finding> of(List<Calibrated> visited, Grounds grounds) {
        return visited.stream()
                .flatMap(one -> of(one, visited, grounds).stream())
                .toList();
    }

    private static List<Finding> of(Calibrated one, List<Calibrated> visited, Grounds grounds) {
        PointFacts point = one.point();
        List<Need> needed = grounds.needs(point, one.shown().takenAt());
        if (needed.isEmpty()) {
            return List.of(finding(one, Optional.empty(), Judgement.none()));
        }
        boolean isOff = grounds.isPlannedOff(one.shown().takenAt());
        return needed.stream()
                .map(need -> finding(one, Optional.of(need), judgement(one, visited, need, isOff)))
                .toList();
    }

    /** A reading in another orientation than the point's is context. */
    private static Judgement judgement(Calibrated one, List<Calibrated> visited, Need need, boolean isOff) {
        if (!one.shown().heldAsAsked()) {
            return Judgement.none();
        }
        Judgement found = Optional.ofNullable(need.limits().get(one.quantity()))
                .map(limits -> judged(one, visited, need, limits))
                .orElseGet(() -> withoutLimits(one.quantity()));
        return isOff && found.state().isPresent() ? found.whilePlannedOff() : found;
    }

    /** A missing UV target is a finding; another quantity that nobody has limited is none. */
    private static Judgement withoutLimits(Quantity quantity) {
        return quantity == Quantity.UV_INDEX ? Judgement.of(State.NO_TARGET) : Judgement.none();
    }

    private static Judgement judged(Calibrated one, List<Calibrated> visited, Need need, Limits limits) {
        List<PointReading> together = visited.stream()
                .filter(other -> other.quantity() == one.quantity())
                .filter(other -> other.shown().heldAsAsked())
                .filter(other -> need.isServedAt(other.point()))
                .map(Calibrated::atPoint)
                .toList();
        Judgement found = VisitJudging.judge(one.quantity(), together, limits)
                .get(one.shown().id());
        return found == null ? Judgement.none() : found;
    }

    private static Finding finding(Calibrated one, Optional<Need> need, Judgement judgement) {
        Basis basis = new Basis(
                need.map(Need::speciesId).orElse(null),
                need.flatMap(Need::targetId).orElse(null),
                one.calibration().map(CalibrationInForce::id).orElse(null),
                one.rig().orElse(null),
                need.flatMap(Need::orderId).orElse(null));
        return new Finding(one.shown(), basis, one.corrected(), judgement);
    }
}
