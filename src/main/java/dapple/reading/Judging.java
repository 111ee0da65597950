package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Judgement;
import dapple.light.judging.Limits;
import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.State;
import dapple.light.judging.VisitJudging;
import dapple.light.judging.VisitJudging.PointReading;
import dapple.light.metrology.RepeatScatter;
import dapple.light.metrology.Repeats;
import dapple.light.metrology.RepeatsTaken;
import dapple.light.quantity.Quantity;
import dapple.meter.CalibrationInForce;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.reading.Verdict.Basis;
import dapple.rig.Rigs;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;

/**
 * Judges the readings of a visit by what was in force when each was taken: the needs of those who lived there, the
 * meter's calibration, whether the lamps were planned off. A verdict that no longer says the same is replaced and kept.
 */
@Service
class Judging {
    private final ReadingRepository readings;
    private final RepeatsOnRecord repeats;
    private final VerdictRepository verdicts;
    private final Enclosures enclosures;
    private final Meters meters;
    private final Needs needs;
    private final Rigs rigs;
    private final Clock clock;

    Judging(
            ReadingRepository readings,
            RepeatsOnRecord repeats,
            VerdictRepository verdicts,
            Enclosures enclosures,
            Meters meters,
            Needs needs,
            Rigs rigs,
            Clock clock) {
        this.readings = readings;
        this.repeats = repeats;
        this.verdicts = verdicts;
        this.enclosures = enclosures;
        this.meters = meters;
        this.needs = needs;
        this.rigs = rigs;
        this.clock = clock;
    }

    /**
     * Judges every reading of a visit that nothing supersedes and nobody has withdrawn.
     *
     * @return those of which something else is said than before
     */
    List<Reading> judge(Visit visit) {
        Instant now = clock.instant();
        List<Calibrated> visited = calibrated(visit);
        Map<Long, List<Verdict>> standing =
                verdicts.currentOfVisit(visit.id()).stream().collect(Collectors.groupingBy(Verdict::readingId));
        List<Reading> changed = new ArrayList<>();
        for (Calibrated one : visited) {
            List<Verdict> before = standing.getOrDefault(one.reading().id(), List.of());
            if (record(verdictsOn(one, visited, now), before, now)) {
                changed.add(one.reading());
            }
        }
        verdicts.flush();
        return changed;
    }

    /** What was read at one point or with one meter asks for it once. */
    private List<Calibrated> calibrated(Visit visit) {
        Map<Long, RepeatsTaken> repeated = repeats.ofVisit(visit.id());
        Map<Long, PointFacts> points = new HashMap<>();
        Map<Long, MeterFacts> used = new HashMap<>();
        return readings.currentOfVisit(visit.id()).stream()
                .map(reading -> calibrated(
                        reading,
                        points.computeIfAbsent(reading.pointId(), id -> enclosures.point(reading.siteId(), id)),
                        used.computeIfAbsent(reading.meterId(), id -> meters.get(reading.siteId(), id)),
                        Optional.ofNullable(repeated.get(reading.id()))))
                .toList();
    }

    private Calibrated calibrated(
            Reading reading, PointFacts point, MeterFacts meter, Optional<RepeatsTaken> repeated) {
        Optional<CalibrationInForce> calibration = meters.calibrationAt(meter.id(), reading.takenAt());
        Optional<Long> rig = rigs.idAt(reading.siteId(), reading.visit().enclosureId(), reading.takenAt());
        double factor = factor(calibration, reading).orElse(1.0);
        List<Double> behind =
                repeated.map(taken -> RepeatsOnRecord.behind(reading, taken)).orElse(List.of());
        MeasuredAmount measured = behind.isEmpty()
                ? meter.uncertainty().around(reading.quantity(), reading.amount() * factor)
                : scattered(reading, meter, factor, behind);
        PointReading atPoint = new PointReading(reading.id(), point.role(), measured, meter.uncertainty());
        return new Calibrated(reading, point, calibration, rig, atPoint);
    }

    private MeasuredAmount scattered(Reading reading, MeterFacts meter, double factor, List<Double> behind) {
        Repeats corrected =
                new Repeats(behind.stream().map(amount -> amount * factor).toList());
        return new RepeatScatter(corrected, meters.statedRepeats(reading.siteId(), meter.id()))
                .around(meter.uncertainty());
    }

    private static Optional<Double> factor(Optional<CalibrationInForce> calibration, Reading reading) {
        return calibration.map(inForce -> inForce.factorAt(reading.amount()));
    }

    private List<Verdict> verdictsOn(Calibrated one, List<Calibrated> visited, Instant now) {
        Reading reading = one.reading();
        List<Need> needed = needs.of(reading, one.point());
        if (needed.isEmpty()) {
            return List.of(verdict(one, Optional.empty(), Judgement.none(), now));
        }
        boolean isOff =
                enclosures.isPlannedOff(reading.siteId(), reading.visit().enclosureId(), reading.takenAt());
        return needed.stream()
                .map(need -> verdict(one, Optional.of(need), judgement(one, visited, need, isOff), now))
                .toList();
    }

    /** A reading in another orientation than the point's is context. */
    private static Judgement judgement(Calibrated one, List<Calibrated> visited, Need need, boolean isOff) {
        if (!one.reading().isHeldAsAsked()) {
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
                .filter(other -> other.reading().isHeldAsAsked())
                .filter(other -> need.isServedAt(other.point()))
                .map(Calibrated::atPoint)
                .toList();
        Judgement found = VisitJudging.judge(one.quantity(), together, limits)
                .get(one.reading().id());
        return found == null ? Judgement.none() : found;
    }

    private static Verdict verdict(Calibrated one, Optional<Need> need, Judgement judgement, Instant now) {
        Basis basis = new Basis(
                need.map(Need::speciesId).orElse(null),
                need.flatMap(Need::targetId).orElse(null),
                one.calibration().map(CalibrationInForce::id).orElse(null),
                one.rig().orElse(null),
                need.flatMap(Need::orderId).orElse(null));
        Verdict.Corrected corrected = new Verdict.Corrected(
                factor(one.calibration(), one.reading()), one.atPoint().measured());
        return new Verdict(one.reading(), basis, corrected, judgement, now);
    }

    /** Leaves what says the same as what stands; whether there was anything else. */
    private boolean record(List<Verdict> found, List<Verdict> standing, Instant now) {
        List<Verdict> outdated = new ArrayList<>(standing);
        List<Verdict> unsaid = found.stream()
                .filter(verdict -> outdated.stream()
                        .filter(verdict::saysTheSameAs)
                        .findFirst()
                        .map(outdated::remove)
                        .isEmpty())
                .toList();
        verdicts.saveAll(unsaid);
        outdated.forEach(verdict -> verdict.replace(now));
        return !unsaid.isEmpty() || !outdated.isEmpty();
    }

    private record Calibrated(
            Reading reading,
            PointFacts point,
            Optional<CalibrationInForce> calibration,
            Optional<Long> rig,
            PointReading atPoint) {
        Quantity quantity() {
            return reading.quantity();
        }
    }
}
