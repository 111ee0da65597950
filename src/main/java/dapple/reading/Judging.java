package dapple.reading;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.enclosure.Enclosures;
import dapple.light.judging.Judgement;
import dapple.light.judging.Limits;
import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.judging.VisitJudging;
import dapple.light.judging.VisitJudging.PointReading;
import dapple.meter.CalibrationInForce;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.reading.Verdict.Basis;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/**
 * Judges the readings of a visit by what was in force when each was taken: the species that lived there, their targets,
 * the meter's calibration. A verdict that no longer says the same is replaced and kept.
 */
@Service
class Judging {
    private final ReadingRepository readings;
    private final VerdictRepository verdicts;
    private final Enclosures enclosures;
    private final Meters meters;
    private final Animals animals;
    private final Targets targets;
    private final Clock clock;

    Judging(
            ReadingRepository readings,
            VerdictRepository verdicts,
            Enclosures enclosures,
            Meters meters,
            Animals animals,
            Targets targets,
            Clock clock) {
        this.readings = readings;
        this.verdicts = verdicts;
        this.enclosures = enclosures;
        this.meters = meters;
        this.animals = animals;
        this.targets = targets;
        this.clock = clock;
    }

    /** Judges every reading of a visit that nothing supersedes. */
    List<Reading> judge(Visit visit) {
        List<Calibrated> visited = readings.currentOfVisit(visit.id()).stream()
                .map(this::calibrated)
                .toList();
        visited.forEach(one -> record(one.reading(), verdictsOn(one, visited)));
        return visited.stream().map(Calibrated::reading).toList();
    }

    private Calibrated calibrated(Reading reading) {
        PointRole role = enclosures.point(reading.siteId(), reading.pointId()).role();
        MeterFacts meter = meters.get(reading.siteId(), reading.meterId());
        Optional<CalibrationInForce> calibration = meters.calibrationAt(meter.id(), reading.takenAt());
        double amount =
                reading.amount() * calibration.map(CalibrationInForce::factor).orElse(1.0);
        MeasuredAmount measured = meter.uncertainty().around(amount);
        return new Calibrated(
                reading, calibration, new PointReading(reading.id(), role, measured, meter.uncertainty()));
    }

    private List<Verdict> verdictsOn(Calibrated one, List<Calibrated> visited) {
        Set<Long> species = one.role() == PointRole.KEEPER ? Set.of() : speciesAt(one.reading());
        if (species.isEmpty()) {
            return List.of(verdict(one, null, null, Judgement.none()));
        }
        Map<Long, Target> inForce =
                targets.inForce(one.reading().siteId(), species, one.reading().takenAt());
        return species.stream()
                .map(speciesId -> forSpecies(one, visited, speciesId, Optional.ofNullable(inForce.get(speciesId))))
                .toList();
    }

    private Set<Long> speciesAt(Reading reading) {
        return animals.inEnclosure(reading.siteId(), reading.visit().enclosureId(), reading.takenAt()).stream()
                .map(AnimalFacts::speciesId)
                .collect(Collectors.toCollection(java.util.TreeSet::new));
    }

    private Verdict forSpecies(Calibrated one, List<Calibrated> visited, long speciesId, Optional<Target> target) {
        Optional<Limits> limits =
                target.flatMap(found -> found.limits(one.reading().quantity()));
        Judgement judgement = limits.map(found -> judged(one, visited, found)).orElse(Judgement.of(State.NO_TARGET));
        return verdict(one, speciesId, target.map(Target::id).orElse(null), judgement);
    }

    private static Judgement judged(Calibrated one, List<Calibrated> visited, Limits limits) {
        List<PointReading> together = visited.stream()
                .filter(other -> other.reading().quantity() == one.reading().quantity())
                .map(Calibrated::atPoint)
                .toList();
        Judgement found = VisitJudging.judge(together, limits).get(one.reading().id());
        return found == null ? Judgement.none() : found;
    }

    private Verdict verdict(Calibrated one, @Nullable Long speciesId, @Nullable Long targetId, Judgement judgement) {
        Basis basis = new Basis(
                speciesId,
                targetId,
                one.calibration().map(CalibrationInForce::id).orElse(null));
        return new Verdict(one.reading(), basis, one.atPoint().measured(), judgement, clock.instant());
    }

    private void record(Reading reading, List<Verdict> found) {
        List<Verdict> standing = new ArrayList<>(verdicts.current(reading.id()));
        Instant now = clock.instant();
        for (Verdict verdict : found) {
            Optional<Verdict> same =
                    standing.stream().filter(verdict::saysTheSameAs).findFirst();
            same.ifPresentOrElse(standing::remove, () -> verdicts.save(verdict));
        }
        standing.forEach(outdated -> outdated.replace(now));
        verdicts.flush();
    }

    private record Calibrated(Reading reading, Optional<CalibrationInForce> calibration, PointReading atPoint) {
        PointRole role() {
            return atPoint.role();
        }
    }
}
